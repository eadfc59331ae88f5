import { type Project, type ZonePlace, zonesOf } from '../../core/detail'
import { type Side, sides } from '../../core/kinds'
import { type Result, ok, refused } from '../../core/units'
import { type Some, filled, isSome, words } from '../../core/words'
import type { Chosen, Option } from './commands/command'

/** Which opening is cut. */
export const openingOption: Option = { flags: '--opening <id>', says: 'the opening, instead of the first' }

/** Which side is cut. */
export const cutOption: Option = {
  flags: '--cut <side>',
  says: 'the side that is cut',
  choices: ['jamb', ...sides],
  usually: 'jamb',
}

/** Which sides stand on a sheet. */
export const cutsOption: Option = {
  flags: '--cut <side>',
  says: 'the side that is cut; all puts head, jamb and sill on one sheet',
  choices: ['jamb', ...sides, 'all'],
  usually: 'jamb',
}

/** The zones of a sheet: one, or the first of head, left jamb and sill. */
export const cutPlaces = (project: Project, chosen: Chosen): Result<Some<ZonePlace>> => {
  if (chosen['cut'] !== 'all') {
    const place = cutPlace(project, chosen)
    return place.ok ? ok([place.value]) : place
  }
  const places = (['head', 'left', 'sill'] as const).map(cut => cutPlace(project, { ...chosen, cut }))
  const found = places.flatMap(it => (it.ok ? [it.value] : []))
  return isSome(found) ? ok(found) : cutPlaces(project, { ...chosen, cut: 'head' })
}

/** The first zone of the side. A jamb that is not told from the other is the left one. */
export const cutPlace = (project: Project, chosen: Chosen): Result<ZonePlace> => {
  const asked = chosen['cut'] === 'jamb' ? 'left' : chosen['cut']
  const side: Side = sides.find(it => it === asked) ?? 'left'
  const opening = typeof chosen['opening'] === 'string' ? chosen['opening'] : Object.keys(project.openings)[0]
  const place = zonesOf(project).find(it => it.opening === opening && it.side === side)
  return place
    ? ok(place)
    : refused({ at: '', say: filled(noOpening, opening ?? '', Object.keys(project.openings).join(', ')) })
}

const noOpening = words('no opening is called “{0}”; there are {1}', 'keine Öffnung heißt „{0}“; es gibt {1}')
