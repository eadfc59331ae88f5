import type { Side } from '../kinds'
import { wallDepths } from './depths'
import { frameOf, profileOf, wallOf } from './find'
import type { Opening, Project } from './model'

/** From where to where something goes in the depth of a wall; 0 is the outer face of its bearing layer. */
export type Depths = { readonly from_mm: number; readonly to_mm: number }

/** What stands in the joint of a side, in the depth of the wall: the frame, at the head the box on it where there is one. */
export const standsAt = (project: Project, opening: Opening, side: Side): Depths => {
  const position_mm = opening.position_mm.value
  const { box } = opening
  if (side !== 'head' || box === undefined)
    return { from_mm: position_mm, to_mm: position_mm + profileOf(frameOf(project, opening.id)).depth_mm }
  const from_mm = position_mm - box.forward_mm.value
  return { from_mm, to_mm: from_mm + box.depth_mm.value }
}

/**
 * The gap between the nib of a rebate and what stands behind or before it, across the depth of the wall: a joint of its
 * own, as wide as the position leaves it. Nothing where a side has no nib; the foot of an opening never has one.
 */
export const rebateWidth_mm = (project: Project, opening: Opening, side: Side): number | undefined => {
  const wall = wallOf(project, opening.id)
  const { form, nibDepth_mm: nib } = wall.reveal
  if (side === 'sill' || nib === undefined) return undefined
  const { from_mm, to_mm } = standsAt(project, opening, side)
  if (form === 'inner-rebate') return from_mm - nib.value
  return form === 'outer-rebate' ? wallDepths(wall).bearing_mm - nib.value - to_mm : undefined
}
