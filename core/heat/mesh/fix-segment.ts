import { isDelaunay } from './insert'
import { turn } from './predicates'
import { type Triangulation, flip, lastEdge, nextEdge } from './triangulation'

/** What became of a segment: fixed, or stopped by a fixed edge that it crosses. */
export type Fixed = { readonly kind: 'fixed' } | { readonly kind: 'crossed'; readonly by: number }

/**
 * Makes a segment an edge of the triangulation (Sloan 1993: flip what crosses it) and tags it. Vertices that lie
 * exactly on the segment split it. Edges turned on the way become Delaunay again as far as the fixed ones allow.
 */
export const fixSegment = (scratch: Triangulation, a: number, b: number, segment: number): Fixed => {
  let start = a
  while (start !== b) {
    const first = firstAhead(scratch, start, b)
    if (first.kind === 'edge') {
      scratch.tag[first.edge] = 2 * segment
      scratch.tag[scratch.twin[first.edge]!] = 2 * segment + 1
      start = scratch.from[nextEdge(first.edge)]!
      continue
    }
    const stop = clearWay(scratch, start, b, first.edge)
    if (stop >= 0) return { kind: 'crossed', by: stop >> 1 }
  }
  return { kind: 'fixed' }
}

/** The edge from a vertex along a ray to b, or the edge opposite that the ray crosses first. */
const firstAhead = (
  scratch: Triangulation,
  a: number,
  b: number,
): { readonly kind: 'edge' | 'crossing'; readonly edge: number } => {
  const { x, y, from, twin, edgeOf } = scratch
  const begin = edgeOf[a]!
  let e = begin
  do {
    const p = from[nextEdge(e)]!
    const q = from[lastEdge(e)]!
    const side = turn(x[a]!, y[a]!, x[b]!, y[b]!, x[p]!, y[p]!)
    if (side === 0 && isAhead(scratch, a, b, p)) return { kind: 'edge', edge: e }
    if (side < 0 && turn(x[a]!, y[a]!, x[b]!, y[b]!, x[q]!, y[q]!) > 0)
      return { kind: 'crossing', edge: nextEdge(e) }
    e = twin[lastEdge(e)]!
  } while (e !== begin && e >= 0)
  throw new Error(`no edge leaves vertex ${a} towards ${b}`)
}

const isAhead = ({ x, y }: Triangulation, a: number, b: number, p: number): boolean =>
  (x[b]! - x[a]!) * (x[p]! - x[a]!) + (y[b]! - y[a]!) * (y[p]! - y[a]!) > 0

/** Flips every edge that crosses a-b until none does. Gives the tag of a fixed edge in the way, else -1. */
const clearWay = (scratch: Triangulation, a: number, b: number, first: number): number => {
  const { x, y, from, twin, tag } = scratch
  const crossing: number[] = []
  let end = b
  let e = first
  // Collect what a-b crosses, up to b or to a vertex on the way.
  for (;;) {
    if (tag[e]! >= 0) return tag[e]!
    crossing.push(from[e]!, from[nextEdge(e)]!)
    const f = twin[e]!
    const apex = from[lastEdge(f)]!
    if (apex === b) break
    const side = turn(x[a]!, y[a]!, x[b]!, y[b]!, x[apex]!, y[apex]!)
    if (side === 0) {
      end = apex
      break
    }
    // p of edge e lies right, q left; keep to the edge whose ends lie on both sides.
    e = side > 0 ? nextEdge(f) : lastEdge(f)
  }
  const turned: number[] = []
  for (let round = 0; crossing.length > 0; round++) {
    if (round > 1e6) throw new Error(`segment ${a}-${b} cannot be cleared`)
    const q = crossing.pop() ?? -1
    const p = crossing.pop() ?? -1
    const g = edgeBetween(scratch, p, q)
    if (g < 0) continue
    const f = twin[g]!
    const c = from[lastEdge(g)]!
    const d = from[lastEdge(f)]!
    const isConvex =
      turn(x[c]!, y[c]!, x[d]!, y[d]!, x[p]!, y[p]!) * turn(x[c]!, y[c]!, x[d]!, y[d]!, x[q]!, y[q]!) < 0
    if (!isConvex) {
      crossing.unshift(p, q)
      continue
    }
    flip(scratch, g)
    const stillCrosses =
      c !== a && c !== end && d !== a && d !== end &&
      turn(x[a]!, y[a]!, x[b]!, y[b]!, x[c]!, y[c]!) * turn(x[a]!, y[a]!, x[b]!, y[b]!, x[d]!, y[d]!) < 0 // prettier-ignore
    if (stillCrosses) crossing.unshift(c, d)
    else turned.push(c, d)
  }
  restore(scratch, turned, a, end)
  return -1
}

/** Lawson flips over the turned edges until all are Delaunay; a-b itself stays. */
const restore = (scratch: Triangulation, turned: number[], a: number, b: number): void => {
  for (let round = 0, changed = true; changed && round < 100; round++) {
    changed = false
    for (let i = 0; i < turned.length; i += 2) {
      const [p, q] = [turned[i] ?? -1, turned[i + 1] ?? -1]
      if ((p === a && q === b) || (p === b && q === a)) continue
      const e = edgeBetween(scratch, p, q)
      if (e < 0 || isDelaunay(scratch, e)) continue
      flip(scratch, e)
      const other = lastEdge(e)
      turned[i] = scratch.from[other]!
      turned[i + 1] = scratch.from[nextEdge(other)]!
      changed = true
    }
  }
}

/** The half-edge from p to q, -1 if they are no neighbours. */
export const edgeBetween = ({ from, twin, edgeOf }: Triangulation, p: number, q: number): number => {
  const begin = edgeOf[p]!
  let e = begin
  do {
    if (from[nextEdge(e)] === q) return e
    e = twin[lastEdge(e)]!
  } while (e !== begin && e >= 0)
  return -1
}
