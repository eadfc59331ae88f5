import type { Id, Point } from '../../geometry'
import { callout } from '../style/spacing'
import { betweenStretches_mm, offStretch_mm, poleOf, type Shape, stretchesAt } from './shape'

/** What wants a number: its visible bodies, or places along it where it is a line. Paper mm. */
export type Site = { readonly id: Id; readonly shapes: readonly Shape[]; readonly places: readonly Point[] }

/** A leader from a dot at a slope, then level to the column; two points when it is level at once. */
export type Leader = {
  readonly path: readonly Point[]
  readonly cost: number
  /** between which heights it runs */
  readonly low: number
  readonly high: number
}

/** The picture that leaders run over, looked at along one level line. */
export type Level = {
  readonly y: number
  /** stretches of any material */
  readonly bodies: readonly (readonly [number, number])[]
  /** stretches of edges that run level and close by */
  readonly edges: readonly (readonly [number, number])[]
}

const slope = Math.tan((callout.slope_deg * Math.PI) / 180)

/** What a leader costs, in mm of length. Tried on sheets of this kind; ours. */
const price = { length: 0.15, inside: 1.8, bend: 1, drop: 0.15, beside: 1.2, kink: 25 }

/** Edges nearer than this read as one line with the leader; kinks below this look like a slip. Ours. */
const beside_mm = 1.3

/** How far from the column side of a body a floating dot stands, and how much room it needs. Ours. */
const inset_mm = 3
const room_mm = 0.5

/** Levels at which the near side of a body is offered. Ours. */
const sideLevels = 5

/** Where dots may stand whatever the slot: well inside each body, and near its side towards the column. */
export const anchorsOf = (site: Site): readonly Point[] => {
  const poles = site.shapes.flatMap(shape => {
    const pole = poleOf(shape)
    if (pole === undefined) return []
    return [pole, ...sidesOf(shape, pole[1])]
  })
  return [...poles, ...site.places]
}

/** Places near the column side of a body: at the level of its pole, and at levels spread over its height. */
const sidesOf = (shape: Shape, level: number): readonly Point[] => {
  const ys = shape.loops.flatMap(loop => loop.map(it => it[1]))
  const [low, high] = [Math.min(...ys), Math.max(...ys)]
  const levels = Array.from(
    { length: sideLevels },
    (_, at) => low + ((at + 1) * (high - low)) / (sideLevels + 1),
  )
  return [level, ...levels].flatMap((y): readonly Point[] => {
    const place = floatAt(shape, y)
    return place ? [place] : []
  })
}

/** Where a dot may stand at the level of a slot, so that the leader needs no bend. */
export const floatsAt = (site: Site, y: number): readonly Point[] =>
  site.shapes.flatMap(shape => {
    const place = floatAt(shape, y)
    return place && isRoomy(shape, y, place[0]) ? [place] : []
  })

const floatAt = (shape: Shape, y: number): Point | undefined => {
  const last = stretchesAt(shape, y).at(-1)
  if (last === undefined || last[1] - last[0] < 2 * room_mm) return undefined
  return [last[1] - Math.min(inset_mm, (last[1] - last[0]) / 2), y]
}

const isRoomy = (shape: Shape, y: number, x: number): boolean =>
  [y - room_mm, y + room_mm].every(level =>
    stretchesAt(shape, level).some(([from, to]) => from <= x && x <= to),
  )

/** What lies on the way of a leader at the level of a slot. */
export const levelAt = (bodies: readonly Shape[], y: number): Level => ({
  y,
  bodies: bodies.flatMap(it => stretchesAt(it, y)),
  edges: bodies.flatMap(shape =>
    shape.loops.flatMap(loop =>
      loop.flatMap((from, at): [number, number][] => {
        const to = loop[(at + 1) % loop.length] ?? from
        const isBeside = Math.abs(from[1] - to[1]) < 0.3 && Math.abs(from[1] - y) < beside_mm
        return isBeside ? [[Math.min(from[0], to[0]), Math.max(from[0], to[0])]] : []
      }),
    ),
  ),
})

/** What the leader from a dot to a slot costs; endless where its slope would pass the column. */
export const leaderCost = (dot: Point, level: Level, column: number): number => {
  const drop = Math.abs(level.y - dot[1])
  const straight = isStraight(drop)
  const kneeX = straight ? dot[0] : dot[0] + drop / slope
  if (kneeX > column - callout.landing_mm) return Infinity
  const oblique = straight ? 0 : drop / slopeSine
  return (
    price.length * (oblique + column - kneeX) +
    price.inside * (oblique / 2 + within(level.bodies, kneeX, column)) +
    price.drop * drop +
    price.beside * within(level.edges, kneeX, column) +
    (straight ? 0 : price.bend) +
    (!straight && drop < beside_mm ? price.kink : 0)
  )
}

/** The leader from a dot to a slot: level at once, or at the slope first. */
export const leaderTo = (dot: Point, level: Level, column: number, cost: number): Leader => {
  const drop = Math.abs(level.y - dot[1])
  const end: Point = [column, level.y]
  const path: readonly Point[] = isStraight(drop)
    ? [[dot[0], level.y], end]
    : [dot, [dot[0] + drop / slope, level.y], end]
  return { path, cost, low: Math.min(dot[1], level.y), high: Math.max(dot[1], level.y) }
}

/** Below this a leader is as good as level. Ours. */
const isStraight = (drop: number): boolean => drop < 0.15

const slopeSine = Math.sin((callout.slope_deg * Math.PI) / 180)

/** How much of the way from one place to another lies in some stretches. */
const within = (spans: readonly (readonly [number, number])[], from: number, to: number): number => {
  let sum = 0
  for (const span of spans) sum += Math.max(0, Math.min(span[1], to) - Math.max(span[0], from))
  return sum
}

/**
 * How bad two leaders are for each other: 1 where they run too close or one comes too near to the dot of the other,
 * more where they cross, 0 else.
 */
export const conflictOf = (a: Leader, b: Leader): number => {
  if (a.high + callout.offDot_mm < b.low || b.high + callout.offDot_mm < a.low) return 0
  let near = false
  for (let i = 0; i + 1 < a.path.length; i++)
    for (let j = 0; j + 1 < b.path.length; j++) {
      const [p, q, r, s] = [a.path[i], a.path[i + 1], b.path[j], b.path[j + 1]]
      if (!p || !q || !r || !s || areFar(p, q, r, s)) continue
      const between = betweenStretches_mm(p, q, r, s)
      if (between === 0) return crossing
      near = near || between < callout.apart_mm
    }
  return near || isNearDot(a, b) || isNearDot(b, a) ? 1 : 0
}

/** A crossing is as bad as so many leaders that are too close: in a dense picture some may have to be. Ours. */
const crossing = 8

const areFar = (p: Point, q: Point, r: Point, s: Point): boolean =>
  Math.max(p[1], q[1]) + callout.apart_mm < Math.min(r[1], s[1]) ||
  Math.max(r[1], s[1]) + callout.apart_mm < Math.min(p[1], q[1]) ||
  Math.max(p[0], q[0]) + callout.apart_mm < Math.min(r[0], s[0]) ||
  Math.max(r[0], s[0]) + callout.apart_mm < Math.min(p[0], q[0])

const isNearDot = (a: Leader, b: Leader): boolean => {
  const [dot] = b.path
  if (dot === undefined || dot[1] < a.low - callout.offDot_mm || a.high + callout.offDot_mm < dot[1])
    return false
  for (let at = 0; at + 1 < a.path.length; at++) {
    const [from, to] = [a.path[at], a.path[at + 1]]
    if (from && to && offStretch_mm(dot, from, to) < callout.offDot_mm) return true
  }
  return false
}
