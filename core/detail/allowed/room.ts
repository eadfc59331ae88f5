import type { Id } from '../../geometry'
import { wallDepths } from '../depths'
import { frameOf, profileOf, wallOf } from '../find'
import type { Layer, Project } from '../model'

/** Where the outer face of a frame can stand in its wall, from the outer face of the bearing layer. */
export type Room = {
  readonly min_mm: number
  readonly max_mm: number
  /** whether a thicker or thinner layer moves the lower, the upper end */
  readonly movesMin: (layer: Layer) => boolean
  readonly movesMax: (layer: Layer) => boolean
}

/** From the outermost insulation, or the nib before it, to the inner face of the wall, or the nib behind it. */
export const roomOf = (project: Project, opening: Id): Room => {
  const wall = wallOf(project, opening)
  const depths = wallDepths(wall)
  const frame_mm = profileOf(frameOf(project, opening)).depth_mm
  const { form, nibDepth_mm } = wall.reveal
  const nib_mm = nibDepth_mm?.value ?? 0
  const before = depths.before.filter(it => it !== depths.skin).map(it => it.layer)
  const behind = depths.behind.map(it => it.layer)
  const isOuter = form === 'outer-rebate'
  return {
    min_mm: form === 'inner-rebate' ? nib_mm : Math.min(0, depths.skin?.to_mm ?? depths.outer_mm),
    max_mm: (isOuter ? depths.bearing_mm - nib_mm : depths.inner_mm) - frame_mm,
    movesMin: layer => form !== 'inner-rebate' && before.includes(layer),
    movesMax: layer => layer === depths.bearing.layer || (!isOuter && behind.includes(layer)),
  }
}
