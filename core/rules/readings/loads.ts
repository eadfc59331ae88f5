import { membersAt, type Opening, profileOf, sideFixings, sideLength_mm } from '../../detail'
import type { Side } from '../../kinds'
import {
  type Edge,
  edgeLoad_N_m,
  type Element,
  endReaction_N,
  type FixingForce,
  fixingForce,
  leverShare_N,
  type Wind,
  suction,
} from '../../load'
import type { Term } from '../../movement'
import { words } from '../../words'
import type { Place } from '../place'
import { type Beneath, placed, type Reading } from '../reading'

/** Wind on an element, and what it brings to the edge of its largest field. */
export type OnElement = Wind & {
  readonly element: Element
  readonly edge_N_m: number
  readonly inside: number
}

/** Wind on the element of an opening; nothing while nobody has told the wind. */
export const windOn = ({ opening }: Pick<Place, 'opening'>): OnElement | undefined => {
  const peak = opening.told?.wind_Pa
  if (!peak) return undefined
  const element = elementOf(opening)
  const inside = opening.told?.inside?.value ?? 0
  const wind = suction(peak.value, (element.width_mm * element.height_mm) / 1e6, inside)
  return { ...wind, element, inside, edge_N_m: edgeLoad_N_m(element, wind.pressure_Pa) }
}

/** Wind acts on the frame and on a box above it, which no member divides. */
const elementOf = (opening: Opening): Element => ({
  width_mm: opening.width_mm.value,
  height_mm: opening.height_mm.value + (opening.box?.height_mm.value ?? 0),
  mullions_mm: opening.mullions.map(it => it.at_mm.value),
  transoms_mm: (opening.transoms ?? []).map(it => it.at_mm.value),
})

export const edgeOf = (side: Side): Edge => (side === 'head' || side === 'sill' ? 'level' : 'upright')

/** What a member that ends on a side brings there, in N; nothing while nobody has told the wind. */
export const reactionsAt = (at: Place, side: Side = at.side): readonly { readonly at_mm: number; readonly reaction_N: number }[] => {
  const wind = windOn(at)
  if (!wind) return []
  return membersAt(at.opening, side).map(it => ({
    at_mm: it.at_mm.value,
    reaction_N: endReaction_N(wind.element, { edge: edgeOf(side), at_mm: it.at_mm.value }, wind.pressure_Pa),
  }))
} // prettier-ignore

/** The most loaded fixing of a side under wind. */
export type SideLoad = { readonly wind: OnElement; readonly force: FixingForce }

export const sideLoad: Reading<SideLoad> = placed({
  id: 'opening.side-load',
  name: words('Wind on the fixings', 'Wind auf die Befestigung'),
  compute: at => {
    const wind = windOn(at)
    const side = sideFixings(at.opening, at.side, profileOf(at.frame).face_mm)
    if (!wind || !side) return undefined
    const { length_mm, axes_mm } = side
    const members = reactionsAt(at)
    const force = fixingForce({ length_mm, axes_mm, edge_N_m: wind.edge_N_m, members, unheld_N: unheldBeside(at, wind) })
    return force && { wind, force }
  },
  beneath: at => loadBeneath(at),
}) // prettier-ignore

/** The stated values that a load hangs on. */
export const loadBeneath = ({ opening: { id, told, fixings } }: Place): readonly Beneath[] => [
  { field: 'opening.wind', part: id, stated: told?.wind_Pa },
  ...(fixings.length > 0 ? [] : [{ field: 'opening.fixings', part: id, stated: undefined }]),
]

/** End reactions of sides that nothing holds, at both ends of the side asked about. */
const unheldBeside = (at: Place, wind: OnElement): { readonly first: number; readonly last: number } => {
  const ends: readonly [Side, Side] = edgeOf(at.side) === 'upright' ? ['sill', 'head'] : ['left', 'right']
  const reaction = (side: Side): number =>
    isUnheld(at, side) ? (wind.edge_N_m * sideLength_mm(at.opening, side)) / 2000 : 0
  return { first: reaction(ends[0]), last: reaction(ends[1]) }
}

/** Whether somebody has said that a side has no fixing. */
export const isUnheld = (at: Place, side: Side): boolean =>
  sideFixings(at.opening, side, profileOf(at.frame).face_mm)?.axes_mm.length === 0

/** How the force on the most loaded fixing comes about. */
export const sideLoadSum = ({ wind, force }: SideLoad, factor: number): readonly Term[] => [
  { sign: '', value: wind.pressure_Pa, unit: 'Pa', says: words('suction at the edge of the wall', 'Sog am Wandrand') },
  { sign: '', value: wind.edge_N_m, unit: 'N_m', says: words('on the edge of the largest field', 'am Rand des größten Felds') },
  { sign: '×', value: force.tributary_mm, unit: 'mm', says: words('length that one fixing holds', 'Länge, die eine Befestigung hält') },
  ...(force.reaction_N === 0
    ? []
    : [{ sign: '+', value: force.reaction_N, unit: 'N', says: words('share of what ends beside it', 'Anteil dessen, was daneben endet') } as const]),
  { sign: '=', value: force.force_N, unit: 'N', says: words('on the most loaded fixing', 'auf der höchstbelasteten Befestigung') },
  { sign: '×', value: factor, unit: 'one', says: words('factor on wind', 'Teilsicherheitsbeiwert Wind') },
  { sign: '=', value: factor * force.force_N, unit: 'N', says: words('design force', 'Bemessungswert') },
] // prettier-ignore

/** A guard on the jambs: its line load shared by two fixings of each jamb. In N, characteristic; 0 where none is asked. */
export const guardOn = (at: Place, axes_mm: readonly number[]): number => {
  const { told, asked } = at.opening
  if (asked?.guarding?.value !== 'yes' || edgeOf(at.side) === 'level') return 0
  const line = told?.guard_N_m?.value
  const height_mm = told?.guardAt_mm?.value
  if (line === undefined || height_mm === undefined) return 0
  return leverShare_N(axes_mm, height_mm, (line * at.opening.width_mm.value) / 2000)
}
