import type { Id } from '../../geometry'
import type { Bounds } from '../../units'
import { type Words, words } from '../../words'
import { wallDepths } from '../depths'
import { frameOf, profileOf, wallOf } from '../find'
import type { Project } from '../model'

export type Allowed = { readonly bounds: Bounds; readonly because: Words }

/** Where the frame can stand: from the outermost insulation to the inner face of the wall. */
export const allowedPosition = (project: Project, opening: Id): Allowed => {
  const depths = wallDepths(wallOf(project, opening))
  const frame_mm = profileOf(frameOf(project, opening)).depth_mm
  const first = depths.skin ? depths.skin.to_mm : depths.outer_mm
  const { form, nibDepth_mm } = wallOf(project, opening).reveal
  const nib_mm = nibDepth_mm?.value ?? 0
  const min = form === 'inner-rebate' ? nib_mm : Math.min(0, first)
  const inner_mm = form === 'outer-rebate' ? depths.bearing_mm - nib_mm : depths.inner_mm
  return {
    bounds: { unit: 'mm', min, max: Math.max(min, inner_mm - frame_mm) },
    because: words(
      'the frame stands between the outer skin and the inner face of the wall',
      'der Rahmen steht zwischen Außenhaut und Innenfläche der Wand',
    ),
  }
}
