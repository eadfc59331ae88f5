import type { BeadDepth } from '../practice'
import type { Band } from '../units'

/**
 * Depths that a bead may have over the whole still width of its joint: what holds at the narrow and at the wide end.
 * `rowAt` gives the limit for a width. `min > max` means that no single depth serves both ends.
 */
export const beadDepths_mm = (still_mm: Band, rowAt: (width_mm: number) => BeadDepth): Band => {
  const narrow = depthsAt(still_mm.min, rowAt(still_mm.min))
  const wide = depthsAt(still_mm.max, rowAt(still_mm.max))
  return { min: Math.max(narrow.min, wide.min), max: Math.min(narrow.max, wide.max) }
}

/** Depths that a bead of one width may have. An open end is 0 or infinite. */
export const depthsAt = (width_mm: number, limit: BeadDepth): Band => ({
  min: Math.max(limit.least_mm ?? 0, wanted(width_mm, limit) - (limit.within_mm ?? Infinity)),
  max: Math.min(
    limit.most_mm ?? Infinity,
    wanted(width_mm, limit) + (limit.within_mm ?? Infinity),
    limit.mostShare === undefined ? Infinity : limit.mostShare * width_mm,
  ),
})

const wanted = (width_mm: number, limit: BeadDepth): number => (limit.share ?? 0) * width_mm
