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
  /** how many words of sizes it strikes through */
  readonly struck: number
}

/** What leaders run over: bodies, and the words of sizes, which they must not strike through. Paper mm. */
export type Picture = { readonly bodies: readonly Shape[]; readonly words: readonly Box[] }

/** Lower left and upper right corner. */
export type Box = readonly [Point, Point]

/** The picture that leaders run over, looked at along one level line. */
export type Level = {
  readonly y: number
  /** stretches of any material */
  readonly bodies: readonly (readonly [number, number])[]
  /** stretches of edges that run level and close by */
  readonly edges: readonly (readonly [number, number])[]
  /** words that the line runs through, and all words */
  readonly words: readonly Box[]
  readonly allWords: readonly Box[]
}

const slope = Math.tan((callout.slope_deg * Math.PI) / 180)

/** What a leader costs, in mm of length. Tried on sheets of this kind; ours. */
const price = { length: 0.15, inside: 1.8, bend: 1, drop: 0.15, beside: 1.2, kink: 25, words: 400 }

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

/** Bodies of a site with their heights, ready to be asked for a place at many levels. */
export type Floating = readonly Body[]

/** A body and between which heights it lies. */
type Body = { readonly shape: Shape; readonly low: number; readonly high: number }

export const floatingOf = (site: Site): Floating => site.shapes.map(bodyOf)

/** Where a dot may stand at the level of a slot, so that the leader needs no bend. */
export const floatsAt = (floating: Floating, y: number): readonly Point[] => {
  let places: Point[] | undefined
  for (const { shape, low, high } of floating) {
    if (y < low || high < y) continue
    const place = floatAt(shape, y)
    if (place && isRoomy(shape, y, place[0])) (places ??= []).push(place)
  }
  return places ?? none
}

const none: readonly Point[] = []

const floatAt = (shape: Shape, y: number): Point | undefined => {
  const last = stretchesAt(shape, y).at(-1)
  if (last === undefined || last[1] - last[0] < 2 * room_mm) return undefined
  return [last[1] - Math.min(inset_mm, (last[1] - last[0]) / 2), y]
}

const isRoomy = (shape: Shape, y: number, x: number): boolean =>
  [y - room_mm, y + room_mm].every(level =>
    stretchesAt(shape, level).some(([from, to]) => from <= x && x <= to),
  )

/** The bodies of a picture, ready to be looked at along many levels. */
export type Scene = {
  readonly bodies: readonly Body[]
  /** edges that run level: their height, and from where to where */
  readonly edges: readonly (readonly [y: number, from: number, to: number])[]
  readonly words: readonly Box[]
}

const bodyOf = (shape: Shape): Body => {
  let [low, high] = [Infinity, -Infinity]
  for (const loop of shape.loops)
    for (const [, y] of loop) {
      if (y < low) low = y
      if (y > high) high = y
    }
  return { shape, low, high }
}

export const sceneOf = ({ bodies, words }: Picture): Scene => ({
  words,
  bodies: bodies.map(bodyOf),
  edges: bodies.flatMap(shape =>
    shape.loops.flatMap(loop =>
      loop.flatMap((from, at): [number, number, number][] => {
        const to = loop[(at + 1) % loop.length] ?? from
        return Math.abs(from[1] - to[1]) < 0.3
          ? [[from[1], Math.min(from[0], to[0]), Math.max(from[0], to[0])]]
          : []
      }),
    ),
  ),
})

/** What lies on the way of a leader at the level of a slot: stretches by their ends, the rightmost first. */
export const levelAt = (scene: Scene, y: number): Level => {
  const bodies: (readonly [number, number])[] = []
  for (const it of scene.bodies)
    if (it.low <= y && y <= it.high) for (const stretch of stretchesAt(it.shape, y)) bodies.push(stretch)
  const edges: (readonly [number, number])[] = []
  for (const it of scene.edges) if (Math.abs(it[0] - y) < beside_mm) edges.push([it[1], it[2]])
  const words = scene.words.filter(([low, high]) => low[1] < y && y < high[1])
  return { y, bodies: bodies.sort(byEnd), edges: edges.sort(byEnd), words, allWords: scene.words }
}

const byEnd = (a: readonly [number, number], b: readonly [number, number]): number =>
  b[1] - a[1] || b[0] - a[0]

/**
 * What the leader from a dot to a slot costs; endless where its slope would pass the column, or where it costs `most`
 * before the picture on its way is looked at.
 */
export const leaderCost = (dot: Point, level: Level, column: number, most = Infinity): number => {
  const drop = Math.abs(level.y - dot[1])
  const straight = isStraight(drop)
  const kneeX = straight ? dot[0] : dot[0] + drop / slope
  if (kneeX > column - callout.landing_mm) return Infinity
  const oblique = straight ? 0 : drop / slopeSine
  const bare =
    price.length * (oblique + column - kneeX) +
    (price.inside * oblique) / 2 +
    price.drop * drop +
    (straight ? 0 : price.bend) +
    (!straight && drop < beside_mm ? price.kink : 0)
  if (bare >= most) return Infinity
  return (
    bare +
    price.words * struckBy(dot, level, column) +
    price.inside * within(level.bodies, kneeX, column) +
    price.beside * within(level.edges, kneeX, column)
  )
}

/** The leader from a dot to a slot: level at once, or at the slope first. */
export const leaderTo = (dot: Point, level: Level, column: number, cost: number): Leader => {
  const drop = Math.abs(level.y - dot[1])
  const end: Point = [column, level.y]
  const struck = struckBy(dot, level, column)
  const path: readonly Point[] = isStraight(drop)
    ? [[dot[0], level.y], end]
    : [dot, [dot[0] + drop / slope, level.y], end]
  return { path, cost, low: Math.min(dot[1], level.y), high: Math.max(dot[1], level.y), struck }
}

/** How many words the leader from a dot to a slot strikes through. */
const struckBy = (dot: Point, level: Level, column: number): number => {
  if (level.allWords.length === 0) return 0
  const drop = Math.abs(level.y - dot[1])
  const kneeX = isStraight(drop) ? dot[0] : dot[0] + drop / slope
  let struck = 0
  for (const [low, high] of level.words) if (kneeX < high[0] && low[0] < column) struck++
  if (kneeX === dot[0]) return struck
  const up = level.y > dot[1]
  for (const [low, high] of level.allWords) {
    if (high[0] < dot[0] || kneeX < low[0]) continue
    const from = Math.max(low[1], Math.min(dot[1], level.y))
    const to = Math.min(high[1], Math.max(dot[1], level.y))
    if (from >= to) continue
    const near = dot[0] + (up ? from - dot[1] : dot[1] - to) / slope
    const far = dot[0] + (up ? to - dot[1] : dot[1] - from) / slope
    if (near < high[0] && low[0] < far) struck++
  }
  return struck
}

/** Below this a leader is as good as level. Ours. */
const isStraight = (drop: number): boolean => drop < 0.15

const slopeSine = Math.sin((callout.slope_deg * Math.PI) / 180)

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
      const between = betweenStretches_mm(p, q, r, s)
      if (between === 0) return crossing
      if (between < touching_mm) touch = true
      near = near || between < callout.apart_mm
    }
  if (touch) return touching
  return near || isNearDot(a, b) || isNearDot(b, a) ? 1 : 0
}

/** Leaders nearer than this read as one line. Ours. */
const touching_mm = 0.4
const touching = 4

/** A crossing is as bad as so many leaders that are too close: in a dense picture some may have to be. Ours. */
const crossing = 40

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
