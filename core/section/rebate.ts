import type { Point } from '../geometry'
import { type Bay, plainBay } from '../seals'
import { exactly } from '../units'
import { nibOf } from './flank'
import type { Layout } from './layout'

/** A gap that is narrower than this takes no seal that could be drawn: ours, as for a joint. */
const narrowest_mm = 0.5

/** A bay that lies turned in a section, and where its own places come to lie: x across the gap, y along its depth. */
export type TurnedBay = { readonly bay: Bay; readonly place: (it: Point) => Point }

/** From where to where the gap of a rebate goes across the depth of the wall; nothing where the frame touches the nib. */
export const rebateGap = (at: Layout): readonly [from_mm: number, to_mm: number] | undefined => {
  const nib = nibOf(at)
  if (nib === undefined) return undefined
  const [from, to] = nib.inside
    ? [at.stands.to_mm, at.depths.bearing_mm - nib.depth_mm]
    : [nib.depth_mm, at.stands.from_mm]
  return to > from ? [from, to] : undefined
}

/**
 * The gap between the nib of a rebate and the face that lies against it, as a bay of its own: its width lies across the
 * depth of the wall, from the nib to the frame; its depth along the face of the frame. Outer seals of a nib at the
 * outside lie at its mouth there, inner ones of a nib at the inside at its mouth to the room.
 */
export const rebateBay = (at: Layout): TurnedBay | undefined => {
  const nib = nibOf(at)
  const gap = rebateGap(at)
  if (nib === undefined || gap === undefined) return undefined
  const [from, to] = gap
  const free_mm = nib.inside ? at.stands.inner_mm : at.stands.outer_mm
  const mouth = Math.min(nib.lap_mm, at.width_mm + free_mm)
  const deep_mm = mouth - at.width_mm
  if (deep_mm <= 0 || to - from < narrowest_mm) return undefined
  return {
    bay: plainBay(exactly(to - from), deep_mm),
    place: nib.inside ? ([x, y]) => [at.width_mm + y, to - x] : ([x, y]) => [mouth - y, from + x],
  }
}
