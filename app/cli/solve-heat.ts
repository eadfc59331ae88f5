import { type Project, type ZonePlace, frameOf, materialOf } from '../../core/detail'
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
} from '../../core/heat'
import { jointBand } from '../../core/movement'
import { cutSection } from '../../core/section'
import { type Problem, type Result, ok, refused } from '../../core/units'
import { words } from '../../core/words'
import type { Chosen } from './commands/command'
import { cutPlace } from './cut-place'
import { readProject } from './read-project'
import { readText } from './read-text'
import { heatText, plainText } from './text/heat'

/** A result, as an object and in words. */
export type Said = { readonly json: unknown; readonly text: (language: 'en' | 'de') => string }

/** Solves a section of the plain format. */
export const solvePlain = async (path: string): Promise<Result<Said>> => {
  const text = await readText(path)
  if (!text.ok) return text
  const read = readPlainCase(text.value)
  if (!read.ok) return read
  const solved = solveCase(read.value, usualAccuracy, () => performance.now())
  if (!solved.ok) return solved
  const result = plainResult(solved.value)
  return ok({ json: result, text: language => plainText(result, language) })
}

/** Solves one cut of a project. */
export const solveCut = async (file: string, chosen: Chosen): Promise<Result<Said>> => {
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
    materialOf: (id, part) => materialOf(project, id, part),
    isElement: part => part === frame || part.startsWith(`${frame}/`),
  })
  return solved.ok ? ok(solved.value.heat) : solved
}

const noFile = words(
  'a project file or --section is needed',
  'eine Projektdatei oder --section wird gebraucht',
)
