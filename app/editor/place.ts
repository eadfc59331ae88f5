import { type Project, type ZonePlace, openingOf } from '../../core/detail'
import type { View } from './session'

/** The zone that a view cuts: the first of its side. Throws on an opening that the project does not have. */
export const placeOf = (project: Project, { opening, side }: View): ZonePlace => ({
  opening,
  side,
  zone: openingOf(project, opening).sides[side][0],
})
