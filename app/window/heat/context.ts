import { getContext, setContext } from 'svelte'
import type { Heat } from './heat.svelte'

const key = Symbol('heat')

export const giveHeat = (heat: Heat): Heat => setContext(key, heat)
export const theHeat = (): Heat => getContext<Heat>(key)
