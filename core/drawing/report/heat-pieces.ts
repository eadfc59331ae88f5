import { openingOf, type Project } from '../../detail'
import { sideName } from '../../kinds'
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
    const where = filled(same('{0}, {1}'), same(openingOf(project, it.place.opening).name), sideName[it.place.side])
    return [
      headingPiece(filled(words('Heat and vapour: {0}', 'Wärme und Dampf: {0}'), where)[language], 2),
      ...resultRows(it, language),
      ...tablesOf(project, it).flatMap(table => tablePieces(table, language)),
    ]
  }) // prettier-ignore

const tablesOf = (project: Project, { place, loss, humid, vapour, sureness }: ZoneStudy): readonly Table[] => {
  const { heat } = loss.solved
  const { psi, coupling_W_mK } = heat
  const { along } = vapour
  return [
    conditionsTable(project, loss.conditions, ['heat-loss', 'surface-humidity']),
    ...(psi && coupling_W_mK !== undefined ? [psiTable(project, psi, coupling_W_mK)] : []),
    surenessTable(sureness),
    planesTable(vapour.planes),
    ...(along.ok
      ? [
          withNote(profileTable(project, place, along.value), pathWords(vapour)),
          periodsTable(project, place, along.value),
          yearTable(along.value, humid.conditions),
        ]
      : [{ title: notComputed, head: [], rows: [], notes: along.problems.map(one => filled(same('{0}: {1}'), one.at, one.say)) }]),
  ]
} // prettier-ignore

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
