import { canSplitEdge, insertPoint, locate, splitEdge } from './insert'
import { squareCorners } from './fixed-triangulation'
import type { OutlineGraph } from './outline-graph'
import { turn } from './predicates'
import { type Triangulation, lastEdge, nextEdge } from './triangulation'

/** How a mesh is graded. Lengths follow the sizes that the vertices carry. */
export type Grading = {
  /** How fast the edge length may grow with distance. */
  readonly growth: number
  /** A triangle is split when its circle's radius passes this multiple of the local size. */
  readonly fullness: number
  /** A triangle is split when its circle's radius passes this multiple of its shortest edge. */
  readonly slimness: number
  /** Along a thin body no edge is wanted longer than this multiple of its thickness. */
  readonly slenderness: number
  /** No new point comes nearer to another than this share of the local size. */
  readonly spacing: number
}

/**
 * A guard: five times what a usual section needs. Where conductivities thousands of times apart meet crosswise the error
 * hardly falls with any mesh; the field is then given with the error that it has. Ours.
 */
export const mostVertices = 12_000

/**
 * Adds points until the mesh is as fine as its sizes ask and no triangle is slimmer than need be (after Chew 1993
 * and Ruppert 1995, with sizes at the vertices). Whatever it does or leaves, the triangulation stays valid.
 */
export const refine = (scratch: Triangulation, graph: OutlineGraph, grading: Grading): void => {
  splitLongSegments(scratch, graph, grading)
  for (let sweep = 0; sweep < 60; sweep++) {
    const before = scratch.vertices
    for (let t = 0; t < scratch.triangles && scratch.vertices < mostVertices; t++)
      if (scratch.body[t]! >= 0) improve(scratch, graph, t, grading)
    if (scratch.vertices === before) return
  }
}

/** Splits fixed edges that are longer than the sizes at their ends allow. */
const splitLongSegments = (scratch: Triangulation, graph: OutlineGraph, grading: Grading): void => {
  for (let sweep = 0; sweep < 20; sweep++) {
    const before = scratch.vertices
    for (let e = 0; e < 3 * scratch.triangles && scratch.vertices < mostVertices; e++)
      if (scratch.tag[e]! >= 0 && (scratch.tag[e]! & 1) === 0 && isLong(scratch, e, grading))
        splitSegment(scratch, graph, e, grading)
    if (scratch.vertices === before) return
  }
}

/**
 * Along a long thin body, far from its ends, heat goes straight across: edges may then be as long as this share of the
 * way to the nearer end, however thin the body. Ours, measured: half a millimetre over three metres takes 70 edges.
 */
const farShare = 0.15

/**
 * Lowers the size at a vertex to what the bodies about it allow: edges no longer than `slenderness` times the distance
 * to the next outline that does not meet the vertex's own.
 */
export const lowerToThickness = (
  scratch: Triangulation,
  graph: OutlineGraph,
  v: number,
  grading: Grading,
): void => {
  const { x, y, from, twin, tag, edgeOf } = scratch
  const own = scratch.onSegment[v]!
  const fromEnds =
    own < 0
      ? 0
      : Math.min(
          Math.hypot(x[v]! - graph.x[graph.from[own]!]!, y[v]! - graph.y[graph.from[own]!]!),
          Math.hypot(x[v]! - graph.x[graph.to[own]!]!, y[v]! - graph.y[graph.to[own]!]!),
        )
  const begin = edgeOf[v]!
  let e = begin
  do {
    const far = nextEdge(e)
    if (tag[far]! >= 0 && !isAdjacent(scratch, graph, v, tag[far]! >> 1)) {
      const a = from[far]!
      const b = from[nextEdge(far)]!
      const length = Math.hypot(x[b]! - x[a]!, y[b]! - y[a]!)
      const height = turn(x[a]!, y[a]!, x[b]!, y[b]!, x[v]!, y[v]!) / length
      const wanted = Math.max(grading.slenderness * height, farShare * fromEnds)
      if (wanted < scratch.size_mm[v]! && wanted >= finest_mm) scratch.size_mm[v] = wanted
    }
    e = twin[lastEdge(e)]!
  } while (e !== begin && e >= 0)
}

/**
 * Slivers that would ask for shorter edges than this come of rounding, where a slope meets the grid: they carry no heat,
 * and the mesh may be slim in them. Ours.
 */
export const finest_mm = 0.02

/** Whether a segment shares an end with the segment that a vertex lies on, or ends at the vertex. */
const isAdjacent = (
  { onSegment }: Triangulation,
  graph: OutlineGraph,
  v: number,
  segment: number,
): boolean => {
  const own = onSegment[v]!
  if (own < 0) return graph.from[segment] === v - squareCorners || graph.to[segment] === v - squareCorners
  const [a, b, c, d] = [graph.from[own]!, graph.to[own]!, graph.from[segment]!, graph.to[segment]!]
  return a === c || a === d || b === c || b === d
}

const isLong = ({ x, y, size_mm, from }: Triangulation, e: number, grading: Grading): boolean => {
  const a = from[e]!
  const b = from[nextEdge(e)]!
  const length = Math.hypot(x[a]! - x[b]!, y[a]! - y[b]!)
  const middle = Math.min(size_mm[a]!, size_mm[b]!) + (grading.growth * length) / 2
  const wanted = Math.min((size_mm[a]! + size_mm[b]!) / 2, middle)
  return length > longEdge * wanted
}

/** A fixed edge is long beyond this multiple of the size: halves of it then are as good as the whole. Ours. */
const longEdge = 1.4

/** Splits a fixed edge where the sizes of its ends balance. False when the pieces would be unsound or too short. */
const splitSegment = (scratch: Triangulation, graph: OutlineGraph, e: number, grading: Grading): boolean => {
  const { x, y, size_mm, from } = scratch
  const a = from[e]!
  const b = from[nextEdge(e)]!
  const rootA = Math.sqrt(size_mm[a]!)
  const share = Math.min(0.67, Math.max(0.33, rootA / (rootA + Math.sqrt(size_mm[b]!))))
  const px = x[a]! + share * (x[b]! - x[a]!)
  const py = y[a]! + share * (y[b]! - y[a]!)
  const length = Math.hypot(x[b]! - x[a]!, y[b]! - y[a]!)
  if (length * Math.min(share, 1 - share) < grading.spacing * 0.5 * Math.min(size_mm[a]!, size_mm[b]!))
    return false
  if (!canSplitEdge(scratch, e, px, py)) return false
  const segment = scratch.tag[e]! >> 1
  const size = Math.min(
    size_mm[a]! + grading.growth * share * length,
    size_mm[b]! + grading.growth * (1 - share) * length,
  )
  const p = splitEdge(scratch, e, px, py)
  scratch.size_mm[p] = size
  scratch.onSegment[p] = segment
  lowerToThickness(scratch, graph, p, grading)
  return true
}

/** Puts a point at the centre of a triangle's circle if the triangle is too large or too slim. */
const improve = (scratch: Triangulation, graph: OutlineGraph, t: number, grading: Grading): void => {
  const { x, y, size_mm, from } = scratch
  const a = from[3 * t]!
  const b = from[3 * t + 1]!
  const c = from[3 * t + 2]!
  const ux = x[b]! - x[a]!
  const uy = y[b]! - y[a]!
  const vx = x[c]! - x[a]!
  const vy = y[c]! - y[a]!
  const u2 = ux * ux + uy * uy
  const v2 = vx * vx + vy * vy
  const w2 = (ux - vx) * (ux - vx) + (uy - vy) * (uy - vy)
  const area2 = ux * vy - uy * vx
  const radius2 = (u2 * v2 * w2) / (4 * area2 * area2)
  const size = (size_mm[a]! + size_mm[b]! + size_mm[c]!) / 3
  const full = grading.fullness * size
  const shortest2 = Math.min(u2, v2, w2)
  const isFull = radius2 > full * full
  const isSlim = radius2 > grading.slimness * grading.slimness * shortest2
  if (!isFull && !(isSlim && shortest2 > grading.spacing * grading.spacing * size * size * 0.25)) return
  if (!isFull && isBetweenFixed(scratch, t, shortest2, u2, v2)) return
  const cx = (vy * u2 - uy * v2) / (2 * area2)
  const cy = (ux * v2 - vx * u2) / (2 * area2)
  const px = x[a]! + cx
  const py = y[a]! + cy
  if (!(Math.abs(px) < 1e7 && Math.abs(py) < 1e7)) return
  addFree(scratch, graph, t, px, py, grading)
}

/** Whether the slim corner of a triangle is an angle of the outlines themselves, which no point can widen. */
const isBetweenFixed = (
  { tag }: Triangulation,
  t: number,
  shortest2: number,
  u2: number,
  v2: number,
): boolean => {
  // Edges: 0 = a-b (u), 1 = b-c (w), 2 = c-a (v). The slim corner lies opposite the shortest.
  const shortest = shortest2 === u2 ? 0 : shortest2 === v2 ? 2 : 1
  return tag[3 * t + ((shortest + 1) % 3)]! >= 0 && tag[3 * t + ((shortest + 2) % 3)]! >= 0
}

/** Walks from a triangle towards a point; a fixed edge in the way or too near is split instead. */
const addFree = (
  scratch: Triangulation,
  graph: OutlineGraph,
  t: number,
  px: number,
  py: number,
  grading: Grading,
): void => {
  const { x, y, from, twin, tag } = scratch
  let at = t
  for (let step = 0; step < 200; step++) {
    let moved = false
    for (let e = 3 * at; e < 3 * at + 3 && !moved; e++) {
      const a = from[e]!
      const b = from[nextEdge(e)]!
      if (turn(x[a]!, y[a]!, x[b]!, y[b]!, px, py) >= 0) continue
      if (tag[e]! >= 0) {
        splitSegment(scratch, graph, e, grading)
        return
      }
      at = (twin[e]! / 3) | 0
      moved = true
    }
    if (!moved) break
  }
  for (let e = 3 * at; e < 3 * at + 3; e++) {
    if (tag[e]! >= 0 && isNear(scratch, e, px, py)) {
      splitSegment(scratch, graph, e, grading)
      return
    }
    const f = twin[e]!
    if (tag[e]! >= 0 || f < 0) continue
    for (let g = nextEdge(f); g !== f; g = nextEdge(g))
      if (tag[g]! >= 0 && isNear(scratch, g, px, py)) {
        splitSegment(scratch, graph, g, grading)
        return
      }
  }
  let size = Infinity
  let nearest2 = Infinity
  for (let e = 3 * at; e < 3 * at + 3; e++) {
    const v = from[e]!
    const d2 = (x[v]! - px) ** 2 + (y[v]! - py) ** 2
    if (d2 < nearest2) nearest2 = d2
    size = Math.min(size, scratch.size_mm[v]! + grading.growth * Math.sqrt(d2))
  }
  if (nearest2 < (grading.spacing * size) ** 2) return
  scratch.near = at
  const place = locate(scratch, px, py)
  if (place.kind === 'vertex' || (place.kind === 'edge' && tag[place.edge]! >= 0)) return
  const p = insertPoint(scratch, px, py)
  scratch.size_mm[p] = size
}

/** Whether a point sees a fixed edge under a wide angle: it would make a flat triangle with it. */
const isNear = ({ x, y, from }: Triangulation, e: number, px: number, py: number): boolean => {
  const a = from[e]!
  const b = from[nextEdge(e)]!
  const ax = x[a]! - px
  const ay = y[a]! - py
  const bx = x[b]! - px
  const by = y[b]! - py
  const dot = ax * bx + ay * by
  return dot < 0 && dot * dot > wideCosine2 * (ax * ax + ay * ay) * (bx * bx + by * by)
}

/** The square of the cosine of the widest angle under which a new point may see a fixed edge: 110 degrees. Ours. */
const wideCosine2 = 0.117
