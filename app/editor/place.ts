import { type Project, type ZonePlace, openingOf } from '../../core/detail'
import type { View } from './session'

/** The zone that a view cuts: the one it names, else the first of its side. Throws on an opening that the project does not have. */
export const placeOf = (project: Project, { opening, side, zone }: View): ZonePlace => {
  const zones = openingOf(project, opening).sides[side]
  return { opening, side, zone: zones.find(it => it.id === zone) ?? zones[0] }
}
