import type { Point } from '../../../geometry'
import { crossing, fieldAt, type Lattice } from './lattice'
import { thinned } from './thin'

/**
 * A line of one temperature, the warmer side at its left, in model mm. It is closed, or begins and ends on the border
 * of the solved domain at the rungs that are named; the temperature is continuous, so it never jumps at a material.
 */
export type Isotherm = {
  readonly level_C: number
  readonly points: readonly Point[]
  readonly closed: boolean
  /** rungs of its first and last point */
  readonly ends: readonly [number, number]
}

/**
 * Traces the lines of all levels (ascending) through the lattice. Points lie on the level; between them a line is straight
 * and leaves the level by no more than `tolerance_mm`, half of it for bends and half for places left out. The same field gives the same lines in the same order.
 */
export const trace = (
  lattice: Lattice,
  levels_C: readonly number[],
  tolerance_mm: number,
): readonly Isotherm[] => {
  const steps = stepsOf(lattice, levels_C)
  const nextAt = new Int32Array(lattice.rungs).fill(-1)
  const hasBefore = new Uint8Array(lattice.rungs)
  return steps.flatMap((of, at) => {
    const level_C = levels_C[at] ?? NaN
    const { from, to } = of
    for (let s = 0; s < from.length; s++) {
      nextAt[from[s]!] = s
      hasBefore[to[s]!] = 1
    }
    const lines: Isotherm[] = []
    const follow = (first: number): void => {
      const path: number[] = []
      let rung = first
      for (let s = nextAt[rung]!; s >= 0; s = nextAt[rung]!) {
        nextAt[rung] = -1
        path.push(s)
        rung = to[s]!
        if (rung === first) break
      }
      if (path.length === 0) return
      const points = placesOf(lattice, { level_C, path, of, tolerance_mm })
      lines.push({ level_C, points, closed: rung === first, ends: [first, rung] })
    }
    for (const rung of from) if (!hasBefore[rung]) follow(rung)
    for (const rung of from) follow(rung)
    for (const rung of to) hasBefore[rung] = 0
    return lines
  })
}

/** Steps of a level from rung to rung, and the triangle that each crosses. */
type Steps = { readonly from: number[]; readonly to: number[]; readonly triangle: number[] }

const stepsOf = ({ it: { mesh }, node_C }: Lattice, levels_C: readonly number[]): readonly Steps[] => {
  const all = levels_C.map((): Steps => ({ from: [], to: [], triangle: [] }))
  const { corner, edgeOf, edgeFrom, edges, vertices } = mesh
  /** One small triangle, counter-clockwise, with the rungs from each node to the next. */
  const small = (t: number, a: number, b: number, c: number, ab: number, bc: number, ca: number): void => {
    const [ta, tb, tc] = [node_C[a]!, node_C[b]!, node_C[c]!]
    const low = ta < tb ? (ta < tc ? ta : tc) : tb < tc ? tb : tc
    const high = ta > tb ? (ta > tc ? ta : tc) : tb > tc ? tb : tc
    for (let l = firstAbove(levels_C, low); l < levels_C.length && levels_C[l]! <= high; l++) {
      const level = levels_C[l]!
      const [wa, wb, wc] = [ta >= level, tb >= level, tc >= level]
      const { from, to, triangle } = all[l]!
      // The one node that differs from the other two: round it if it is the warm one, against it if it is the cold one.
      const [before, after] = wa === wb ? [bc, ca] : wb === wc ? [ca, ab] : [ab, bc]
      const isWarm = wa === wb ? wc : wb === wc ? wa : wb
      from.push(isWarm ? after : before)
      to.push(isWarm ? before : after)
      triangle.push(t)
    }
  }
  for (let t = 0; t < mesh.triangles; t++) {
    const i = 3 * t
    const [a, b, c] = [corner[i]!, corner[i + 1]!, corner[i + 2]!]
    const [ea, eb, ec] = [edgeOf[i]!, edgeOf[i + 1]!, edgeOf[i + 2]!]
    const [ma, mb, mc] = [vertices + ea, vertices + eb, vertices + ec]
    const inner = 2 * edges + i
    const half = (e: number, v: number): number => 2 * e + (edgeFrom[e] === v ? 0 : 1)
    small(t, a, mc, mb, half(ec, a), inner, half(eb, a))
    small(t, b, ma, mc, half(ea, b), inner + 1, half(ec, b))
    small(t, c, mb, ma, half(eb, c), inner + 2, half(ea, c))
    small(t, ma, mb, mc, inner + 2, inner, inner + 1)
  }
  return all
}

/** The first level above a temperature: a node exactly on a level counts as warm. */
const firstAbove = (levels_C: readonly number[], value_C: number): number => {
  let [low, high] = [0, levels_C.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (levels_C[middle]! > value_C) high = middle
    else low = middle + 1
  }
  return low
}

/** How often a stretch of a line is halved at most: a bent one in a large triangle needs it twice. Ours. */
const mostHalvings = 3

type Path = {
  readonly level_C: number
  readonly path: readonly number[]
  readonly of: Steps
  readonly tolerance_mm: number
}

/** The places of a path: its crossings, and between them what its bends ask for. Crowded places are passed over. */
const placesOf = (lattice: Lattice, { level_C, path, of, tolerance_mm }: Path): Point[] => {
  const at = { x: 0, y: 0 }
  const found = { value: 0, dx: 0, dy: 0 }
  const near2 = (tolerance_mm / 2) ** 2
  crossing(lattice, of.from[path[0]!]!, level_C, at)
  let [x0, y0] = [at.x, at.y]
  const points: Point[] = [[x0, y0]]
  const bend = (t: number, x1: number, y1: number, halvings: number): void => {
    const [mx, my] = [(x0 + x1) / 2, (y0 + y1) / 2]
    if (halvings === 0 || (x1 - x0) ** 2 + (y1 - y0) ** 2 < 16 * near2) return
    fieldAt(lattice, t, mx, my, found)
    const slope2 = found.dx * found.dx + found.dy * found.dy
    const off = (level_C - found.value) / slope2
    const [bx, by] = [mx + off * found.dx, my + off * found.dy]
    const off2 = off * off * slope2
    // What lies further off than the stretch is long is no bend of it.
    if (!(off2 > near2) || off2 > (x1 - x0) ** 2 + (y1 - y0) ** 2) return
    bend(t, bx, by, halvings - 1)
    points.push([bx, by])
    ;[x0, y0] = [bx, by]
    bend(t, x1, y1, halvings - 1)
  }
  let isPassedOver = false
  path.forEach((s, i) => {
    crossing(lattice, of.to[s]!, level_C, at)
    const [x1, y1] = [at.x, at.y]
    const isLast = i === path.length - 1
    if (!isLast && (x1 - x0) ** 2 + (y1 - y0) ** 2 < near2) {
      isPassedOver = true
      return
    }
    // A stretch that began in another triangle is short, and not of this one's curve.
    if (!isPassedOver) bend(of.triangle[s]!, x1, y1, mostHalvings)
    isPassedOver = false
    points.push([x1, y1])
    ;[x0, y0] = [x1, y1]
  })
  return thinned(points, tolerance_mm / 2)
}
