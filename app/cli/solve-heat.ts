import type { Project, ZonePlace } from '../../core/detail'
import { plainResult, purposes, readPlainCase, solveCase, usualAccuracy } from '../../core/heat'
import type { Report } from '../../core/rules'
import {
  type Table,
  type Variant,
  conditionsTable,
  psiTable,
  surenessOf,
  surenessTable,
  usualPositions,
  variantsOf,
  variantsTable,
  verdictsOf,
} from '../../core/study'
import { type Problem, type Result, ok, refused } from '../../core/units'
import { climateOf, physicsDesk, solveZone } from '../../core/vapour'
import { type Some, isSome, words } from '../../core/words'
import type { Chosen } from './commands/command'
import { cutPlace } from './cut-place'
import { readProject } from './read-project'
import { readText } from './read-text'
import { heatText, plainText } from './text/heat'
import { tablesText } from './text/tables'

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

/** Solves one cut of a project, and if asked what moves its coldest place and how other places of the frame compare. */
export const solveCut = async (file: string, chosen: Chosen): Promise<Result<Said>> => {
  if (file === '') return refused({ at: 'file', say: noFile })
  const opened = await readProject(file)
  if (!opened.ok) return opened
  const { project } = opened.value
  const place = cutPlace(project, chosen)
  if (!place.ok) return refused(...withOption(place.problems))
  const purpose = purposes.find(it => it === chosen['purpose']) ?? 'heat-loss'
  const zone = solveZone(project, place.value, { purpose })
  if (!zone.ok) return zone
  const study = studied(project, place.value, chosen)
  if (!study.ok) return study
  const { conditions, solved } = zone.value
  const { heat } = solved
  const json = {
    opening: place.value.opening,
    side: place.value.side,
    purpose,
    climate: climateOf(conditions),
    conditions,
    ...heat,
    ...study.value.json,
  }
  const tables = [
    conditionsTable(project, conditions, [purpose]),
    ...(heat.psi && heat.coupling_W_mK !== undefined
      ? [psiTable(project, heat.psi, heat.coupling_W_mK)]
      : []),
    ...study.value.tables,
  ]
  return ok({ json, text: language => `${heatText(heat, language)}\n${tablesText(tables, language)}` })
}

type Studied = { readonly json: Readonly<Record<string, unknown>>; readonly tables: readonly Table[] }

/** What was asked for beside the solution. */
const studied = (project: Project, place: ZonePlace, chosen: Chosen): Result<Studied> => {
  const sure = chosen['sensitivities'] === true ? surenessOf(project, place) : undefined
  if (sure && !sure.ok) return sure
  const positions = positionsOf(project, place, chosen['positions'])
  if (positions && !positions.ok) return positions
  const variants = positions ? variantsOf(project, place, positions.value) : undefined
  if (variants && !variants.ok) return refused(...atPositions(variants.problems))
  const physics = physicsDesk()
  const compared = variants?.value.map(variant => ({ variant, report: verdictsOf(variant, place, physics) }))
  return ok({
    json: {
      ...(sure && { sureness: sure.value }),
      ...(compared && { variants: compared.map(({ variant, report }) => variantJson(variant, report)) }),
    },
    tables: [...(sure ? [surenessTable(sure.value)] : []), ...(compared ? [variantsTable(compared)] : [])],
  })
}

const variantJson = ({ position_mm, isPresent, flow_W_m, psi, coldest }: Variant, { findings }: Report) => ({
  position_mm,
  isPresent,
  flow_W_m,
  ...(psi && { psi_W_mK: psi.psi_W_mK }),
  ...(coldest && { coldest }),
  findings: findings.map(({ rule, where, verdict }) => ({ rule, where, verdict })),
})

/** Positions as they were typed: `usual`, or up to four numbers with commas or semicolons between them. */
const positionsOf = (
  project: Project,
  place: ZonePlace,
  typed: unknown,
): Result<Some<number>> | undefined => {
  if (typeof typed !== 'string') return undefined
  if (typed === 'usual') return ok(usualPositions(project, place))
  const numbers = typed
    .split(typed.includes(';') ? ';' : ',')
    .map(it => Number(it.replace('−', '-').replace(',', '.')))
  return isSome(numbers) && numbers.every(Number.isFinite) && typed.trim() !== ''
    ? ok(numbers)
    : refused({ at: '--positions', say: noPositions })
}

const atPositions = ([first, ...more]: Some<Problem>): Some<Problem> => [
  { ...first, at: `--positions ${first.at}`.trim() },
  ...more,
]

const noPositions = words(
  'positions are numbers in mm like 0, 40, 80 or the word usual',
  'Lagen sind Zahlen in mm wie 0; 40; 80 oder das Wort usual',
)

const withOption = ([first, ...more]: readonly [Problem, ...Problem[]]): [Problem, ...Problem[]] => [
  { ...first, at: '--opening' },
  ...more,
]

const noFile = words(
  'a project file or --section is needed',
  'eine Projektdatei oder --section wird gebraucht',
)
