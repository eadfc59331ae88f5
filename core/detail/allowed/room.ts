import type { Id } from '../../geometry'
import { wallDepths } from '../depths'
import { frameOf, openingOf, profileOf, wallOf } from '../find'
import type { Layer, Opening, Project } from '../model'

/** Where the outer face of a frame can stand in its wall, from the outer face of the bearing layer. */
export type Room = {
  readonly min_mm: number
  readonly max_mm: number
  /** whether a thicker or thinner layer moves the lower, the upper end */
  readonly movesMin: (layer: Layer) => boolean
  readonly movesMax: (layer: Layer) => boolean
}

/** The outermost depth for what stands in an opening: the outermost insulation, or the nib before it. */
export const roomBefore_mm = (project: Project, opening: Opening): number => {
  const wall = wallOf(project, opening.id)
  const { skin, outer_mm } = wallDepths(wall)
  const { form, nibDepth_mm } = wall.reveal
  return form === 'inner-rebate' ? (nibDepth_mm?.value ?? 0) : Math.min(0, skin?.to_mm ?? outer_mm)
}

/** The innermost depth for what stands in an opening: the inner face of the wall, or the nib behind it. */
export const roomBehind_mm = (project: Project, opening: Opening): number => {
  const wall = wallOf(project, opening.id)
  const { bearing_mm, inner_mm } = wallDepths(wall)
  const { form, nibDepth_mm } = wall.reveal
  return form === 'outer-rebate' ? bearing_mm - (nibDepth_mm?.value ?? 0) : inner_mm
}

/** From the outermost insulation, or the nib before it, to the inner face of the wall, or the nib behind it. */
export const roomOf = (project: Project, opening: Id): Room => {
  const wall = wallOf(project, opening)
  const depths = wallDepths(wall)
  const { form } = wall.reveal
  const stands = openingOf(project, opening)
  const frame_mm = profileOf(frameOf(project, opening)).depth_mm
  // a box on the head stands in the wall, too
  const forward_mm = stands.box?.forward_mm.value ?? 0
  const back_mm = Math.max(frame_mm, (stands.box?.depth_mm.value ?? 0) - forward_mm)
  const before = depths.before.filter(it => it !== depths.skin).map(it => it.layer)
  const behind = depths.behind.map(it => it.layer)
  const isOuter = form === 'outer-rebate'
  return {
    min_mm: roomBefore_mm(project, stands) + forward_mm,
    max_mm: roomBehind_mm(project, stands) - back_mm,
    movesMin: layer => form !== 'inner-rebate' && before.includes(layer),
    movesMax: layer => layer === depths.bearing.layer || (!isOuter && behind.includes(layer)),
  }
}
