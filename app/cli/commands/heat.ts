import { type Project, type ZonePlace, frameOf, materialOf } from '../../../core/detail'
import {
  type Purpose,
  type SectionHeat,
  plainResult,
  purposes,
  readPlainCase,
  solveCase,
  solveSection,
  usualAccuracy,
  usualClimate,
} from '../../../core/heat'
import { jointBand } from '../../../core/movement'
import { cutSection } from '../../../core/section'
import { type Problem, type Result, ok, refused } from '../../../core/units'
import { words } from '../../../core/words'
import { cutOption, cutPlace, openingOption } from '../cut-place'
import { readProject } from '../read-project'
import { readText } from '../read-text'
import { heatText, plainText } from '../text/heat'
import { problemsText } from '../text/problems'
import type { Chosen, Command } from './command'
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
    { flags: '--section <file>', says: 'a section in the plain format, instead of a project' },
    { flags: '--json', says: 'write the result as JSON, for other programs' },
    languageOption,
  ],
  run: async ([file = ''], chosen, io) => {
    const language = languageOf(chosen)
    const section = chosen['section']
    const input = typeof section === 'string' ? section : file
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

/** A result, as an object and in words. */
type Said = { readonly json: unknown; readonly text: (language: 'en' | 'de') => string }

const solvePlain = async (path: string): Promise<Result<Said>> => {
  const text = await readText(path)
  if (!text.ok) return text
  const read = readPlainCase(text.value)
  if (!read.ok) return read
  const solved = solveCase(read.value, usualAccuracy, () => performance.now())
  if (!solved.ok) return solved
  const result = plainResult(solved.value)
  return ok({ json: result, text: language => plainText(result, language) })
}

const solveCut = async (file: string, chosen: Chosen): Promise<Result<Said>> => {
  if (file === '') return refused({ at: 'file', say: noFile })
  const opened = await readProject(file)
  if (!opened.ok) return opened
  const { project } = opened.value
  const place = cutPlace(project, chosen)
  if (!place.ok) return refused(...withOption(place.problems))
  const purpose = purposes.find(it => it === chosen['purpose']) ?? 'heat-loss'
  const solved = heatOf(project, place.value, purpose)
  if (!solved.ok) return solved
  const json = {
    opening: place.value.opening,
    side: place.value.side,
    purpose,
    climate: usualClimate,
    ...solved.value,
  }
  return ok({ json, text: language => heatText(solved.value, language) })
}

const withOption = ([first, ...more]: readonly [Problem, ...Problem[]]): [Problem, ...Problem[]] => [
  { ...first, at: '--opening' },
  ...more,
]

const heatOf = (project: Project, place: ZonePlace, purpose: Purpose): Result<SectionHeat> => {
  const { planned_mm } = jointBand(project, place.opening, place.side, place.zone.id)
  const frame = frameOf(project, place.opening).id
  const solved = solveSection(cutSection(project, place, { state: 'planned', width_mm: planned_mm }), {
    climate: usualClimate,
    purpose,
    materialOf: id => materialOf(project, id),
    isElement: part => part === frame || part.startsWith(`${frame}/`),
  })
  return solved.ok ? ok(solved.value.heat) : solved
}

const noFile = words(
  'a project file or --section is needed',
  'eine Projektdatei oder --section wird gebraucht',
)
