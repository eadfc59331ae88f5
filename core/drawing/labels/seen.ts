import type { Point } from '../../geometry'
import { floatsAt, type Places, placesOf, type Site } from './anchors'
import type { Column } from './columns'
import { type Leader, leaderCost, leaderTo, leastCost, type Look, meetsSizes } from './leaders'
import type { Slope } from './cover'
import { type Box, type Level, levelAt, type Picture, type Scene, sceneOf } from './scene'
import type { Shape } from './shape'

/** A picture as a column sees it: with the column at its right. One to the left sees it in a mirror. */
export type Seen = {
  readonly column: Column
  readonly places: readonly Places[]
  readonly scene: Scene
  /** a leader as it lies on the sheet */
  readonly back: (leader: Leader) => Leader
}

export const seenFrom = (column: Column, sites: readonly Site[], picture: Picture): Seen => {
  if (column.side === 'right')
    return { column, places: sites.map(placesOf), scene: sceneOf(picture), back: it => it }
  return {
    column: { ...column, x: -column.x },
    places: sites.map(it =>
      placesOf({ ...it, shapes: it.shapes.map(mirroredShape), places: it.places.map(mirrored) }),
    ),
    scene: sceneOf({
      ...picture,
      bodies: picture.bodies.map(mirroredShape),
      words: picture.words.map(([low, high]): Box => [
        [-high[0], low[1]],
        [-low[0], high[1]],
      ]),
      lines: (picture.lines ?? []).map(it => ({ ...it, from: mirrored(it.from), to: mirrored(it.to) })),
    }),
    back: it => ({ ...it, path: it.path.map(mirrored) }),
  }
}

const mirrored = ([x, y]: Point): Point => [-x, y]
const mirroredShape = (shape: Shape): Shape => ({ loops: shape.loops.map(loop => loop.map(mirrored)) })

/** The leaders of every part to one height of a column: what the cheapest of each costs, and all of them. */
export type Way = {
  readonly cost: Float64Array
  readonly cheapest: (part: number) => Leader
  readonly all: (part: number) => readonly Leader[]
}

export const wayTo = ({ column, places, scene, back }: Seen, y: number): Way => {
  const level = levelAt(scene, y)
  const found = places.map(it => cheapestTo(it, level, column.x))
  return {
    cost: Float64Array.from(found, it => it.cost),
    cheapest: part => back(leaderOf(places[part] ?? noPlaces, found[part] ?? nowhere, level, column.x)),
    all: part => optionsOf(places[part] ?? noPlaces, found[part] ?? nowhere, level, column.x).map(back),
  }
}

/** The cheapest leader of one part to a height. */
export const leaderAt = ({ column, places, scene, back }: Seen, part: number, y: number): Leader => {
  const [own, level] = [places[part] ?? noPlaces, levelAt(scene, y)]
  return back(leaderOf(own, cheapestTo(own, level, column.x), level, column.x))
}

const noPlaces: Places = { anchors: [], floating: [] }

/** A part that cannot reach a height costs this. Ours: more than any leader on a sheet. */
const unreachable = 5000

/** The cheapest leader of a part to a height: its dot and slope, if there is one, and what it costs. */
type Found = { readonly dot?: Point; readonly slope?: Slope; readonly cost: number }
const nowhere: Found = { cost: unreachable }

const cheapestTo = ({ anchors, floating }: Places, level: Level, column: number): Found => {
  const [usual, steep] = level.scene.slopes
  let found = cheaper(floatsAt(floating, level.y), { level, column, slope: usual }, nowhere)
  found = cheaper(anchors, { level, column, slope: usual }, found)
  const { dot, slope } = found
  if (steep === undefined || (dot && slope && !meetsSizes(dot, { level, column, slope }))) return found
  return cheaper(anchors, { level, column, slope: steep }, found)
}

/**
 * The cheapest leader from some dots, lowest first, or the one found before: from the level outwards, until no other can be
 * cheaper. Asked for every part at every height: it makes nothing on its way.
 */
const cheaper = (dots: readonly Point[], look: Look, before: Found): Found => {
  const { y } = look.level
  const each = leastCost(1, look.slope)
  let best = -1
  let least = before.cost
  let above = 0
  while (above < dots.length && dots[above]![1] < y) above++
  let below = above - 1
  while (below >= 0 || above < dots.length) {
    const up = above < dots.length ? dots[above]![1] - y : Infinity
    const down = below >= 0 ? y - dots[below]![1] : Infinity
    if (each * Math.min(up, down) >= least) break
    const at = up < down ? above++ : below--
    const cost = leaderCost(dots[at]!, look, least)
    if (cost < least) {
      best = at
      least = cost
    }
  }
  const dot = dots[best]
  return dot ? { dot, slope: look.slope, cost: least } : before
}

/** A leader as it was found. A part that cannot reach the height still gets a costly one. */
const leaderOf = (places: Places, { dot, slope, cost }: Found, level: Level, column: number): Leader => {
  if (dot && slope) return leaderTo(dot, { level, column, slope }, cost)
  const near: Point = places.anchors[0] ?? floatsAt(places.floating, level.y)[0] ?? [column - 1, level.y]
  const [low, high] = [Math.min(near[1], level.y), Math.max(near[1], level.y)]
  return { path: [near, [column, level.y]], cost: unreachable, low, high, struck: 0 }
}

/** The leaders of a part, cheapest first. */
const optionsOf = (places: Places, found: Found, level: Level, column: number): readonly Leader[] => {
  const dots = [...places.anchors, ...floatsAt(places.floating, level.y)]
  const costs = level.scene.slopes
    .flatMap(slope => dots.map(dot => ({ dot, slope, cost: leaderCost(dot, { level, column, slope }) })))
    .filter(it => it.cost < Infinity)
    .sort((a, b) => a.cost - b.cost)
  return costs.length > 0
    ? costs.slice(0, mostOptions).map(({ dot, slope, cost }) => leaderTo(dot, { level, column, slope }, cost))
    : [leaderOf(places, found, level, column)]
}

/** So many leaders of a part are kept for a slot. Ours. */
const mostOptions = 12
