import {
  type Fixing,
  membersAt,
  type Opening,
  placedAt,
  profileOf,
  sideFixings,
  sideLength_mm,
} from '../../detail'
import type { Side } from '../../kinds'
import {
  type Edge,
  edgeLoad_N_m,
  type Element,
  endReaction_N,
  combined,
  factors,
  type FixingForce,
  fixingForce,
  leverShare_N,
  type Wind,
  suction,
} from '../../load'
import type { Term } from '../../movement'
import { type Words, words } from '../../words'
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
  const members = membersAt(at.opening, side)
  const wind = members.length > 0 ? windOn(at) : undefined
  if (!wind) return []
  return members.map(it => ({
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

/** The stated values that a load hangs on: the wind, and how the side is held. */
export const loadBeneath = (at: Place): readonly Beneath[] => {
  const { id, told, fixings } = at.opening
  const [first] = fixings
  return [
    { field: 'opening.wind', part: id, stated: told?.wind_Pa },
    ...(first ? [] : [{ field: 'opening.fixings', part: id, stated: undefined }]),
    ...(first && !sideFixings(at.opening, at.side, profileOf(at.frame).face_mm)
      ? [{ field: `fixing.count-${at.side}`, part: first.id, stated: first.counts?.[at.side] }]
      : []),
  ]
}

/** End reactions of sides that nothing holds, at both ends of the side asked about. */
const unheldBeside = (at: Place, wind: OnElement): { readonly first: number; readonly last: number } => {
  const ends: readonly [Side, Side] = edgeOf(at.side) === 'upright' ? ['sill', 'head'] : ['left', 'right']
  const reaction = (side: Side): number =>
    isUnheld(at, side) ? (wind.edge_N_m * sideLength_mm(at.opening, side)) / 2000 : 0
  return { first: reaction(ends[0]), last: reaction(ends[1]) }
}

/** Whether somebody has said that a side has no fixing. */
export const isUnheld = ({ opening }: Place, side: Side): boolean => {
  const all = placedAt(opening, side)
  const count = (it: Fixing) => it.positions_mm?.[side]?.length ?? it.counts?.[side]?.value ?? 0
  return all.length > 0 && all.every(it => count(it) === 0)
}

/** A side that nothing holds loads no fixing of its own. */
export const isHeld = (at: Place): true | Words =>
  isUnheld(at, at.side) ? words('no fixing holds this side', 'keine Befestigung hält diese Seite') : true

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
const guardOn = (at: Place): number => {
  const { told, asked } = at.opening
  if (asked?.guarding?.value !== 'yes' || edgeOf(at.side) === 'level') return 0
  const line = told?.guard_N_m?.value
  const height_mm = told?.guardAt_mm?.value
  if (line === undefined || height_mm === undefined) return 0
  const axes_mm = sideFixings(at.opening, at.side, profileOf(at.frame).face_mm)?.axes_mm ?? []
  return leverShare_N(axes_mm, height_mm, (line * at.opening.width_mm.value) / 2000)
}

/** What of the duty of the element counts: a guard on the jamb, a frame before the wall. */
export type Duty = { readonly guard_N: number; readonly isForward: boolean; readonly isGuard: boolean }
export const sideDuty: Reading<Duty> = placed({
  id: 'opening.duty',
  name: words('Guard, and place before the wall', 'Absturzsicherung und Lage vor der Wand'),
  compute: at => ({
    guard_N: factors.guard * guardOn(at),
    isForward: at.opening.position_mm.value < 0,
    isGuard: at.opening.asked?.guarding?.value === 'yes',
  }),
})

/** What governs of wind and guard: by EN 1990 the worse of both leads, or both in full where the practice asks so. */
export const designForce_N = (wind_N: number, guard_N: number, isInFull: boolean): number => {
  const { guardLeads, windLeads, inFull } = combined(wind_N, guard_N)
  return isInFull ? inFull : Math.max(guardLeads, windLeads)
}

/** How the design force comes about: wind, then the guard in every combination. */
export const designSum = (
  load: SideLoad,
  { wind, guard_N, isInFull }: { readonly wind: number; readonly guard_N: number; readonly isInFull: boolean },
): readonly Term[] => {
  const sum = sideLoadSum(load, wind)
  if (guard_N === 0) return sum
  const { guardLeads, windLeads, inFull } = combined(wind * load.force.force_N, guard_N)
  return [
    ...sum,
    { sign: '', value: guard_N, unit: 'N', says: words('guard on the nearer fixing, design value', 'Holm auf der näheren Befestigung, Bemessungswert') },
    { sign: '', value: guardLeads, unit: 'N', says: words('guard leads, wind with it', 'Holm führt, Wind dazu') },
    { sign: '', value: windLeads, unit: 'N', says: words('wind leads, guard with it', 'Wind führt, Holm dazu') },
    { sign: '', value: inFull, unit: 'N', says: isInFull ? words('both in full, which is asked here', 'beide voll, was hier verlangt ist') : words('both in full', 'beide voll') },
  ]
} // prettier-ignore

export const engineer = words('a structural engineer', 'eine Tragwerksplanerin, ein Tragwerksplaner')
/** A guard is never plainly met. */
export const guardCaution = {
  to: engineer,
  handOver: [words('proof of the fixing for guarding', 'Nachweis der Befestigung für die Absturzsicherung')],
}
