import type { Seasonal } from '../geometry'
import type { Plane } from '../kinds'
import type { Band } from '../units'
import { isSome } from '../words'
import { kindOf, serves } from './kind-of'
import type { AnySeal } from './seal-kind'

/** Equivalent air layers one behind the other: they add up (EN ISO 13788). */
export const inSeries = (layers: readonly Seasonal[]): Seasonal => ({
  winter: sumOf(layers.map(it => it.winter)),
  summer: sumOf(layers.map(it => it.summer)),
})

/** Equivalent air layers side by side, each over a share of the width: 1/s_d is the mean of 1/s_d by width. */
export const sideBySide = (parts: readonly { readonly share: number; readonly sd_m: Band }[]): Band => {
  const mean = (end: keyof Band) => 1 / parts.reduce((sum, it) => sum + it.share / it.sd_m[end], 0)
  return { min: mean('min'), max: mean('max') }
}

const sumOf = (bands: readonly Band[]): Band =>
  bands.reduce((sum, it) => ({ min: sum.min + it.min, max: sum.max + it.max }), { min: 0, max: 0 })

/**
 * Vapour resistance of one plane of a joint: its seals one behind the other, dry and humid, as ranges. Nothing where the
 * plane is empty or the resistance of one of its seals is not known: it is never guessed.
 */
export const planeResistance = (seals: readonly AnySeal[], plane: Plane): Seasonal | undefined => {
  const there = seals.filter(it => serves(it, plane))
  const known = there.flatMap(seal => kindOf(seal).sd_m(seal, plane) ?? [])
  return isSome(there) && known.length === there.length ? inSeries(known) : undefined
}

/** Inner over outer resistance by season: from smallest inside over largest outside up to the other way round. */
export const planeRatio = (inner: Seasonal, outer: Seasonal): Seasonal => {
  const over = (a: Band, b: Band): Band => ({ min: a.min / b.max, max: a.max / b.min })
  return { winter: over(inner.winter, outer.winter), summer: over(inner.summer, outer.summer) }
}
