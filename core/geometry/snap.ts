import type { Network } from './network'
import type { Point } from './point'

/**
 * Divides outlines and paths at every place where they meet, on the grid: each intersection is rounded to it, and every
 * edge is led through all vertices whose grid square it passes. What comes out crosses nowhere.
 * Snap rounding after Hobby (1999), "Practical segment intersection with finite precision output".
 * Places are whole numbers of grid steps, at most `reach` from the origin; a place beyond is our own fault and throws.
 */
export const snapped = (
  outlines: readonly (readonly Point[])[],
  paths: readonly (readonly Point[])[],
): Network => {
  const segments = segmentsOf(outlines, paths)
  const vertices = vertexList()
  segments.forEach(it => {
    vertices.add(it.ax, it.ay)
    vertices.add(it.bx, it.by)
  })
  addCrossings(segments, vertices)
  const { x, y } = vertices.done()
  const byX = [...x.keys()].sort((a, b) => x[a]! - x[b]! || y[a]! - y[b]!)
  const sortedX = Float64Array.from(byX, at => x[at]!)
  const edges = new Map<number, number>()
  const from: number[] = []
  const to: number[] = []
  const onPath: number[] = []
  const sources: number[][] = []
  const chains: (readonly number[])[][] = paths.map(() => [])
  for (const segment of segments) {
    const chain = through(segment, x, y, byX, sortedX)
    for (let i = 1; i < chain.length; i++) {
      const a = chain[i - 1]!
      const b = chain[i]!
      const forward = a < b
      const key = forward ? a * x.length + b : b * x.length + a
      let edge = edges.get(key)
      if (edge === undefined) {
        edge = from.length
        edges.set(key, edge)
        from.push(forward ? a : b)
        to.push(forward ? b : a)
        onPath.push(0)
        sources.push([])
      }
      if (segment.outline < 0) onPath[edge] = 1
      else sources[edge]!.push(forward ? segment.outline + 1 : -segment.outline - 1)
    }
    if (segment.outline < 0) chains[-segment.outline - 1]![segment.order] = chain
  }
  return {
    x, y, from: Int32Array.from(from), to: Int32Array.from(to), onPath: Uint8Array.from(onPath), sources, paths: chains.map(runOf),
  } // prettier-ignore
}

/** The chains of a path's segments, one after the other, without the vertices that they share. */
const runOf = (chains: readonly (readonly number[])[]): readonly number[] =>
  chains.flat().filter((at, i, all) => i === 0 || all[i - 1] !== at)

/** `outline` is the number of the painted outline, or −1 − number of the path. */
type Segment = {
  readonly ax: number
  readonly ay: number
  readonly bx: number
  readonly by: number
  readonly outline: number
  /** place of a path's segment in its path */
  readonly order: number
  readonly minX: number
  readonly maxX: number
  readonly minY: number
  readonly maxY: number
}

const segmentsOf = (
  outlines: readonly (readonly Point[])[],
  paths: readonly (readonly Point[])[],
): readonly Segment[] => {
  const all: Segment[] = []
  const add = (a: Point, b: Point, outline: number, order: number) => {
    if (a[0] === b[0] && a[1] === b[1]) return
    all.push({
      ax: a[0], ay: a[1], bx: b[0], by: b[1], outline, order,
      minX: Math.min(a[0], b[0]), maxX: Math.max(a[0], b[0]), minY: Math.min(a[1], b[1]), maxY: Math.max(a[1], b[1]),
    }) // prettier-ignore
  }
  outlines.forEach((outline, index) =>
    outline.forEach((a, i) => add(a, outline[(i + 1) % outline.length]!, index, i)),
  )
  paths.forEach((path, index) => path.slice(1).forEach((b, i) => add(path[i]!, b, -1 - index, i)))
  return all.sort((a, b) => a.minX - b.minX)
}

/**
 * Places and edges that pass within this many grid steps of a vertex run through it: two edges along one slope are
 * rounded apart by a step, and no sliver may come of that.
 */
const merging = 2

type Vertices = {
  readonly add: (x: number, y: number) => void
  /** as `add`, unless a vertex is near already */
  readonly addNear: (x: number, y: number) => void
}

/** Places beyond this many grid steps would make products inexact. */
const reach = 2 ** 25

const vertexList = () => {
  const known = new Map<number, number>()
  const xs: number[] = []
  const ys: number[] = []
  const keyOf = (x: number, y: number): number => (x + reach) * 2 * reach + (y + reach)
  const add = (x: number, y: number): void => {
    if (!(Math.abs(x) < reach && Math.abs(y) < reach))
      throw new Error(`a vertex at ${x}, ${y} lies beyond the grid`)
    const key = keyOf(x, y)
    if (known.has(key)) return
    known.set(key, xs.length)
    xs.push(x)
    ys.push(y)
  }
  const isNear = (x: number, y: number): boolean => {
    for (let dx = -merging; dx <= merging; dx++) {
      for (let dy = -merging; dy <= merging; dy++) if (known.has(keyOf(x + dx, y + dy))) return true
    }
    return false
  }
  return {
    add,
    addNear: (x: number, y: number): void => {
      if (!isNear(x, y)) add(x, y)
    },
    done: () => ({ x: Float64Array.from(xs), y: Float64Array.from(ys) }),
  }
}

const addCrossings = (segments: readonly Segment[], vertices: Vertices): void => {
  for (let i = 0; i < segments.length; i++) {
    const a = segments[i]!
    for (let j = i + 1; j < segments.length; j++) {
      const b = segments[j]!
      if (b.minX > a.maxX) break
      if (b.minY > a.maxY || b.maxY < a.minY) continue
      crossing(a, b, vertices)
    }
  }
}

/** Adds the place where two segments cross in their insides. Touching ends are vertices already. */
const crossing = (a: Segment, b: Segment, vertices: Vertices): void => {
  const ux = a.bx - a.ax
  const uy = a.by - a.ay
  const vx = b.bx - b.ax
  const vy = b.by - b.ay
  const turn = ux * vy - uy * vx
  if (turn === 0) return
  const wx = b.ax - a.ax
  const wy = b.ay - a.ay
  const s = (wx * vy - wy * vx) / turn
  const t = (wx * uy - wy * ux) / turn
  if (s <= 0 || s >= 1 || t <= 0 || t >= 1) return
  vertices.addNear(Math.round(a.ax + s * ux), Math.round(a.ay + s * uy))
}

/** The vertices that a segment is led through, in its direction. */
const through = (
  segment: Segment,
  x: Float64Array,
  y: Float64Array,
  byX: readonly number[],
  sortedX: Float64Array,
): readonly number[] => {
  const { ax, ay } = segment
  const dx = segment.bx - ax
  const dy = segment.by - ay
  const near = merging * (Math.abs(dx) + Math.abs(dy))
  const length2 = dx * dx + dy * dy
  const hits: { at: number; along: number }[] = []
  for (
    let i = firstFrom(sortedX, segment.minX - merging);
    i < byX.length && sortedX[i]! <= segment.maxX + merging;
    i++
  ) {
    const at = byX[i]!
    const px = x[at]! - ax
    const py = y[at]! - ay
    if (y[at]! < segment.minY - merging || y[at]! > segment.maxY + merging) continue
    if (Math.abs(dx * py - dy * px) > near) continue
    const along = dx * px + dy * py
    if (along >= 0 && along <= length2) hits.push({ at, along })
  }
  return hits.sort((a, b) => a.along - b.along).map(it => it.at)
}

const firstFrom = (sorted: Float64Array, value: number): number => {
  let low = 0
  let high = sorted.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (sorted[middle]! < value) low = middle + 1
    else high = middle
  }
  return low
}
