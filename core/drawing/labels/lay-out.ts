import type { Id, Point } from '../../geometry'
import { assign } from './assign'
import {
  anchorsOf,
  conflictOf,
  type Floating,
  floatingOf,
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
  const places = sites.map(placesOf)
  const scene = sceneOf(picture)
  const tries = slotsToTry(sites.length, column).map(heights => {
    const levels = heights.map(y => levelAt(scene, y))
    const cost = new Float64Array(sites.length * sites.length)
    places.forEach((dots, row) =>
      levels.forEach((level, slot) => {
        cost[row * sites.length + slot] = cheapestTo(dots, level, column.x).cost
      }),
    )
    const start = assign(cost, sites.length)
    const sum = start.reduce((total, slot, row) => total + (cost[row * sites.length + slot] ?? 0), 0)
    return { heights, levels, start, sum }
  })
  let best: ({ readonly heights: readonly number[] } & ReturnType<typeof settle>) | undefined
  for (const { heights, levels, start, sum } of tries
    .toSorted((a, b) => a.sum - b.sum)
    .slice(0, mostSettled)) {
    // settling only adds conflicts to what the assignment costs
    if (best && best.total <= sum) break
    const cheapest = places.flatMap(dots => levels.map(level => leaderOf(dots, level, column.x)))
    const settled = settle(cheapest, start, (part, slot) =>
      optionsOf(places[part] ?? noPlaces, levels[slot] ?? levelAt(scene, 0), column.x),
    )
    if (best === undefined || settled.total < best.total) best = { heights, ...settled }
  }
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
  return layoutOf(
    held.map(it => it.site),
    column.side,
    held.map(it => it.y),
    Int32Array.from(held, (_, at) => at),
    held.map(({ site, y }) => leaderOf(placesOf(site), levelAt(scene, y), column.x)),
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

/** Where the dot of a part may stand: at places whatever the slot, and in its bodies at the level of the slot. */
type Places = { readonly anchors: readonly Point[]; readonly floating: Floating }

const placesOf = (site: Site): Places => ({ anchors: anchorsOf(site), floating: floatingOf(site) })

const noPlaces: Places = { anchors: [], floating: [] }

/** The dot with the cheapest leader to a slot, and what that costs. */
const cheapestTo = (
  { anchors, floating }: Places,
  level: Level,
  column: number,
): { readonly dot: Point | undefined; readonly cost: number } => {
  let [dot, least]: [Point | undefined, number] = [undefined, unreachable]
  const look = (places: readonly Point[]): void => {
    for (const place of places) {
      const cost = leaderCost(place, level, column, least)
      if (cost < least) [dot, least] = [place, cost]
    }
  }
  look(anchors)
  look(floatsAt(floating, level.y))
  return { dot, cost: least }
}

/** The cheapest leader of a part to a slot. A part that cannot reach the slot still gets a costly one. */
const leaderOf = (places: Places, level: Level, column: number): Leader => {
  const { dot, cost } = cheapestTo(places, level, column)
  if (dot) return leaderTo(dot, level, column, cost)
  const near: Point = places.anchors[0] ?? floatsAt(places.floating, level.y)[0] ?? [column - 1, level.y]
  const [low, high] = [Math.min(near[1], level.y), Math.max(near[1], level.y)]
  return { path: [near, [column, level.y]], cost: unreachable, low, high, struck: 0 }
}

/** The leaders of a part to a slot, cheapest first. */
const optionsOf = (places: Places, level: Level, column: number): readonly Leader[] => {
  const costs = [...places.anchors, ...floatsAt(places.floating, level.y)]
    .map(dot => ({ dot, cost: leaderCost(dot, level, column) }))
    .filter(it => it.cost < Infinity)
    .sort((a, b) => a.cost - b.cost)
  return costs.length > 0
    ? costs.slice(0, mostOptions).map(({ dot, cost }) => leaderTo(dot, level, column, cost))
    : [leaderOf(places, level, column)]
}

/** So many dots of a part are kept for a slot. Ours. */
const mostOptions = 4

const unreachable = 5000
