import { beadDepths_mm } from '../../movement'
import { lookUp, type Practice } from '../../practice'
import { rodSizes_mm } from '../../seals'
import { type Band, type Bounds, isInside, marginOf } from '../../units'
import { isSome, type Some } from '../../words'

/** Where a joint is while sizes are sought for it, over all zones that it is used in. */
export type Room = { readonly planned_mm: number; readonly still_mm: Band; readonly moving_mm: Band }

/** A size, and whether it suits or only comes nearest. */
export type Size<T> = { readonly value: T; readonly suits: boolean }

/** A bead half as deep as the joint is wide, or as near to that as both ends of the joint allow; whole or half millimetres. */
export const beadDepth = (room: Room, practice: Practice): Size<number> => {
  const { min, max } = depthsIn(room.still_mm, practice)
  const wanted = Math.min(Math.max(room.planned_mm / 2, min), max)
  for (const step of [1, 0.5])
    for (const steps of [Math.round(wanted / step), Math.ceil(min / step), Math.floor(max / step)])
      if (min <= steps * step && steps * step <= max) return { value: steps * step, suits: true }
  return { value: Math.round(Math.max(wanted, min)), suits: false }
}

/** Depths that suit both ends of a joint under a practice; `min > max` where none does. */
export const depthsIn = (still_mm: Band, practice: Practice): Band =>
  beadDepths_mm(still_mm, width_mm => lookUp(practice, 'sealant-depth', { width_mm })?.then ?? {})

/** The stock rod whose oversize suits both ends of the joint, nearest to a quarter; else the one that comes nearest to it. */
export const rodSize = (room: Room, practice: Practice): Size<number> => {
  const tiers = oversizes(room.still_mm.max, practice)
  for (const within of tiers) {
    const suit = rodSizes_mm.filter(it => isInside(oversize_pct(it, room.still_mm), within))
    const offQuarter = (rod_mm: number) => Math.abs(rod_mm - quarterWider * room.planned_mm)
    if (isSome(suit)) return { value: nearestOf(suit, offQuarter), suits: true }
  }
  const loosest = tiers.at(-1) ?? { unit: 'pct' }
  const outside = (rod_mm: number) => -marginOf(oversize_pct(rod_mm, room.still_mm), loosest)
  return { value: nearestOf(rodSizes_mm, outside), suits: false }
}

/** "About 25 % wider": common practice. */
const quarterWider = 1.25

/** What the practice allows of a rod, the wanted bounds first. */
export const oversizes = (width_mm: number, practice: Practice): readonly Bounds[] => {
  const row = lookUp(practice, 'backing-oversize', { width_mm })
  return [row, row?.last].flatMap(tier => (tier ? [{ unit: 'pct', ...tier.then.share_pct } as const] : []))
}

/** Diameter of a rod as a share of the joint, at the widest and at the narrowest. */
export const oversize_pct = (rod_mm: number, still_mm: Band): Band => ({
  min: (100 * rod_mm) / still_mm.max,
  max: still_mm.min > 0 ? (100 * rod_mm) / still_mm.min : Infinity,
})

/** The first of some printed ranges that holds the moving joint, with the planned width in its lower half where there is one. */
export const tapeRange_mm = ({ planned_mm, moving_mm }: Room, ranges_mm: readonly Band[]): Size<Band> => {
  const suit = ranges_mm.filter(it => it.min <= moving_mm.min && moving_mm.max <= it.max)
  const value = suit.find(it => planned_mm <= (it.min + it.max) / 2) ?? suit[0]
  if (value) return { value, suits: true }
  const outside = (it: Band) => -marginOf(moving_mm, { unit: 'mm', ...it })
  return { value: isSome(ranges_mm) ? nearestOf(ranges_mm, outside) : moving_mm, suits: false }
}

const nearestOf = <T>([first, ...more]: Some<T>, off: (it: T) => number): T =>
  more.reduce((best, it) => (off(it) < off(best) ? it : best), first)
