import { at } from './at'
import { de } from './de'
import type { Practice } from './limit'
import { uk } from './uk'

/** Every practice that the program knows. */
export const practices: readonly Practice[] = [de, at, uk]

/** The practice of that name, if there is one. */
export const practice = (id: string): Practice | undefined => practices.find(it => it.id === id)
