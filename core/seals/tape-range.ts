import type { Band } from '../units'

/** The first printed range that holds a joint; where none does, the one that leaves least of it outside. */
export const rangeFor = (joint_mm: Band, ranges_mm: readonly Band[]): Band => {
  const outside = (one: Band) => Math.max(0, one.min - joint_mm.min) + Math.max(0, joint_mm.max - one.max)
  return ranges_mm.reduce(
    (best, one) => (outside(one) < outside(best) ? one : best),
    ranges_mm[0] ?? joint_mm,
  )
}
