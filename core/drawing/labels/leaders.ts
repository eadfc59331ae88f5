import type { Point } from '../../geometry'
import { callout } from '../style/spacing'
import { covered_mm, type Slope } from './cover'
import { beside_mm, isUpright, type Level, type SizeLine } from './scene'
import { betweenStretches_mm, doCross, offStretch_mm } from './shape'

/** A leader from a dot at a slope, then level to the column; two points when it is level at once. */
export type Leader = {
  readonly path: readonly Point[]
  readonly cost: number
  /** between which heights it runs */
  readonly low: number
  readonly high: number
  /** how many words of sizes it strikes through */
  readonly struck: number
}

/** What a leader costs, in mm of length. Tried on sheets of this kind; ours. */
const price = { length: 0.2, inside: 1.4, bend: 2, drop: 0.6, beside: 1.2, kink: 25, words: 400 }

/** Crossing a line that carries the words of a size costs more than crossing one that leads to it. Ours. */
const crossingPrice = { carries: 40, leads: 10 }

/** A leader that is looked at: from where, to which level of a column, at which slope. */
export type Look = { readonly level: Level; readonly column: number; readonly slope: Slope }

/**
 * What the leader from a dot to a slot costs; endless where its slope would pass the column, or where it costs `most`
 * before all of the picture on its way is looked at.
 */
export const leaderCost = (dot: Point, look: Look, most = Infinity): number => {
  const { level, column, slope } = look
  const drop = Math.abs(level.y - dot[1])
  const straight = isStraight(drop)
  const kneeX = straight ? dot[0] : dot[0] + drop / slope.tangent
  if (kneeX > column - callout.landing_mm) return Infinity
  const oblique = straight ? 0 : drop / slope.sine
  let cost =
    price.length * (oblique + column - kneeX) +
    price.drop * drop +
    (straight ? 0 : price.bend + slope.price) +
    (!straight && drop < beside_mm ? price.kink : 0)
  if (cost >= most) return Infinity
  if (!straight) cost += price.inside * covered_mm(slope, dot, level.y)
  if (cost >= most) return Infinity
  cost +=
    price.inside * within(level.bodies, kneeX, column) + price.beside * within(level.edges, kneeX, column)
  return cost >= most ? Infinity : cost + price.words * struckBy(dot, look) + crossedBy(dot, kneeX, look)
}

/** What a leader that drops so far costs at the least, wherever it begins. */
export const leastCost = (drop: number, slope: Slope): number =>
  drop * (price.drop + price.length / slope.sine)

/** Whether the leader from a dot to a slot meets words or lines of sizes. */
export const meetsSizes = (dot: Point, look: Look): boolean => {
  const drop = Math.abs(look.level.y - dot[1])
  const kneeX = isStraight(drop) ? dot[0] : dot[0] + drop / look.slope.tangent
  return crossedBy(dot, kneeX, look) > 0 || struckBy(dot, look) > 0
}

/** The leader from a dot to a slot: level at once, or at the slope first. */
export const leaderTo = (dot: Point, look: Look, cost: number): Leader => {
  const { level, column, slope } = look
  const drop = Math.abs(level.y - dot[1])
  const end: Point = [column, level.y]
  const struck = struckBy(dot, look)
  const path: readonly Point[] = isStraight(drop)
    ? [[dot[0], level.y], end]
    : [dot, [dot[0] + drop / slope.tangent, level.y], end]
  return { path, cost, low: Math.min(dot[1], level.y), high: Math.max(dot[1], level.y), struck }
}

/** How many words the leader from a dot to a slot strikes through. */
const struckBy = (dot: Point, { level, column, slope }: Look): number => {
  const { words } = level.scene
  if (words.length === 0) return 0
  const drop = Math.abs(level.y - dot[1])
  const kneeX = isStraight(drop) ? dot[0] : dot[0] + drop / slope.tangent
  let struck = 0
  for (const [low, high] of level.words) if (kneeX < high[0] && low[0] < column) struck++
  if (kneeX === dot[0]) return struck
  const up = level.y > dot[1]
  for (const [low, high] of words) {
    if (high[0] < dot[0] || kneeX < low[0]) continue
    const from = Math.max(low[1], Math.min(dot[1], level.y))
    const to = Math.min(high[1], Math.max(dot[1], level.y))
    if (from >= to) continue
    const near = dot[0] + (up ? from - dot[1] : dot[1] - to) / slope.tangent
    const far = dot[0] + (up ? to - dot[1] : dot[1] - from) / slope.tangent
    if (near < high[0] && low[0] < far) struck++
  }
  return struck
}

/** What the lines of sizes cost that the leader from a dot by its knee to a slot crosses. */
const crossedBy = (dot: Point, kneeX: number, { level, column, slope }: Look): number => {
  let sum = 0
  for (const it of level.lines) if (kneeX < it.from[0] && it.from[0] < column) sum += priceOf(it)
  if (kneeX === dot[0]) return sum
  const way = level.y > dot[1] ? slope.tangent : -slope.tangent
  for (const it of level.scene.lines) {
    const { from, to } = it
    const upright = isUpright(it)
    const x = upright ? from[0] : dot[0] + (from[1] - dot[1]) / way
    if (x <= dot[0] || kneeX <= x) continue
    const isMet = upright
      ? liesBetween(dot[1] + (x - dot[0]) * way, from[1], to[1])
      : liesBetween(x, from[0], to[0])
    if (isMet) sum += priceOf(it)
  }
  return sum
}

const priceOf = ({ carries }: SizeLine): number => (carries ? crossingPrice.carries : crossingPrice.leads)

const liesBetween = (at: number, a: number, b: number): boolean => (a - at) * (b - at) <= 0

/** Below this a leader is as good as level. Ours. */
const isStraight = (drop: number): boolean => drop < 0.15

/** How much of the way from one place to another lies in some stretches, the rightmost of them first. */
const within = (spans: readonly (readonly [number, number])[], from: number, to: number): number => {
  let sum = 0
  for (const span of spans) {
    if (span[1] <= from) break
    const length = (span[1] < to ? span[1] : to) - (span[0] > from ? span[0] : from)
    if (length > 0) sum += length
  }
  return sum
}

/**
 * How bad two leaders are for each other: 1 where they run too close or one comes too near to the dot of the other,
 * more where they cross, 0 else.
 */
export const conflictOf = (a: Leader, b: Leader): number => {
  if (a.high + callout.offDot_mm < b.low || b.high + callout.offDot_mm < a.low) return 0
  let near = false
  let touch = false
  for (let i = 0; i + 1 < a.path.length; i++)
    for (let j = 0; j + 1 < b.path.length; j++) {
      const p = a.path[i]
      const q = a.path[i + 1]
      const r = b.path[j]
      const s = b.path[j + 1]
      if (!p || !q || !r || !s || areFar(p, q, r, s)) continue
      if (doCross(p, q, r, s) || doOverlap(p, q, r, s)) return crossing
      const between = betweenStretches_mm(p, q, r, s)
      if (between < touching_mm) touch = true
      near = near || between < callout.apart_mm
    }
  if (touch) return touching
  return near || isNearDot(a, b) || isNearDot(b, a) ? 1 : 0
}

/** Whether two stretches that set out from one dot run one over the other. */
const doOverlap = (p: Point, q: Point, r: Point, s: Point): boolean =>
  Math.hypot(p[0] - r[0], p[1] - r[1]) < touching_mm &&
  Math.min(offStretch_mm(q, r, s), offStretch_mm(s, p, q)) < touching_mm

/** Leaders nearer than this read as one line. Ours. */
const touching_mm = 0.4
const touching = 4

/** A crossing is as bad as so many leaders that are too close: in a dense picture some may have to be. Ours. */
export const crossing = 40

const areFar = (p: Point, q: Point, r: Point, s: Point): boolean =>
  Math.max(p[1], q[1]) + callout.apart_mm < Math.min(r[1], s[1]) ||
  Math.max(r[1], s[1]) + callout.apart_mm < Math.min(p[1], q[1]) ||
  Math.max(p[0], q[0]) + callout.apart_mm < Math.min(r[0], s[0]) ||
  Math.max(r[0], s[0]) + callout.apart_mm < Math.min(p[0], q[0])

const isNearDot = (a: Leader, b: Leader): boolean => {
  const dot = b.path[0]
  if (dot === undefined || dot[1] < a.low - callout.offDot_mm || a.high + callout.offDot_mm < dot[1])
    return false
  for (let at = 0; at + 1 < a.path.length; at++) {
    const from = a.path[at]
    const to = a.path[at + 1]
    if (from && to && offStretch_mm(dot, from, to) < callout.offDot_mm) return true
  }
  return false
}
