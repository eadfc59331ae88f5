import { cutOption, openingOption } from '../cut-place'
import { problemsText } from '../text/problems'
import type { Command } from './command'
import { languageOf, languageOption } from './language'

/** Solves the vapour of one cut of a project: s_d of the planes, a path by two periods and by months, and the field. */
export const vapour: Command = {
  name: 'vapour',
  says: 'solve vapour in one cut of a project: planes, a path by two periods and by months, the field',
  takes: [{ name: 'file', says: 'the project file' }],
  options: [
    openingOption,
    cutOption,
    {
      flags: '--path <where>',
      says: 'joint, wall, or a place across the joint in mm from the reveal',
      usually: 'joint',
    },
    { flags: '--field', says: 'solve the field of the cut too, with the zone where water gathers' },
    { flags: '--json', says: 'write the result as JSON, for other programs' },
    languageOption,
  ],
  run: async ([file = ''], chosen, io) => {
    const language = languageOf(chosen)
    // The solver weighs as much as all the rest: only this command loads it.
    const { solveVapour } = await import('../solve-vapour')
    const said = await solveVapour(file, chosen)
    if (!said.ok) {
      io.err(problemsText(file, said.problems, language))
      return 2
    }
    const { json, text } = said.value
    io.out(chosen['json'] === true ? `${JSON.stringify(json, undefined, 2)}\n` : text(language))
    return 0
  },
}
