import type { Id } from '../../geometry'
import type { Site } from './anchors'
import type { Column, Slots } from './columns'
import { conflictOf, crossing, type Leader } from './leaders'
import { rowsToTry, type Slot, waysOf } from './rows'
import type { Picture } from './scene'
import { leaderAt, seenFrom } from './seen'
import { conflictCost, settle } from './settle'

/** Leaders by part, and the slots that they end at. */
export type Layout = {
  readonly leaders: ReadonlyMap<Id, Leader>
  readonly slots: Slots
  readonly conflicts: number
  /** how many words of sizes leaders strike through */
  readonly struck: number
}

/**
 * Numbers a picture from one column or from two: evenly spaced slots, the cheapest assignment of parts to them, then
 * exchanges until no leader crosses or crowds another, of whichever column. The same sites give the same layout.
 */
export const layOutColumns = (
  sites: readonly Site[],
  picture: Picture,
  columns: readonly Column[],
  kept?: Slots,
): Layout => (kept ? follow(sites, picture, columns, kept) : layOutFromNothing(sites, picture, columns))

/** Numbers a picture from a single column. */
export const layOut = (sites: readonly Site[], picture: Picture, column: Column): Layout =>
  layOutFromNothing(sites, picture, [column])

const layOutFromNothing = (sites: readonly Site[], picture: Picture, columns: readonly Column[]): Layout => {
  const ways = waysOf(columns.map(it => seenFrom(it, sites, picture)))
  const tries = rowsToTry(columns, { count: sites.length, middle: middleOf(sites) }, ways)
  let best: ({ readonly slots: readonly Slot[] } & Settled) | undefined
  for (const [at, { slots, start, sum }] of tries.entries()) {
    // settling only adds conflicts to what the assignment costs
    if (best && (best.total <= sum || isGoodEnough(best.total, at))) break
    const cheapest = sites.flatMap((_, part) => slots.map(slot => ways(slot).cheapest(part)))
    const optionsAt = (part: number, slot: number): readonly Leader[] => {
      const it = slots[slot]
      return it ? ways(it).all(part) : []
    }
    const settled = settle(cheapest, start, optionsAt)
    if (best === undefined || settled.total < best.total)
      best = { slots, total: settled.total, leaders: settled.leaders, holds: settled.slots }
  }
  if (best === undefined) return { leaders: new Map(), slots: [], conflicts: 0, struck: 0 }
  const { slots, holds, leaders } = best
  const held = sites.map((site, part) => {
    const slot = slots[holds[part] ?? 0]
    return { id: site.id, side: columns[slot?.at ?? 0]?.side ?? 'right', y: slot?.y ?? 0 }
  })
  return layoutOf(held, leaders)
}

/** The mean height of the corners of what is numbered. */
const middleOf = (sites: readonly Site[]): number => {
  const ys = sites.flatMap(it =>
    [...it.shapes.flatMap(shape => shape.loops.flat()), ...it.places].map(([, y]) => y),
  )
  return ys.reduce((sum, y) => sum + y, 0) / Math.max(1, ys.length)
}

type Settled = {
  readonly total: number
  readonly leaders: readonly Leader[]
  readonly holds: Int32Array
}

/** Of the rows that the assignment gives, so many of the cheapest are settled, and more where leaders are still in conflict. Ours. */
const mostSettled = 2
const mostTried = 4

/** Whether no more rows are settled after so many: all of them are before leaders cross. */
const isGoodEnough = (total: number, settled: number): boolean =>
  total < conflictCost ? settled >= mostSettled : total < crossing * conflictCost && settled >= mostTried

/** Keeps each part in the slot that it has, and moves dots only: while something is dragged, numbers stand still. */
const follow = (
  sites: readonly Site[],
  picture: Picture,
  columns: readonly Column[],
  kept: Slots,
): Layout => {
  const found = columns.flatMap(column => {
    const own = kept.flatMap(slot => {
      const site = slot.side === column.side ? sites.find(it => it.id === slot.id) : undefined
      return site ? [{ site, slot }] : []
    })
    const seen = seenFrom(
      column,
      own.map(it => it.site),
      picture,
    )
    return own.map(({ slot }, part) => ({ slot, leader: leaderAt(seen, part, slot.y) }))
  })
  return layoutOf(
    found.map(it => it.slot),
    found.map(it => it.leader),
  )
}

/** A layout of leaders in the order of those who hold them. */
const layoutOf = (held: Slots, leaders: readonly Leader[]): Layout => ({
  leaders: new Map(
    held.flatMap((it, at) => {
      const leader = leaders[at]
      return leader ? [[it.id, leader] as const] : []
    }),
  ),
  slots: held.toSorted((a, b) => b.y - a.y),
  conflicts: leaders.reduce(
    (sum, a, at) => leaders.slice(at + 1).reduce((so, b) => so + conflictOf(a, b), sum),
    0,
  ),
  struck: leaders.reduce((sum, it) => sum + it.struck, 0),
})
