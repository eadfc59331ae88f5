import type { Id, Point } from '../../geometry'
import { assign } from './assign'
import {
  anchorsOf,
  conflictOf,
  floatsAt,
  type Leader,
  leaderCost,
  leaderTo,
  type Level,
  levelAt,
  type Picture,
  sceneOf,
  type Site,
} from './leaders'
import { settle } from './settle'

/** Where numbers may stand: in a column beside the picture, this far apart at least. Paper mm. */
export type Column = {
  readonly side: 'left' | 'right'
  readonly x: number
  readonly low: number
  readonly high: number
  readonly pitch_mm: number
}

/** The slots of a layout: heights from top to bottom and who holds each. */
export type Slots = readonly { readonly id: Id; readonly side: Column['side']; readonly y: number }[]

/** Leaders by part, and the slots that they end at. */
export type Layout = {
  readonly leaders: ReadonlyMap<Id, Leader>
  readonly slots: Slots
  readonly conflicts: number
  /** how many words of sizes leaders strike through */
  readonly struck: number
}

/**
 * Numbers a picture from a column at its right: evenly spaced slots, the cheapest assignment of parts to them, then
 * exchanges until no leader crosses or crowds another. The same sites give the same layout.
 */
export const layOut = (sites: readonly Site[], picture: Picture, column: Column): Layout => {
  const anchors = sites.map(anchorsOf)
  const scene = sceneOf(picture)
  const tries = slotsToTry(sites.length, column).map(heights => {
    const levels = heights.map(y => levelAt(scene, y))
    const cost = new Float64Array(sites.length * sites.length)
    sites.forEach((site, row) =>
      levels.forEach((level, slot) => {
        cost[row * sites.length + slot] = leastCost(site, anchors[row] ?? [], level, column.x)
      }),
    )
    const start = assign(cost, sites.length)
    const sum = start.reduce((total, slot, row) => total + (cost[row * sites.length + slot] ?? 0), 0)
    return { heights, levels, start, sum }
  })
  const best = tries
    .toSorted((a, b) => a.sum - b.sum)
    .slice(0, mostSettled)
    .map(({ heights, levels, start }) => {
      const table = sites.flatMap((site, at) =>
        levels.map(level => optionsOf(site, anchors[at] ?? [], level, column.x)),
      )
      return { heights, ...settle(table, start) }
    })
    .toSorted((a, b) => a.total - b.total)[0]
  if (best === undefined) return { leaders: new Map(), slots: [], conflicts: 0, struck: 0 }
  return layoutOf(sites, column.side, best.heights, best.slots, best.leaders)
}

/** Keeps each part in the slot that it has, and moves dots only: while something is dragged, numbers stand still. */
export const follow = (sites: readonly Site[], picture: Picture, column: Column, kept: Slots): Layout => {
  const held = kept.flatMap(slot => {
    const site = sites.find(it => it.id === slot.id)
    return site ? [{ site, y: slot.y }] : []
  })
  const scene = sceneOf(picture)
  const leaders = held.map(({ site, y }) => optionsOf(site, anchorsOf(site), levelAt(scene, y), column.x)[0])
  return layoutOf(
    held.map(it => it.site),
    column.side,
    held.map(it => it.y),
    Int32Array.from(held, (_, at) => at),
    leaders.filter(it => it !== undefined),
  )
}

/** Of the layouts that the assignment gives, only so many of the cheapest are settled. Ours. */
const mostSettled = 2

const layoutOf = (
  sites: readonly Site[],
  side: Column['side'],
  heights: readonly number[],
  slots: Int32Array,
  leaders: readonly Leader[],
): Layout => {
  const conflicts = leaders.reduce(
    (sum, a, at) => leaders.slice(at + 1).reduce((so, b) => so + conflictOf(a, b), sum),
    0,
  )
  return {
    leaders: new Map(
      sites.flatMap((site, at) => {
        const leader = leaders[at]
        return leader ? [[site.id, leader] as const] : []
      }),
    ),
    slots: sites
      .map((site, at) => ({ id: site.id, side, y: heights[slots[at] ?? 0] ?? 0 }))
      .toSorted((a, b) => b.y - a.y),
    conflicts,
    struck: leaders.reduce((sum, it) => sum + it.struck, 0),
  }
}

/** Rows of slots from top to bottom: close, wide, and between; at the top, in the middle, at the foot. */
const slotsToTry = (count: number, { low, high, pitch_mm }: Column): number[][] => {
  if (count === 0) return []
  if (count === 1) return [0.25, 0.5, 0.75].map(share => [low + share * (high - low)])
  const widest = Math.max(pitch_mm, (high - low) / (count - 1))
  const pitches = [...new Set([pitch_mm, (pitch_mm + widest) / 2, widest])]
  return pitches.flatMap(pitch => {
    const spare = Math.max(0, high - low - pitch * (count - 1))
    const tops = spare < 1 ? [high] : [0, 0.5, 1].map(share => high - share * spare)
    return tops.map(top => Array.from({ length: count }, (_, at) => top - at * pitch))
  })
}

/** What the cheapest leader of a part to a slot costs. */
const leastCost = (site: Site, anchors: Site['places'], level: Level, column: number): number => {
  let least = unreachable
  for (const dot of floatsAt(site, level.y)) least = Math.min(least, leaderCost(dot, level, column, least))
  for (const dot of anchors) least = Math.min(least, leaderCost(dot, level, column, least))
  return least
}

/** The leaders of a part to a slot, cheapest first. A part that cannot reach the slot still gets a costly one. */
const optionsOf = (site: Site, anchors: Site['places'], level: Level, column: number): readonly Leader[] => {
  const dots = [...anchors, ...floatsAt(site, level.y)]
  const costs = dots
    .map(dot => ({ dot, cost: leaderCost(dot, level, column) }))
    .filter(it => it.cost < Infinity)
    .sort((a, b) => a.cost - b.cost)
  if (costs.length > 0)
    return costs.slice(0, mostOptions).map(({ dot, cost }) => leaderTo(dot, level, column, cost))
  const dot: Point = dots[0] ?? [column - 1, level.y]
  const [low, high] = [Math.min(dot[1], level.y), Math.max(dot[1], level.y)]
  return [{ path: [dot, [column, level.y]], cost: unreachable, low, high, struck: 0 }]
}

/** So many dots of a part are kept for a slot. Ours. */
const mostOptions = 4

const unreachable = 5000
