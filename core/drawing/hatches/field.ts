import type { Outline, Point } from '../../geometry'
import type { Hatching } from '../mark'
import type { Seen } from './hatch'

/**
 * An area in the axes of its hatch: u along the part, v across it, paper mm from the part's lower left corner.
 * `edges` holds u, v, u, v of every edge; an outline and its holes need no order, inside is what an odd number surrounds.
 */
export type Field = {
  readonly edges: Float64Array
  readonly low: Point
  readonly high: Point
  /** the part of the extent that has to be drawn; absent: all of it */
  readonly seen?: readonly [low: Point, high: Point]
  readonly size: Point
  readonly toPaper: (u: number, v: number) => Point
}

/** Lays an area into the axes of its hatch, or as much of it as is `seen`. */
export const fieldOf = (
  area: { readonly outline: Outline; readonly holes: readonly Outline[] },
  hatching: Hatching,
  scale: number,
  seen?: Seen,
): Field => {
  const angle = (hatching.turn_deg * Math.PI) / 180
  const cos = Math.cos(angle)
  const sin = Math.sin(angle)
  const [ox, oy] = hatching.origin
  const width = (hatching.size?.[0] ?? 0) * scale
  const mirror = hatching.mirrored === true
  const inside = ([x, y]: Point): Point => {
    const u = ((x - ox) * cos + (y - oy) * sin) * scale
    return [mirror ? width - u : u, ((y - oy) * cos - (x - ox) * sin) * scale]
  }
  const edges = edgesOf([area.outline, ...area.holes], inside)
  const [low, high] = extentOf(edges)
  return {
    edges,
    low,
    high,
    size: hatching.size ? [width, hatching.size[1] * scale] : [high[0] - low[0], high[1] - low[1]],
    toPaper: (u, v) => {
      const along = mirror ? width - u : u
      return [ox * scale + along * cos - v * sin, oy * scale + along * sin + v * cos]
    },
    ...(seen && { seen: seenOf(cornersOf(seen).map(inside), low, high) }),
  }
}

/** A motif reaches no further from its own place than this, in paper mm. *Ours*: the largest circle has 1.8 mm. */
const reach_mm = 4

const cornersOf = ([[x0, y0], [x1, y1]]: Seen): readonly Point[] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
]

const seenOf = (corners: readonly Point[], low: Point, high: Point): readonly [Point, Point] => {
  const [us, vs] = [corners.map(([u]) => u), corners.map(([, v]) => v)]
  return [
    [Math.max(low[0], Math.min(...us) - reach_mm), Math.max(low[1], Math.min(...vs) - reach_mm)],
    [Math.min(high[0], Math.max(...us) + reach_mm), Math.min(high[1], Math.max(...vs) + reach_mm)],
  ]
}

const edgesOf = (outlines: readonly Outline[], place: (at: Point) => Point): Float64Array => {
  const edges = new Float64Array(outlines.reduce((sum, it) => sum + it.length, 0) * 4)
  let next = 0
  for (const outline of outlines) {
    const last = outline[outline.length - 1]
    if (last === undefined) continue
    let [u, v] = place(last)
    for (const corner of outline) {
      const [toU, toV] = place(corner)
      edges[next] = u
      edges[next + 1] = v
      edges[next + 2] = toU
      edges[next + 3] = toV
      next += 4
      u = toU
      v = toV
    }
  }
  return edges
}

const extentOf = (edges: Float64Array): [Point, Point] => {
  let [lowU, lowV, highU, highV] = [Infinity, Infinity, -Infinity, -Infinity]
  for (let at = 0; at < edges.length; at += 4) {
    lowU = Math.min(lowU, edges[at]!)
    highU = Math.max(highU, edges[at]!)
    lowV = Math.min(lowV, edges[at + 1]!)
    highV = Math.max(highV, edges[at + 1]!)
  }
  return [
    [lowU, lowV],
    [highU, highV],
  ]
}

/** Whether a place lies inside a field. */
export const isInField = (field: Field, u: number, v: number): boolean => {
  const { edges } = field
  let inside = false
  for (let at = 0; at < edges.length; at += 4) {
    const v0 = edges[at + 1]!
    const v1 = edges[at + 3]!
    if (v0 <= v === v1 <= v) continue
    const u0 = edges[at]!
    if (u0 + ((v - v0) / (v1 - v0)) * (edges[at + 2]! - u0) > u) inside = !inside
  }
  return inside
}

/** Whether a place lies at least so far from every edge of a field. Asked thousands of times for a hatch: edges that lie aside are passed by. */
export const isOffEdges = (field: Field, u: number, v: number, by_mm: number): boolean => {
  const { edges } = field
  for (let at = 0; at < edges.length; at += 4) {
    const u0 = edges[at]!
    const u1 = edges[at + 2]!
    if (u0 < u1 ? u1 < u - by_mm || u + by_mm < u0 : u0 < u - by_mm || u + by_mm < u1) continue
    const v0 = edges[at + 1]!
    const v1 = edges[at + 3]!
    if (v0 < v1 ? v1 < v - by_mm || v + by_mm < v0 : v0 < v - by_mm || v + by_mm < v1) continue
    const du = u1 - u0
    const dv = v1 - v0
    const length2 = du * du + dv * dv
    const share = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((u - u0) * du + (v - v0) * dv) / length2))
    if (Math.hypot(u0 + share * du - u, v0 + share * dv - v) < by_mm) return false
  }
  return true
}
