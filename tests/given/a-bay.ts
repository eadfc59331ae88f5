import type { Bay } from '../../core/seals'
import type { Plane } from '../../core/kinds'

/** A joint 78 deep in a wall 175 thick, lined by 20 inside, rendered by 20 outside, its flank at x = 0. */
export const aBay = (width_mm: number, from_mm = 0, to_mm = 78): Bay => ({
  width_mm: { min: width_mm - 3, max: width_mm + 3 },
  from_mm,
  to_mm,
  wallFace: [[0, from_mm], [0, to_mm]],
  frameFace: [[width_mm, from_mm], [width_mm, to_mm]],
  ends: {
    outer: {
      lead: [],
      flank: [[0, from_mm], [0, -60], [-1000, -60]],
      face: [[width_mm + 6, from_mm], [width_mm + 6, -80]],
      stop: [[width_mm, from_mm - 6], [width_mm + 6, from_mm - 6], [width_mm + 6, from_mm], [width_mm, from_mm]],
      free_mm: width_mm + 60,
    },
    inner: {
      lead: [],
      flank: [[0, to_mm], [0, 175], [-1000, 175]],
      face: [[width_mm + 6, to_mm], [width_mm + 6, 190]],
      stop: [[width_mm, to_mm], [width_mm + 6, to_mm], [width_mm + 6, to_mm + 6], [width_mm, to_mm + 6]],
      free_mm: width_mm + 16,
    },
  },
}) // prettier-ignore

/** At which end of a joint a plane lies. */
export const ownEnd = (plane: Plane): 'outer' | 'inner' => (plane === 'outer' ? 'outer' : 'inner')
