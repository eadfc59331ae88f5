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
    ...purposes.map(it => filmsOf(it, hasFloor(project))),
    ...(hasFloor(project) ? [groundWords] : []),
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

/** Whether a cut of a project shows a floor. */
const hasFloor = (project: Project): boolean =>
  Object.values(project.openings).some(it => it.threshold !== undefined)

/** How far a cut goes into the ground, and what that leaves out. */
const groundWords = words(
  'at a threshold the ground is cut 3 m below the surface, floor and surface at least 1 m beside the wall (EN ISO 10211, from memory): good for temperatures of surfaces; the ground takes part, so there is no Ψ',
  'an der Schwelle endet das Erdreich 3 m unter dem Belag, Fußboden und Belag mindestens 1 m neben der Wand (EN ISO 10211, aus der Erinnerung): gut für Oberflächentemperaturen; das Erdreich wirkt mit, also kein Ψ',
)

/** Films of a purpose in m²K/W: wall and reveal, frame and glass, outside. */
const filmsOf = (purpose: Purpose, withFloor: boolean): Words => {
  const film = (to: 'inside' | 'outside', of: 'wall' | 'frame' | 'floor') =>
    decimals(1 / film_W_m2K({ to, of }, purpose, false), 2)
  return filled(
    words(
      '{0}: Rsi {1} on wall, reveal and sill, {2} on frame and glass{4}; Rse {3} m²K/W',
      '{0}: Rsi {1} an Wand, Leibung und Fensterbank, {2} an Rahmen und Glas{4}; Rse {3} m²K/W',
    ),
    purposeName[purpose],
    film('inside', 'wall'),
    film('inside', 'frame'),
    film('outside', 'wall'),
    withFloor ? filled(words(', {0} on floors', ', {0} auf Fußböden'), film('inside', 'floor')) : same(''),
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
