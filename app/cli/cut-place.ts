import { type Project, type ZonePlace, zonesOf } from '../../core/detail'
import { type Side, sides } from '../../core/kinds'
import { type Result, ok, refused } from '../../core/units'
import { filled, words } from '../../core/words'
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
