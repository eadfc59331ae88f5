import { isInCircle, turn } from './predicates'
import { type Triangulation, flip, lastEdge, link, makeRoom, nextEdge } from './triangulation'

/** Where a point was found: inside a triangle, on an edge, or on a vertex that is there already. */
export type Place =
  | { readonly kind: 'inside'; readonly triangle: number }
  | { readonly kind: 'edge'; readonly edge: number }
  | { readonly kind: 'vertex'; readonly vertex: number }

/**
 * Walks from the last place to the triangle that holds a point. Exact; the walk turns about randomly placed
 * first edges so that it cannot circle, and falls back to looking at every triangle.
 */
export const locate = (scratch: Triangulation, px: number, py: number): Place => {
  const { x, y, from, twin } = scratch
  let t = scratch.near
  for (let step = 0; step < 4 * scratch.triangles + 8; step++) {
    let moved = false
    for (let i = 0; i < 3 && !moved; i++) {
      const e = 3 * t + ((i + step) % 3)
      const a = from[e]!
      const b = from[nextEdge(e)]!
      if (turn(x[a]!, y[a]!, x[b]!, y[b]!, px, py) < 0 && twin[e]! >= 0) {
        t = (twin[e]! / 3) | 0
        moved = true
      }
    }
    if (!moved) return placeIn(scratch, t, px, py)
  }
  for (t = 0; t < scratch.triangles; t++) if (holds(scratch, t, px, py)) return placeIn(scratch, t, px, py)
  throw new Error(`point ${px}, ${py} lies outside the triangulation`)
}

const holds = ({ x, y, from }: Triangulation, t: number, px: number, py: number): boolean => {
  for (let e = 3 * t; e < 3 * t + 3; e++) {
    const a = from[e]!
    const b = from[nextEdge(e)]!
    if (turn(x[a]!, y[a]!, x[b]!, y[b]!, px, py) < 0) return false
  }
  return true
}

const placeIn = (scratch: Triangulation, t: number, px: number, py: number): Place => {
  const { x, y, from } = scratch
  scratch.near = t
  let edge = -1
  for (let e = 3 * t; e < 3 * t + 3; e++) {
    const a = from[e]!
    const b = from[nextEdge(e)]!
    if (x[a] === px && y[a] === py) return { kind: 'vertex', vertex: a }
    if (turn(x[a]!, y[a]!, x[b]!, y[b]!, px, py) === 0) edge = e
  }
  return edge < 0 ? { kind: 'inside', triangle: t } : { kind: 'edge', edge }
}

/** Adds a point (or finds it) and restores the Delaunay property. Gives its vertex. */
export const insertPoint = (scratch: Triangulation, px: number, py: number): number => {
  const place = locate(scratch, px, py)
  if (place.kind === 'vertex') return place.vertex
  return place.kind === 'edge'
    ? splitEdge(scratch, place.edge, px, py)
    : splitTriangle(scratch, place.triangle, px, py)
}

/** Adds a vertex inside a triangle. The caller knows that the point lies strictly inside. */
export const splitTriangle = (scratch: Triangulation, t: number, px: number, py: number): number => {
  const p = newVertex(scratch, px, py)
  const { from, twin, tag, body, edgeOf } = scratch
  const e = 3 * t
  const a = from[e]!
  const b = from[e + 1]!
  const c = from[e + 2]!
  const u = 3 * scratch.triangles
  const w = u + 3
  scratch.triangles += 2
  const bc = twin[e + 1]!
  const ca = twin[e + 2]!
  body[u / 3] = body[t]!
  body[w / 3] = body[t]!
  // t becomes a b p, u becomes b c p, w becomes c a p.
  from[e + 2] = p
  from[u] = b
  from[u + 1] = c
  from[u + 2] = p
  from[w] = c
  from[w + 1] = a
  from[w + 2] = p
  tag[u] = tag[e + 1]!
  tag[w] = tag[e + 2]!
  tag[e + 1] = -1
  tag[e + 2] = -1
  tag[u + 1] = -1
  tag[u + 2] = -1
  tag[w + 1] = -1
  tag[w + 2] = -1
  link(scratch, u, bc)
  link(scratch, w, ca)
  link(scratch, e + 1, u + 2)
  link(scratch, u + 1, w + 2)
  link(scratch, w + 1, e + 2)
  edgeOf[a] = e
  edgeOf[b] = u
  edgeOf[c] = w
  edgeOf[p] = e + 2
  legalise(scratch, e, u, w, -1)
  return p
}

/**
 * Adds a vertex on an edge, free or fixed; both halves keep the tag. The four new triangles must be
 * counter-clockwise: `canSplitEdge` tells.
 */
export const splitEdge = (scratch: Triangulation, e: number, px: number, py: number): number => {
  const p = newVertex(scratch, px, py)
  const { from, twin, tag, body, edgeOf } = scratch
  const f = twin[e]!
  const en = nextEdge(e)
  const ep = lastEdge(e)
  const fn = nextEdge(f)
  const fp = lastEdge(f)
  const a = from[e]!
  const b = from[f]!
  const c = from[ep]!
  const d = from[fp]!
  const u = 3 * scratch.triangles
  const w = u + 3
  scratch.triangles += 2
  const bc = twin[en]!
  const ad = twin[fn]!
  body[u / 3] = body[(e / 3) | 0]!
  body[w / 3] = body[(f / 3) | 0]!
  // e's triangle becomes a p c, u becomes p b c; f's becomes b p d, w becomes p a d.
  from[en] = p
  from[u] = p
  from[u + 1] = b
  from[u + 2] = c
  from[fn] = p
  from[w] = p
  from[w + 1] = a
  from[w + 2] = d
  tag[u] = tag[e]!
  tag[w] = tag[f]!
  tag[u + 1] = tag[en]!
  tag[w + 1] = tag[fn]!
  tag[en] = -1
  tag[fn] = -1
  tag[u + 2] = -1
  tag[w + 2] = -1
  link(scratch, u + 1, bc)
  link(scratch, w + 1, ad)
  link(scratch, en, u + 2)
  link(scratch, fn, w + 2)
  link(scratch, e, w)
  link(scratch, f, u)
  edgeOf[p] = u
  edgeOf[a] = e
  edgeOf[b] = f
  edgeOf[c] = ep
  edgeOf[d] = fp
  legalise(scratch, ep, u + 1, fp, w + 1)
  return p
}

/** Whether a point, which may lie beside the edge by rounding, splits it into four sound triangles. */
export const canSplitEdge = (
  { x, y, from, twin }: Triangulation,
  e: number,
  px: number,
  py: number,
): boolean => {
  for (const half of [e, twin[e]!]) {
    const a = from[half]!
    const b = from[nextEdge(half)]!
    const c = from[lastEdge(half)]!
    if (turn(x[b]!, y[b]!, x[c]!, y[c]!, px, py) <= 0) return false
    if (turn(x[c]!, y[c]!, x[a]!, y[a]!, px, py) <= 0) return false
  }
  return true
}

const newVertex = (scratch: Triangulation, px: number, py: number): number => {
  makeRoom(scratch, 1)
  const p = scratch.vertices++
  scratch.x[p] = px
  scratch.y[p] = py
  scratch.onSegment[p] = -1
  return p
}

/** Flips what lies opposite the newest vertex until every free edge about it is Delaunay. -1 means no edge. */
const legalise = (
  scratch: Triangulation,
  first: number,
  second: number,
  third: number,
  fourth: number,
): void => {
  let { stack } = scratch
  let depth = 0
  stack[depth++] = first
  stack[depth++] = second
  stack[depth++] = third
  if (fourth >= 0) stack[depth++] = fourth
  while (depth > 0) {
    const e = stack[--depth]!
    if (isDelaunay(scratch, e)) continue
    const f = scratch.twin[e]!
    flip(scratch, e)
    // Now the newest vertex sees the neighbour's two far edges: e itself, and the successor of f.
    if (depth + 2 > stack.length) stack = longerStack(scratch)
    stack[depth++] = e
    stack[depth++] = nextEdge(f)
  }
}

const longerStack = (scratch: Triangulation): Int32Array => {
  const longer = new Int32Array(2 * scratch.stack.length)
  longer.set(scratch.stack)
  scratch.stack = longer
  return longer
}

/** Whether an edge is fixed, at the rim, or has no far vertex inside its triangle's circle. */
export const isDelaunay = ({ x, y, from, twin, tag }: Triangulation, e: number): boolean => {
  const f = twin[e]!
  if (f < 0 || tag[e]! >= 0) return true
  const a = from[e]!
  const b = from[nextEdge(e)]!
  const c = from[lastEdge(e)]!
  const d = from[lastEdge(f)]!
  return !isInCircle(x[a]!, y[a]!, x[b]!, y[b]!, x[c]!, y[c]!, x[d]!, y[d]!)
}
