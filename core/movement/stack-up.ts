import type { Band } from '../units'

/** Deviations that add up at their worst: all at their end at once. */
export const worst_mm = (deviations_mm: readonly number[]): number =>
  deviations_mm.reduce((sum, it) => sum + Math.abs(it), 0)

/** Deviations that add up as random, unrelated ones of equal confidence do (basis of ISO 3443-2). */
export const probable_mm = (deviations_mm: readonly number[]): number => Math.hypot(...deviations_mm)

/** Clearance between an opening and the part set into it, each with the band that it can have. */
export const clearance_mm = (opening_mm: Band, part_mm: Band): Band => ({
  min: opening_mm.min - part_mm.max,
  max: opening_mm.max - part_mm.min,
})

/** Total clearance and the share of one side, from tolerances of opening, frame and setting (which only shifts). */
export const jointTolerance_mm = (
  off: { readonly opening_mm: number; readonly frame_mm: number; readonly setting_mm: number },
  add: (deviations_mm: readonly number[]) => number,
): { readonly total_mm: number; readonly side_mm: number } => ({
  total_mm: add([off.opening_mm, off.frame_mm]),
  side_mm: add([off.opening_mm / 2, off.frame_mm / 2, off.setting_mm]),
})
