import { type Project, type ZonePlace, zonesOf } from '../../../core/detail'
import { type Side, sides } from '../../../core/kinds'
import { type Problem, type Result, ok, refused } from '../../../core/units'
import { filled, words } from '../../../core/words'
import { readProject } from '../read-project'
import { problemsText } from '../text/problems'
import type { Chosen, Command } from './command'
import { languageOf, languageOption } from './language'

/** Draws one cut of a project on a sheet, to scale, in the format that the name of the file asks for. */
export const draw: Command = {
  name: 'draw',
  says: 'draw one cut of a project on a sheet, true to scale',
  takes: [{ name: 'file', says: 'the project file' }],
  options: [
    { flags: '--to <file>', says: 'where to write; its ending names the format, as in jamb.svg' },
    {
      flags: '--scale <scale>',
      says: 'scale, as in 1:2, instead of the largest that fits on the smallest sheet',
    },
    { flags: '--opening <id>', says: 'the opening, instead of the first' },
    { flags: '--cut <side>', says: 'the side that is cut', choices: ['jamb', ...sides], usually: 'jamb' },
    {
      flags: '--ink <ink>',
      says: 'black for copiers, or colour',
      choices: ['black', 'colour'],
      usually: 'black',
    },
    languageOption,
  ],
  run: async ([file = ''], chosen, io) => {
    const language = languageOf(chosen)
    const refuse = (of: string, problems: readonly Problem[]) => {
      io.err(problemsText(of, problems, language))
      return 2 as const
    }
    // Sheets and formats weigh more than all the rest: only drawing loads them.
    const { targetOf, writeSheet } = await import('../write-sheet')
    const target = targetOf(chosen['to'])
    if (!target.ok) return refuse('--to', target.problems)
    const opened = await readProject(file)
    if (!opened.ok) return refuse(file, opened.problems)
    const { project } = opened.value
    const place = placeOf(project, chosen)
    if (!place.ok) return refuse('--opening', place.problems)
    const palette = chosen['ink'] === 'colour' ? 'colour' : 'black'
    const written = await writeSheet(project, place.value, target.value, {
      language,
      palette,
      ...(typeof chosen['scale'] === 'string' && { scale: chosen['scale'] }),
    })
    if (!written.ok) return refuse('', written.problems)
    io.out(`${written.value}\n`)
    return 0
  },
}

/** The first zone of the side. A jamb that is not told from the other is the left one. */
const placeOf = (project: Project, chosen: Chosen): Result<ZonePlace> => {
  const asked = chosen['cut'] === 'jamb' ? 'left' : chosen['cut']
  const side: Side = sides.find(it => it === asked) ?? 'left'
  const opening = typeof chosen['opening'] === 'string' ? chosen['opening'] : Object.keys(project.openings)[0]
  const place = zonesOf(project).find(it => it.opening === opening && it.side === side)
  return place
    ? ok(place)
    : refused({ at: '', say: filled(noOpening, opening ?? '', Object.keys(project.openings).join(', ')) })
}

const noOpening = words('no opening is called “{0}”; there are {1}', 'keine Öffnung heißt „{0}“; es gibt {1}')
