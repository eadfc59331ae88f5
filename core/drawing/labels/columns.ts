import type { Id, Point } from '../../geometry'
import { type Column, follow, type Layout, layOut, type Slots } from './lay-out'
import { anchorsOf, type Leader, leaderCost, levelAt, type Site } from './leaders'
import type { Shape } from './shape'

/**
 * Numbers a picture from one column or two. With two, a part goes to the side where its leader is clearly cheaper, as
 * far as that column has room. Kept slots stay on their side. A column to the left is laid out in a mirror.
 */
export const layOutColumns = (
  sites: readonly Site[],
  bodies: readonly Shape[],
  columns: readonly Column[],
  kept?: Slots,
): Layout => {
  const pictures = columns.map(column => pictureFor(column, sites, bodies))
  const sideOf = kept ? keptSides(kept) : cheaperSides(pictures)
  const layouts = pictures.map(({ column, sites, bodies, back }) => {
    const own = sites.filter(it => (sideOf.get(it.id) ?? columns[0]?.side) === column.side)
    const layout = kept
      ? follow(
          own,
          bodies,
          column,
          kept.filter(it => it.side === column.side),
        )
      : layOut(own, bodies, column)
    return { ...layout, leaders: [...layout.leaders].map(([id, leader]) => [id, back(leader)] as const) }
  })
  return {
    leaders: new Map(layouts.flatMap(it => it.leaders)),
    slots: layouts.flatMap(it => it.slots),
    conflicts: layouts.reduce((sum, it) => sum + it.conflicts, 0),
  }
}

/** A picture as a column sees it: with the column at its right. */
type Picture = {
  readonly column: Column
  readonly sites: readonly Site[]
  readonly bodies: readonly Shape[]
  readonly back: (leader: Leader) => Leader
}

const pictureFor = (column: Column, sites: readonly Site[], bodies: readonly Shape[]): Picture => {
  if (column.side === 'right') return { column, sites, bodies, back: it => it }
  return {
    column: { ...column, x: -column.x },
    sites: sites.map(it => ({
      ...it,
      shapes: it.shapes.map(mirroredShape),
      places: it.places.map(mirrored),
    })),
    bodies: bodies.map(mirroredShape),
    back: it => ({ ...it, path: it.path.map(mirrored) }),
  }
}

const mirrored = ([x, y]: Point): Point => [-x, y]
const mirroredShape = (shape: Shape): Shape => ({ loops: shape.loops.map(loop => loop.map(mirrored)) })

type Sides = ReadonlyMap<Id, Column['side']>

const keptSides = (kept: Slots): Sides => new Map(kept.map(it => [it.id, it.side]))

/** A leader to the second column must be cheaper by this, so that a list does not scatter. Ours. */
const clearly = 12

const cheaperSides = ([first, second]: readonly Picture[]): Sides => {
  if (first === undefined || second === undefined) return new Map()
  const gains = second.sites
    .flatMap((site, at) => {
      const other = first.sites[at]
      return other ? [{ id: site.id, gain: least(other, first) - least(site, second) }] : []
    })
    .filter(it => it.gain > clearly)
    .toSorted((a, b) => b.gain - a.gain)
  const { low, high, pitch_mm, side } = second.column
  return new Map(
    gains.slice(0, Math.max(0, Math.floor((high - low) / pitch_mm) + 1)).map(it => [it.id, side]),
  )
}

/** The cheapest leader of a site to any height of a column. */
const least = (site: Site, { column, bodies }: Picture): number =>
  Math.min(
    unreachable,
    ...anchorsOf(site).map(dot => {
      const level = levelAt(bodies, Math.min(column.high, Math.max(column.low, dot[1])))
      return leaderCost(dot, level, column.x)
    }),
  )

const unreachable = 5000
