import type { Seasonal } from '../geometry'
import { type Band, exactly } from '../units'
import type { AnySeal, SealValue } from './seal-kind'

/** The range that a value of a seal lies in: what is stated, else what its products declare; nothing where neither is known. */
export const rangeOf = (seal: AnySeal, value: SealValue): Band | undefined => {
  const stated = seal[value.key]
  if (typeof stated === 'object' && typeof stated.value === 'number') return exactly(stated.value)
  const fallback = value.fallback?.(seal)
  return fallback && (fallback.band ?? exactly(fallback.value))
}

/** A resistance to vapour that is the same dry and humid; nothing where it is not known. */
export const steady = (band: Band | undefined): Seasonal | undefined => band && { winter: band, summer: band }
