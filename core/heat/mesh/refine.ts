import { canSplitEdge, insertPoint, locate, splitEdge } from './insert'
import { turn } from './predicates'
import { type Triangulation, lastEdge, nextEdge } from './triangulation'

/** How a mesh is graded. Lengths follow the sizes that the vertices carry. */
export type Grading = {
  /** How fast the edge length may grow with distance. */
  readonly growth: number
  /** No edge is wanted longer than this, mm. */
  readonly longest_mm: number
  /** A triangle is split when its circle's radius passes this multiple of the local size. */
  readonly fullness: number
  /** A triangle is split when its circle's radius passes this multiple of its shortest edge. */
  readonly slimness: number
  /** No new point comes nearer to another than this share of the local size. */
  readonly spacing: number
}

/** A guard, not a limit that any section meets: a mesh of this many vertices is left as it is, still valid. Ours. */
const mostVertices = 200_000

/**
 * Adds points until the mesh is as fine as its sizes ask and no triangle is slimmer than need be (after Chew 1993
 * and Ruppert 1995, with sizes at the vertices). Whatever it does or leaves, the triangulation stays valid.
 */
export const refine = (scratch: Triangulation, grading: Grading): void => {
  splitLongSegments(scratch, grading)
  for (let sweep = 0; sweep < 60; sweep++) {
    const before = scratch.vertices
    for (let t = 0; t < scratch.triangles && scratch.vertices < mostVertices; t++)
      if (scratch.body[t]! >= 0) improve(scratch, t, grading)
    if (scratch.vertices === before) return
  }
}

/** Lets sizes grow no faster than the grading from vertex to vertex along the edges that are there. */
export const smoothSizes = ({ x, y, size_mm, from, body, triangles }: Triangulation, grading: Grading): void => {
  for (let sweep = 0, changed = true; changed && sweep < 12; sweep++) {
    changed = false
    for (let e = 0; e < 3 * triangles; e++) {
      if (body[(e / 3) | 0]! < 0) continue
      const a = from[e]!
      const b = from[nextEdge(e)]!
      const reach = grading.growth * Math.hypot(x[a]! - x[b]!, y[a]! - y[b]!)
      if (size_mm[a]! > size_mm[b]! + reach + 1e-9) {
        size_mm[a] = size_mm[b]! + reach
        changed = true
      } else if (size_mm[b]! > size_mm[a]! + reach + 1e-9) {
        size_mm[b] = size_mm[a]! + reach
        changed = true
      }
    }
  }
}

/** Splits fixed edges that are longer than the sizes at their ends allow. */
const splitLongSegments = (scratch: Triangulation, grading: Grading): void => {
  for (let e = 0; e < 3 * scratch.triangles; e++) {
    while (scratch.tag[e]! >= 0 && (scratch.tag[e]! & 1) === 0 && isLong(scratch, e, grading))
      if (!splitSegment(scratch, e, grading)) break
  }
}

const isLong = ({ x, y, size_mm, from }: Triangulation, e: number, grading: Grading): boolean => {
  const a = from[e]!
  const b = from[nextEdge(e)]!
  const length = Math.hypot(x[a]! - x[b]!, y[a]! - y[b]!)
  const middle = Math.min(size_mm[a]!, size_mm[b]!) + (grading.growth * length) / 2
  const wanted = Math.min((size_mm[a]! + size_mm[b]!) / 2, middle, grading.longest_mm)
  return length > longEdge * wanted
}

/** A fixed edge is long beyond this multiple of the size: halves of it then are as good as the whole. Ours. */
const longEdge = 1.4

/** Splits a fixed edge where the sizes of its ends balance. False when the pieces would be unsound or too short. */
const splitSegment = (scratch: Triangulation, e: number, grading: Grading): boolean => {
  const { x, y, size_mm, from } = scratch
  const a = from[e]!
  const b = from[nextEdge(e)]!
  const rootA = Math.sqrt(size_mm[a]!)
  const share = Math.min(0.67, Math.max(0.33, rootA / (rootA + Math.sqrt(size_mm[b]!))))
  const px = x[a]! + share * (x[b]! - x[a]!)
  const py = y[a]! + share * (y[b]! - y[a]!)
  const length = Math.hypot(x[b]! - x[a]!, y[b]! - y[a]!)
  if (length * Math.min(share, 1 - share) < grading.spacing * 0.5 * Math.min(size_mm[a]!, size_mm[b]!)) return false
  if (!canSplitEdge(scratch, e, px, py)) return false
  const segment = scratch.tag[e]! >> 1
  const size = Math.min(
    size_mm[a]! + grading.growth * share * length,
    size_mm[b]! + grading.growth * (1 - share) * length,
    grading.longest_mm,
  )
  const p = splitEdge(scratch, e, px, py)
  scratch.size_mm[p] = size
  scratch.onSegment[p] = segment
  return true
}

/** Puts a point at the centre of a triangle's circle if the triangle is too large or too slim. */
const improve = (scratch: Triangulation, t: number, grading: Grading): void => {
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
  let cx = (vy * u2 - uy * v2) / (2 * area2)
  let cy = (ux * v2 - vx * u2) / (2 * area2)
  void cx
  const px = x[a]! + cx
  const py = y[a]! + cy
  if (!(Math.abs(px) < 1e7 && Math.abs(py) < 1e7)) return
  addFree(scratch, t, px, py, grading)
}

/** Whether the slim corner of a triangle is an angle of the outlines themselves, which no point can widen. */
const isBetweenFixed = ({ tag }: Triangulation, t: number, shortest2: number, u2: number, v2: number): boolean => {
  // Edges: 0 = a-b (u), 1 = b-c (w), 2 = c-a (v). The slim corner lies opposite the shortest.
  const shortest = shortest2 === u2 ? 0 : shortest2 === v2 ? 2 : 1
  return tag[3 * t + ((shortest + 1) % 3)]! >= 0 && tag[3 * t + ((shortest + 2) % 3)]! >= 0
}

/** Walks from a triangle towards a point; a fixed edge in the way or too near is split instead. */
const addFree = (scratch: Triangulation, t: number, px: number, py: number, grading: Grading): void => {
  const { x, y, from, twin, tag } = scratch
  let at = t
  for (let step = 0; step < 200; step++) {
    let moved = false
    for (let e = 3 * at; e < 3 * at + 3 && !moved; e++) {
      const a = from[e]!
      const b = from[nextEdge(e)]!
      if (turn(x[a]!, y[a]!, x[b]!, y[b]!, px, py) >= 0) continue
      if (tag[e]! >= 0) {
        splitSegment(scratch, e, grading)
        return
      }
      at = (twin[e]! / 3) | 0
      moved = true
    }
    if (!moved) break
  }
  for (let e = 3 * at; e < 3 * at + 3; e++) {
    if (tag[e]! >= 0 && isNear(scratch, e, px, py)) {
      splitSegment(scratch, e, grading)
      return
    }
    const f = twin[e]!
    if (tag[e]! >= 0 || f < 0) continue
    for (let g = nextEdge(f); g !== f; g = nextEdge(g))
      if (tag[g]! >= 0 && isNear(scratch, g, px, py)) {
        splitSegment(scratch, g, grading)
        return
      }
  }
  let size = grading.longest_mm
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

void lastEdge
