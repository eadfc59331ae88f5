import type { Side } from '../kinds'
import type { Fixing, Mullion } from './fixing'
import type { Opening } from './model'

/** A stretch of a side between corners, mullions and transoms, along the side from its left or lower end. */
export type FrameBay = {
  readonly from_mm: number
  readonly to_mm: number
  /** from either end of the bay to the axis next to it: past the frame's face at a corner, past half of a member's face */
  readonly first_mm: number
  readonly last_mm: number
  /** axes of fixings in it, ascending */
  readonly axes_mm: readonly number[]
}

/** The fixings of one side: bays and axes from its left or lower end, and the largest distance between two axes. */
export type SideFixings = {
  readonly length_mm: number
  readonly bays: readonly FrameBay[]
  readonly axes_mm: readonly number[]
  /** where fewer than two fixings hold a side, its whole length */
  readonly spacing_mm: number
}

/** Length of a side of the frame: its width at head and sill, its height at the jambs. */
export const sideLength_mm = (opening: Opening, side: Side): number =>
  (side === 'head' || side === 'sill' ? opening.width_mm : opening.height_mm).value

/** Members that stand on a side: mullions on head and sill, transoms on the jambs. */
export const membersAt = (opening: Opening, side: Side): readonly Mullion[] =>
  (side === 'head' || side === 'sill' ? opening.mullions : (opening.transoms ?? [])).toSorted(
    (a, b) => a.at_mm.value - b.at_mm.value,
  )

/** Fixings that somebody has placed on a side: by a count, or by the axes themselves. */
export const placedAt = (opening: Opening, side: Side): readonly Fixing[] =>
  opening.fixings.filter(
    it => it.positions_mm?.[side] !== undefined || (it.counts?.[side] !== undefined && it.corner_mm),
  )

/**
 * Where the fixings of a side stand. Axes that are stated are taken; a count is spread over the bays so that each has
 * two first, and then so that the largest distance shrinks. Nothing where nobody has said how many a side has, or how
 * far from the corner the first stands.
 */
export const sideFixings = (opening: Opening, side: Side, face_mm: number): SideFixings | undefined => {
  const fixings = placedAt(opening, side)
  if (fixings.length === 0) return undefined
  const length_mm = sideLength_mm(opening, side)
  const axes_mm = fixings
    .flatMap(it => it.positions_mm?.[side] ?? spread(opening, side, face_mm, it))
    .toSorted((a, b) => a - b)
  const corner_mm = fixings.find(it => it.corner_mm)?.corner_mm?.value ?? axes_mm[0] ?? 0
  const bays = emptyBays(opening, side, face_mm, corner_mm).map(bay => ({
    ...bay,
    axes_mm: axes_mm.filter(it => bay.from_mm < it && it <= bay.to_mm),
  }))
  const gaps_mm = axes_mm.slice(1).map((it, i) => it - (axes_mm[i] ?? 0))
  return { length_mm, bays, axes_mm, spacing_mm: gaps_mm.length === 0 ? length_mm : Math.max(...gaps_mm) }
}

/** Fixings that a bay needs so that no distance in it is larger than asked; where one is enough, one. */
export const neededIn = (bay: FrameBay, spacing_mm: number, least: number): number => {
  if (least < 2) return least
  const between_mm = bay.to_mm - bay.from_mm - bay.first_mm - bay.last_mm
  // Half a micrometre is rounding, no distance.
  return Math.max(least, Math.ceil(between_mm / spacing_mm - 5e-7) + 1)
}

/** The bays of a side before anything is fixed. */
export const emptyBays = (
  opening: Opening,
  side: Side,
  face_mm: number,
  corner_mm: number,
): readonly FrameBay[] => {
  const length_mm = sideLength_mm(opening, side)
  const members = membersAt(opening, side)
  const ends = [
    { at_mm: 0, off_mm: face_mm + corner_mm },
    ...members.map(it => ({ at_mm: it.at_mm.value, off_mm: it.face_mm.value / 2 + corner_mm })),
    { at_mm: length_mm, off_mm: face_mm + corner_mm },
  ]
  return ends.slice(1).map((end, i): FrameBay => {
    const start = ends[i] ?? end
    return {
      from_mm: start.at_mm,
      to_mm: end.at_mm,
      first_mm: start.off_mm,
      last_mm: end.off_mm,
      axes_mm: [],
    }
  })
}

const spread = (opening: Opening, side: Side, face_mm: number, fixing: Fixing): readonly number[] => {
  const corner_mm = fixing.corner_mm?.value ?? 0
  const bays = emptyBays(opening, side, face_mm, corner_mm)
  const counts = bays.map(() => 0)
  for (let left = fixing.counts?.[side]?.value ?? 0; left > 0; left--) {
    const at = bays.reduce((worst, bay, i) => {
      const other = bays[worst]
      return other && need(bay, counts[i] ?? 0) > need(other, counts[worst] ?? 0) ? i : worst
    }, 0)
    counts[at] = (counts[at] ?? 0) + 1
  }
  return bays.flatMap((bay, i) => axesIn(bay, counts[i] ?? 0))
}

/** How much a bay wants one more: a bay with fewer than two before all others, else by its largest distance. */
const need = (bay: FrameBay, count: number): number =>
  count < 2 ? 1e6 * (2 - count) + bay.to_mm - bay.from_mm : betweenAxes_mm(bay) / (count - 1)

const betweenAxes_mm = (bay: FrameBay): number =>
  Math.max(0, bay.to_mm - bay.from_mm - bay.first_mm - bay.last_mm)

const axesIn = (bay: FrameBay, count: number): readonly number[] => {
  if (count === 1) return [(bay.from_mm + bay.to_mm) / 2]
  return Array.from(
    { length: count },
    (_, i) => bay.from_mm + bay.first_mm + (betweenAxes_mm(bay) * i) / (count - 1),
  )
}
