import { type Project, type ZonePlace } from '../../core/detail'
import {
  conditionsTable,
  pathWords,
  periodsTable,
  planesTable,
  profileTable,
  type Table,
  yearTable,
} from '../../core/study'
import { type Result, inWords, ok, refused, writeNumber } from '../../core/units'
import {
  type PathAt,
  type SectionVapour,
  type VapourField,
  sectionField,
  sectionVapour,
  seconds,
  solveZone,
} from '../../core/vapour'
import { type Words, filled, isSome, same, words } from '../../core/words'
import type { Chosen } from './commands/command'
import { cutPlace } from './cut-place'
import { readProject } from './read-project'
import type { Said } from './solve-heat'
import { problemsText } from './text/problems'
import { tablesText } from './text/tables'

/** Solves the vapour of one cut of a project: its planes, a path, and if asked the field. */
export const solveVapour = async (file: string, chosen: Chosen): Promise<Result<Said>> => {
  const opened = await readProject(file)
  if (!opened.ok) return opened
  const { project } = opened.value
  const place = cutPlace(project, chosen)
  if (!place.ok) return refused({ ...place.problems[0], at: '--opening' })
  const at = pathOf(chosen['path'])
  if (!at.ok) return at
  const zone = solveZone(project, place.value, { purpose: 'surface-humidity' })
  if (!zone.ok) return zone
  const { conditions, vapourView, solved } = zone.value
  const vapour = sectionVapour(vapourView, at.value, conditions)
  const field = chosen['field'] === true ? sectionField(vapourView, solved.solution, conditions) : undefined
  return ok({
    json: {
      opening: place.value.opening,
      side: place.value.side,
      conditions,
      planes: vapour.planes,
      path: { at_mm: vapour.at_mm, ...alongJson(vapour) },
      ...(field && { field: field.ok ? fieldJson(field.value) : { problems: field.problems } }),
    },
    text: language => {
      const unknown = [vapour.along, ...(field ? [field] : [])].flatMap(it => (it.ok ? [] : it.problems))
      const tables = [
        conditionsTable(project, conditions, ['surface-humidity']),
        planesTable(vapour.planes),
        ...(vapour.along.ok ? alongTables(project, place.value, vapour, vapour.along.value, conditions) : []),
        ...(field?.ok ? [fieldTable(field.value)] : []),
      ]
      const missing = isSome(unknown) ? `\n${problemsText(file, unknown, language)}` : ''
      return tablesText(tables, language) + missing
    },
  })
}

const pathOf = (typed: unknown): Result<PathAt> => {
  if (typed === 'joint' || typed === 'wall') return ok(typed)
  const at = Number(String(typed).replace('−', '-').replace(',', '.').replace(/ ?mm$/, ''))
  return Number.isFinite(at) && Math.abs(at) <= mostAway_mm
    ? ok(at)
    : refused({ at: '--path', say: noPath, allowed: { unit: 'mm', min: -mostAway_mm, max: mostAway_mm } })
}

/** No cut reaches further from its joint. */
const mostAway_mm = 6000

const noPath = words(
  'a path is joint, wall, or a place in mm from the reveal across the joint',
  'ein Weg ist joint, wall oder eine Stelle in mm ab Leibung quer zur Fuge',
)

type Solved = Extract<SectionVapour['along'], { readonly ok: true }>['value']
type Air = Parameters<typeof yearTable>[1]

const alongTables = (
  project: Project,
  place: ZonePlace,
  vapour: SectionVapour,
  found: Solved,
  air: Air,
): readonly Table[] => {
  const profile = profileTable(project, place, found)
  return [
    { ...profile, notes: [pathWords(vapour), ...profile.notes] },
    periodsTable(project, place, found),
    yearTable(found, air),
  ]
}

const alongJson = ({ along }: SectionVapour) => (along.ok ? along.value : { problems: along.problems })

const fieldJson = (it: VapourField) => ({
  nodes: it.domain.nodes,
  wetNodes: wetNodes(it),
  gathers_kg_ms: it.whole_kg_ms,
  enters_kg_ms: it.enters_kg_ms,
  rounds: it.rounds,
  isSettled: it.isSettled,
})

const day_s = seconds(1)

const wetNodes = ({ isWet }: VapourField): number => isWet.reduce((sum, one) => sum + one, 0)

/** What the field says in numbers: how much enters, how much of it stays, where most. */
const fieldTable = (it: VapourField): Table => ({
  title: words('Vapour field of the cut in winter', 'Dampffeld des Schnitts im Winter'),
  head: [same(''), same('g/(m·d)')],
  rows: [
    [words('enters from inside', 'tritt von innen ein'), grams(it.enters_kg_ms)],
    [words('gathers in the section', 'fällt im Schnitt an'), grams(it.whole_kg_ms)],
  ],
  notes: [
    ...(it.whole_kg_ms > 0 ? [filled(words('most water at ({0} | {1}) mm', 'das meiste bei ({0} | {1}) mm'), ...wettest(it))] : []), // prettier-ignore
    ...(it.isSettled
      ? []
      : [words('the wet zone has not settled', 'die nasse Zone hat sich nicht eingestellt')]),
    words(
      'an estimate: steady diffusion in the plane of the cut; what is tight is left out, membranes hold pressures apart',
      'eine Abschätzung: stationäre Diffusion in der Schnittebene; Dichtes bleibt außen vor, Folien trennen Drücke',
    ),
  ],
})

const grams = (flow_kg_ms: number): Words =>
  inWords(language => writeNumber(Number((flow_kg_ms * day_s * 1000).toFixed(4)), language, 4))

const wettest = (it: VapourField): readonly Words[] => {
  const most = it.gathers_kg_ms.reduce(
    (best, rate, n) => (rate > (it.gathers_kg_ms[best] ?? 0) ? n : best),
    0,
  )
  return [it.x_mm[most] ?? 0, it.y_mm[most] ?? 0].map(value =>
    inWords(language => writeNumber(Number(value.toFixed(1)), language, 1)),
  )
}
