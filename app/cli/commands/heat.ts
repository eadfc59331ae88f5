import { purposes } from '../../../core/heat'
import { cutOption, openingOption } from '../cut-place'
import { problemsText } from '../text/problems'
import type { Command } from './command'
import { languageOf, languageOption } from './language'

/** Solves the heat flow through one cut of a project, or through any section in the plain format. */
export const heat: Command = {
  name: 'heat',
  says: 'solve the heat flow through one cut of a project, or through a plain section',
  takes: [{ name: 'file', says: 'the project file', mayMiss: true }],
  options: [
    openingOption,
    cutOption,
    {
      flags: '--purpose <purpose>',
      says: 'what for: it sets the surface resistances',
      choices: purposes,
      usually: 'heat-loss',
    },
    {
      flags: '--sensitivities',
      says: 'solve again with each input a little changed: what moves the coldest place most, and how sure it is',
    },
    {
      flags: '--positions <mm>',
      says: 'compare up to four places of the frame from the bearing layer, like "0, 40, 80", or usual',
    },
    { flags: '--section <file>', says: 'a section in the plain format, instead of a project' },
    { flags: '--json', says: 'write the result as JSON, for other programs' },
    languageOption,
  ],
  run: async ([file = ''], chosen, io) => {
    const language = languageOf(chosen)
    const section = chosen['section']
    const input = typeof section === 'string' ? section : file
    // The solver weighs as much as all the rest: only this command loads it.
    const { solveCut, solvePlain } = await import('../solve-heat')
    const said = typeof section === 'string' ? await solvePlain(section) : await solveCut(file, chosen)
    if (!said.ok) {
      io.err(problemsText(input, said.problems, language))
      return 2
    }
    const { json, text } = said.value
    io.out(chosen['json'] === true ? `${JSON.stringify(json, undefined, 2)}\n` : text(language))
    return 0
  },
}
