import { humidityClassName, roomAir, roomUseName, winterOfDin } from '../../air'
import type { Conditions, Project } from '../../detail'
import { type Purpose, film_W_m2K } from '../../heat'
import { fieldName } from '../../rules'
import { type Citation, source, trustName } from '../../sources'
import { filled, isSome, listed, same, type Words, words } from '../../words'
import { type Table, decimals, empty } from './table'

/** Air on both sides and the films that were used, with what is assumed and whose figures they are. */
export const conditionsTable = (project: Project, it: Conditions, purposes: readonly Purpose[]): Table => ({
  title: words('Conditions', 'Randbedingungen'),
  head: [empty, same('°C'), same('%'), same('Pa')],
  rows: [
    [filled(words('inside: {0}', 'innen: {0}'), roomUseName[it.use]), ...airCells(it.inside)],
    [words('outside', 'außen'), ...airCells(it.outside)],
    [words('ground', 'Erdreich'), decimals(it.ground_C, 1), empty, empty],
  ],
  notes: [
    filled(words('humidity class {0}', 'Feuchteklasse {0}'), humidityClassName[it.humidityClass]),
    ...purposes.map(filmsOf),
    ...citedIn(project, it).map(saidBy),
    ...(isSome(it.assumed)
      ? [filled(words('assumed: {0}', 'angenommen: {0}'), listed(it.assumed.map(fieldName)))]
      : []),
  ],
})

const airCells = (it: Conditions['inside']): readonly Words[] => [
  decimals(it.temperature_C, 1),
  decimals(it.humidity_pct, 0),
  decimals(it.vapour_Pa, 0),
]

/** Films of a purpose in m²K/W: wall and reveal, frame and glass, outside. */
const filmsOf = (purpose: Purpose): Words => {
  const film = (to: 'inside' | 'outside', of: 'wall' | 'frame') =>
    decimals(1 / film_W_m2K({ to, of }, purpose, false), 2)
  return filled(
    words(
      '{0}: Rsi {1} on wall, reveal and sill, {2} on frame and glass; Rse {3} m²K/W',
      '{0}: Rsi {1} an Wand, Leibung und Fensterbank, {2} an Rahmen und Glas; Rse {3} m²K/W',
    ),
    purposeName[purpose],
    film('inside', 'wall'),
    film('inside', 'frame'),
    film('outside', 'wall'),
  )
}

const purposeName: Readonly<Record<Purpose, Words>> = {
  'heat-loss': words('heat loss', 'Wärmeverlust'),
  'surface-humidity': words('surface humidity', 'Oberflächenfeuchte'),
  frame: words('frame', 'Rahmen'),
}

/** Whose figures are used where nobody stated others. */
const citedIn = (project: Project, it: Conditions): readonly Citation[] => {
  const isAssumed = (field: string) => it.assumed.some(at => at.field === field)
  return [
    ...(isAssumed('opening.inside-humidity') ? [roomAir[it.use].cite] : []),
    ...(isAssumed('site.outside-temperature') && project.site?.climate?.value !== 'coldest-month'
      ? [winterOfDin.cite]
      : []),
  ]
}

const saidBy = (cite: Citation): Words => {
  const title = source(cite.source)?.title ?? same(cite.source)
  return filled(same('{0} ({1})'), cite.clause ? filled(same('{0}, {1}'), title, same(cite.clause)) : title, trustName[cite.trust]) // prettier-ignore
}
