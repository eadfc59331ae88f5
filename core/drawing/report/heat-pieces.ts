import { openingOf, type Project, sideNameAt } from '../../detail'
import {
  conditionsTable,
  coldestOf,
  pathWords,
  periodsTable,
  planesTable,
  profileTable,
  psiTable,
  surenessTable,
  type Table,
  yearTable,
  type ZoneStudy,
} from '../../study'
import { filled, type Language, listed, same, type Words, words } from '../../words'
import { inWords, writeNumber } from '../../units'
import type { Place as ChartPlace } from '../heat/scale-marks'
import type { Mark } from '../mark'
import { a4 } from '../sheet/paper'
import { profileChart } from '../vapour/profile-chart'
import { yearChart } from '../vapour/year-chart'
import type { Piece } from './pages'
import { headingPiece, rowPiece } from './pieces'
import { tablePieces } from './table-piece'

/** Conditions, results and sums of each zone that was solved, ready for pages. */
export const heatPieces = (
  project: Project,
  studies: readonly ZoneStudy[],
  language: Language,
): readonly Piece[] =>
  studies.flatMap(it => {
    const where = filled(same('{0}, {1}'), same(openingOf(project, it.place.opening).name), sideNameAt(project, it.place.opening, it.place.side))
    return [
      headingPiece(filled(words('Heat and vapour: {0}', 'Wärme und Dampf: {0}'), where)[language], 2),
      ...resultRows(it, language),
      ...tablesOf(project, it).flatMap(table => tablePieces(table, language)),
      ...vapourPieces(project, it, language),
    ]
  }) // prettier-ignore

const tablesOf = (project: Project, { loss, vapour, sureness }: ZoneStudy): readonly Table[] => {
  const { heat } = loss.solved
  const { psi, coupling_W_mK } = heat
  return [
    conditionsTable(project, loss.conditions, ['heat-loss', 'surface-humidity']),
    ...(psi && coupling_W_mK !== undefined ? [psiTable(project, psi, coupling_W_mK)] : []),
    surenessTable(sureness),
    planesTable(vapour.planes),
  ]
} // prettier-ignore

/** The path with its charts; where a part has nothing declared, what is missing. */
const vapourPieces = (
  project: Project,
  { place, humid, vapour }: ZoneStudy,
  language: Language,
): readonly Piece[] => {
  const { along } = vapour
  const said = (table: Table) => tablePieces(table, language)
  if (!along.ok) {
    const notes = along.problems.map(one => filled(same('{0}: {1}'), one.at, one.say))
    return said({ title: notComputed, head: [], rows: [], notes })
  }
  const profile = profileTable(project, place, along.value)
  return [
    ...said(withNote(profile, pathWords(vapour))),
    chartPiece(chart_mm.profile, on => profileChart(along.value, on, language)),
    ...said(periodsTable(project, place, along.value)),
    ...said(yearTable(along.value, humid.conditions)),
    ...(along.value.year.rows.length > 0
      ? [chartPiece(chart_mm.year, on => yearChart(along.value.year, on, language))]
      : []),
  ]
}

/** How high charts are on a page. Ours. */
const chart_mm = { profile: 52, year: 38 } as const

const chartPiece = (height_mm: number, draw: (on: ChartPlace) => readonly Mark[]): Piece => ({
  height_mm: height_mm + 2,
  above_mm: 3,
  draw: ([x, y]) => draw({ at: [x, y - height_mm], size: [a4.frame[1][0] - a4.frame[0][0], height_mm] }),
})

const withNote = (table: Table, note: Words): Table => ({ ...table, notes: [note, ...table.notes] })

const notComputed = words(
  'Vapour along the path is not computed',
  'Dampf entlang des Wegs wird nicht gerechnet',
)

const resultRows = ({ loss, humid }: ZoneStudy, language: Language): readonly Piece[] => {
  const { heat } = loss.solved
  const coldest = coldestOf(humid.solved.heat.lowest)
  const rows: readonly (readonly [Words, Words])[] = [
    ...(heat.psi ? [[same('Psi'), filled(same('{0} W/(m·K)'), number(heat.psi.psi_W_mK, 3))] as const] : []),
    ...(heat.coupling_W_mK === undefined ? [] : [[same('L2D'), filled(same('{0} W/(m·K)'), number(heat.coupling_W_mK, 4))] as const]),
    ...(coldest
      ? [[words('coldest inside', 'kälteste innen'), filled(same('{0} °C, fRsi {1}'), number(coldest.temperature_C, 1), number(coldest.fRsi, 3))] as const]
      : []),
    [
      words('mesh', 'Netz'),
      filled(
        words('{0} unknowns, error of the flow at most {1} % (estimated, one-sided); cases passed: {2}', '{0} Unbekannte, Fehler des Stroms höchstens {1} % (geschätzt, einseitig); bestandene Fälle: {2}'),
        heat.unknowns,
        number(heat.errorEstimate_percent, 3),
        listed(heat.passed.map(same)),
      ),
    ],
  ]
  return rows.map(([label, value]) => rowPiece({ label: label[language], text: value[language] }))
} // prettier-ignore

const number = (value: number, places: number): Words =>
  Number.isFinite(value)
    ? inWords(language => writeNumber(Number(value.toFixed(places)), language, places))
    : same('–')
