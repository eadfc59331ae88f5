import type { Point } from '../../geometry'
import { callout } from '../style/spacing'
import { type Slope, slopesOver } from './cover'
import { type Body, bodyOf, type Shape, stretchesAt } from './shape'

/**
 * What leaders run over: bodies, the words of sizes, which they must not strike through, and the lines of sizes, which they
 * had better not cross. Paper mm. `slope_deg` is that of all leaders on it; absent: the usual one.
 */
export type Picture = {
  readonly bodies: readonly Shape[]
  readonly words: readonly Box[]
  readonly lines?: readonly SizeLine[]
  readonly slope_deg?: number
}

/** Lower left and upper right corner. */
export type Box = readonly [Point, Point]

/** A line of a size, level or upright: one that carries words, or one that leads to it. Paper mm. */
export type SizeLine = { readonly from: Point; readonly to: Point; readonly carries: boolean }

/** A picture, ready to be looked at along many leaders. */
export type Scene = {
  readonly bodies: readonly Body[]
  /** edges and lines of sizes that run level: their height, and from where to where */
  readonly edges: readonly (readonly [y: number, from: number, to: number])[]
  readonly words: readonly Box[]
  readonly lines: readonly SizeLine[]
  /** slopes that leaders may have: the usual one of the picture first */
  readonly slopes: readonly [Slope, ...Slope[]]
}

/** The picture that leaders run over, looked at along one level line. */
export type Level = {
  readonly y: number
  /** stretches of any material */
  readonly bodies: readonly (readonly [number, number])[]
  /** stretches of edges that run level and close by */
  readonly edges: readonly (readonly [number, number])[]
  /** words that the line runs through */
  readonly words: readonly Box[]
  /** upright lines of sizes that it crosses */
  readonly lines: readonly SizeLine[]
  readonly scene: Scene
}

/** Edges nearer than this read as one line with the leader; kinks below this look like a slip. Ours. */
export const beside_mm = 1.3

/** Lines that are level to this count as level. Ours. */
const level_mm = 0.3

export const sceneOf = ({ bodies, words, lines = [], slope_deg = callout.slope_deg }: Picture): Scene => {
  const own = bodies.map(bodyOf)
  const levels = lines.filter(it => !isUpright(it))
  return {
    words,
    lines,
    bodies: own,
    edges: [
      ...bodies.flatMap(shape => shape.loops.flatMap(levelEdges)),
      ...levels.map(({ from, to }) => [from[1], ...inOrder(from[0], to[0])] as const),
    ],
    slopes: slopesOver(own, slope_deg),
  }
}

const levelEdges = (loop: readonly Point[]): [number, number, number][] =>
  loop.flatMap((from, at): [number, number, number][] => {
    const to = loop[(at + 1) % loop.length] ?? from
    return Math.abs(from[1] - to[1]) < level_mm ? [[from[1], ...inOrder(from[0], to[0])]] : []
  })

const inOrder = (a: number, b: number): [number, number] => (a < b ? [a, b] : [b, a])

export const isUpright = ({ from, to }: SizeLine): boolean => Math.abs(from[0] - to[0]) < level_mm

/** What lies on the way of a leader at the level of a slot: stretches by their ends, the rightmost first. */
export const levelAt = (scene: Scene, y: number): Level => {
  const bodies: (readonly [number, number])[] = []
  for (const it of scene.bodies)
    if (it.low <= y && y <= it.high) for (const stretch of stretchesAt(it.shape, y)) bodies.push(stretch)
  const edges: (readonly [number, number])[] = []
  for (const it of scene.edges) if (Math.abs(it[0] - y) < beside_mm) edges.push([it[1], it[2]])
  return {
    y,
    bodies: bodies.sort(byEnd),
    edges: edges.sort(byEnd),
    words: scene.words.filter(([low, high]) => low[1] < y && y < high[1]),
    lines: scene.lines.filter(it => isUpright(it) && (it.from[1] - y) * (it.to[1] - y) <= 0),
    scene,
  }
}

const byEnd = (a: readonly [number, number], b: readonly [number, number]): number =>
  b[1] - a[1] || b[0] - a[0]
