import type { Id } from '../../geometry'
import type { Bounds } from '../../units'
import { type Words, words } from '../../words'
import type { Project } from '../model'
import { roomOf } from './room'

export type Allowed = { readonly bounds: Bounds; readonly because: Words }

/** Where the frame can stand: in its wall. */
export const allowedPosition = (project: Project, opening: Id): Allowed => {
  const { min_mm, max_mm } = roomOf(project, opening)
  return {
    bounds: { unit: 'mm', min: min_mm, max: Math.max(min_mm, max_mm) },
    because: words(
      'the frame stands between the outer skin and the inner face of the wall, beside its nib',
      'der Rahmen steht zwischen Außenhaut und Innenfläche der Wand, neben ihrem Anschlag',
    ),
  }
}
