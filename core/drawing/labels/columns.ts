import type { Id, Point } from '../../geometry'
import { type Column, follow, type Layout, layOut, type Slots } from './lay-out'
import {
  anchorsOf,
  conflictOf,
  type Box,
  type Leader,
  leaderCost,
  levelAt,
  type Picture,
  type Scene,
  sceneOf,
  type Site,
} from './leaders'
import type { Shape } from './shape'

/**
 * Numbers a picture from one column or two. With two, a part goes to the side where its leader is clearly cheaper, as
 * far as that column has room. Kept slots stay on their side. A column to the left is laid out in a mirror.
 */
export const layOutColumns = (
  sites: readonly Site[],
  picture: Picture,
  columns: readonly Column[],
  kept?: Slots,
): Layout => {
  const seen = columns.map(column => seenFrom(column, sites, picture))
  const first = laidOut(seen, kept ? keptSides(kept) : cheaperSides(seen), kept)
  const apart = kept ? [] : crossingColumns(first)
  if (apart.length === 0) return first
  // what crosses leaders of the first column from the second is numbered from the first
  const sides = cheaperSides(seen)
  return laidOut(seen, new Map([...sides].filter(([id]) => !apart.includes(id))), kept)
}

const laidOut = (seen: readonly Seen[], sideOf: Sides, kept: Slots | undefined): Layout => {
  const main = seen[0]?.column.side
  const layouts = seen.map(({ column, sites, picture, back }) => {
    const own = sites.filter(it => (sideOf.get(it.id) ?? main) === column.side)
    const layout = kept
      ? follow(
          own,
          picture,
          column,
          kept.filter(it => it.side === column.side),
        )
      : layOut(own, picture, column)
    return { ...layout, leaders: [...layout.leaders].map(([id, leader]) => [id, back(leader)] as const) }
  })
  return {
    leaders: new Map(layouts.flatMap(it => it.leaders)),
    slots: layouts.flatMap(it => it.slots),
    conflicts: layouts.reduce((sum, it) => sum + it.conflicts, 0),
    struck: layouts.reduce((sum, it) => sum + it.struck, 0),
  }
}

/** Parts numbered from the second column whose leaders meet one of the first. */
const crossingColumns = ({ leaders, slots }: Layout): readonly Id[] => {
  const main = slots[0]?.side
  const sideOf = keptSides(slots)
  const [here, there] = [
    [...leaders].filter(([id]) => sideOf.get(id) === main),
    [...leaders].filter(([id]) => sideOf.get(id) !== main),
  ]
  return there.flatMap(([id, leader]) => (here.some(([, it]) => conflictOf(it, leader) > 0) ? [id] : []))
}

/** A picture as a column sees it: with the column at its right. */
type Seen = {
  readonly column: Column
  readonly sites: readonly Site[]
  readonly picture: Picture
  readonly back: (leader: Leader) => Leader
}

const seenFrom = (column: Column, sites: readonly Site[], picture: Picture): Seen => {
  if (column.side === 'right') return { column, sites, picture, back: it => it }
  return {
    column: { ...column, x: -column.x },
    sites: sites.map(it => ({
      ...it,
      shapes: it.shapes.map(mirroredShape),
      places: it.places.map(mirrored),
    })),
    picture: {
      bodies: picture.bodies.map(mirroredShape),
      words: picture.words.map(([low, high]): Box => [
        [-high[0], low[1]],
        [-low[0], high[1]],
      ]),
    },
    back: it => ({ ...it, path: it.path.map(mirrored) }),
  }
}

const mirrored = ([x, y]: Point): Point => [-x, y]
const mirroredShape = (shape: Shape): Shape => ({ loops: shape.loops.map(loop => loop.map(mirrored)) })

type Sides = ReadonlyMap<Id, Column['side']>

const keptSides = (kept: Slots): Sides => new Map(kept.map(it => [it.id, it.side]))

/** A leader to the second column must be cheaper by this, so that a list does not scatter. Ours. */
const clearly = 12

const cheaperSides = ([first, second]: readonly Seen[]): Sides => {
  if (first === undefined || second === undefined) return new Map()
  const [here, there] = [sceneOf(first.picture), sceneOf(second.picture)]
  const gains = second.sites
    .flatMap((site, at) => {
      const other = first.sites[at]
      return other
        ? [{ id: site.id, gain: least(other, first.column, here) - least(site, second.column, there) }]
        : []
    })
    .filter(it => it.gain > clearly)
    .toSorted((a, b) => b.gain - a.gain)
  const { low, high, pitch_mm, side } = second.column
  return new Map(
    gains.slice(0, Math.max(0, Math.floor((high - low) / pitch_mm) + 1)).map(it => [it.id, side]),
  )
}

/** The cheapest leader of a site to any height of a column. */
const least = (site: Site, column: Column, scene: Scene): number =>
  Math.min(
    unreachable,
    ...anchorsOf(site).map(dot => {
      const level = levelAt(scene, Math.min(column.high, Math.max(column.low, dot[1])))
      return leaderCost(dot, level, column.x)
    }),
  )

const unreachable = 5000
