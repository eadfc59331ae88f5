import { lengthOf_mm, type LengthUnit, stepsIn } from './lengths'

/**
 * The lengths of a chain as they are written, in tenths of a millimetre whose sum is the written total. Where rounding
 * would break the sum, all links are written to the next finer step instead: no link is ever bent to fit.
 */
export const chainValues_mm = (places_mm: readonly number[]): readonly number[] => {
  for (const steps of [10, 100, 1000, 10000]) {
    const links = places_mm.slice(1).map((to, at) => Math.round((to - (places_mm[at] ?? 0)) * steps))
    const total = Math.round(((places_mm.at(-1) ?? 0) - (places_mm[0] ?? 0)) * steps)
    if (links.reduce((sum, it) => sum + it, 0) === total) return links.map(it => it / steps)
  }
  return places_mm.slice(1).map((to, at) => to - (places_mm[at] ?? 0))
}

/**
 * The lengths of a chain in another unit than the model's, where no step is fine enough for every sum: places are
 * rounded from the start of the chain, so links add up and each is off by one step (0.25 mm) at the most.
 */
export const chainValuesOf = (places_mm: readonly number[], unit: LengthUnit): readonly number[] => {
  const steps = stepsIn[unit]
  const [start = 0] = places_mm
  const rounded = places_mm.map(it => Math.round(((it - start) / lengthOf_mm[unit]) * steps))
  return rounded.slice(1).map((to, at) => (to - (rounded[at] ?? 0)) / steps)
}
