import { isInCircle, turn } from './predicates'
import { type Triangulation, lastEdge, link, nextEdge } from './triangulation'

/** What became of a segment: fixed, or stopped by a fixed edge that it crosses. */
export type Fixed = { readonly kind: 'fixed' } | { readonly kind: 'crossed'; readonly by: number }

/**
 * Makes a segment an edge of the triangulation and tags it (Anglada 1997: the triangles that it crosses are taken out and
 * both sides filled again, each with Delaunay triangles). Vertices that lie exactly on the segment split it.
 */
export const fixSegment = (scratch: Triangulation, a: number, b: number, segment: number): Fixed => {
  let start = a
  while (start !== b) {
    const first = firstAhead(scratch, start, b)
    if (first.kind === 'crossing') {
      const by = openWay(scratch, start, b, first.edge)
      if (by >= 0) return { kind: 'crossed', by: by >> 1 }
      continue
    }
    scratch.tag[first.edge] = 2 * segment
    scratch.tag[scratch.twin[first.edge]!] = 2 * segment + 1
    start = scratch.from[nextEdge(first.edge)]!
  }
  return { kind: 'fixed' }
}

type Ahead = { readonly kind: 'edge' | 'crossing'; readonly edge: number }

/** The edge from a vertex along a ray to b, or the edge opposite that the ray crosses first (from its right to its left). */
const firstAhead = (scratch: Triangulation, a: number, b: number): Ahead => {
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

/** One side of the way: vertices in order, and for each step between them the half-edge that bounded the triangles. */
type Side = { readonly vertices: number[]; readonly inner: number[] }

/** What is needed to fill the way: triangles to use again, and how their bounding half-edges were joined before. */
type Filling = {
  readonly slots: number[]
  readonly body: number
  readonly outer: Map<number, { readonly twin: number; readonly tag: number }>
  /** New half-edge in place of an old bounding one: an edge may bound the way on both of its sides. */
  readonly renewed: Map<number, number>
}

/** Clears the way from a to b, or to the first vertex that lies exactly on it. Gives the tag of a fixed edge in it, else -1. */
const openWay = (scratch: Triangulation, a: number, b: number, first: number): number => {
  const { x, y, from, twin, tag, body } = scratch
  const left: Side = { vertices: [a, from[nextEdge(first)]!], inner: [nextEdge(first)] }
  const right: Side = { vertices: [a, from[first]!], inner: [lastEdge(first)] }
  const slots = [(first / 3) | 0]
  for (let e = first; ;) {
    if (tag[e]! >= 0) return tag[e]!
    const f = twin[e]!
    slots.push((f / 3) | 0)
    const apex = from[lastEdge(f)]!
    const side = apex === b ? 0 : turn(x[a]!, y[a]!, x[b]!, y[b]!, x[apex]!, y[apex]!)
    if (side >= 0) {
      left.vertices.push(apex)
      left.inner.push(lastEdge(f))
    }
    if (side <= 0) {
      right.vertices.push(apex)
      right.inner.push(nextEdge(f))
    }
    if (side === 0) break
    e = side > 0 ? nextEdge(f) : lastEdge(f)
  }
  const outer = new Map([...left.inner, ...right.inner].map(h => [h, { twin: twin[h]!, tag: tag[h]! }]))
  const filling: Filling = { slots, body: body[slots[0]!]!, outer, renewed: new Map() }
  const upper = fill(scratch, filling, left, 0, left.vertices.length - 1)
  const turnedRight: Side = { vertices: right.vertices.toReversed(), inner: right.inner.toReversed() }
  const lower = fill(scratch, filling, turnedRight, 0, right.vertices.length - 1)
  link(scratch, upper, lower)
  return -1
}

/**
 * Fills the stretch of a side between two of its vertices, the side lying left of the line from the first to the last.
 * Gives the half-edge along that line; what bounds the stretch is joined to what was there before.
 */
const fill = (scratch: Triangulation, filling: Filling, side: Side, low: number, high: number): number => {
  const { x, y, from, tag, edgeOf, body } = scratch
  const [u, w] = [side.vertices[low]!, side.vertices[high]!]
  let best = low + 1
  for (let i = low + 2; i < high; i++) {
    const [c, v] = [side.vertices[best]!, side.vertices[i]!]
    if (v !== u && v !== w && isInCircle(x[u]!, y[u]!, x[w]!, y[w]!, x[c]!, y[c]!, x[v]!, y[v]!)) best = i
  }
  const c = side.vertices[best]!
  const t = filling.slots.pop()
  if (t === undefined) throw new Error(`the way from ${u} to ${w} takes more triangles than it crossed`)
  const base = 3 * t
  from[base] = u
  from[base + 1] = w
  from[base + 2] = c
  edgeOf[u] = base
  edgeOf[w] = base + 1
  edgeOf[c] = base + 2
  body[t] = filling.body
  tag[base] = -1
  close(scratch, filling, side, best, high, base + 1)
  close(scratch, filling, side, low, best, base + 2)
  return base
}

/** Joins a new half-edge to what lies beyond it: a further stretch to fill, or what bounded the way. */
const close = (
  scratch: Triangulation,
  filling: Filling,
  side: Side,
  low: number,
  high: number,
  e: number,
): void => {
  const { tag } = scratch
  if (high - low > 1) {
    tag[e] = -1
    link(scratch, e, fill(scratch, filling, side, low, high))
    return
  }
  const old = side.inner[low]!
  const before = filling.outer.get(old)
  if (!before) throw new Error(`half-edge ${old} does not bound the way`)
  tag[e] = before.tag
  filling.renewed.set(old, e)
  // An edge that had crossed triangles on both sides is joined when its second side is filled.
  if (!filling.outer.has(before.twin)) link(scratch, e, before.twin)
  else if (filling.renewed.has(before.twin)) link(scratch, e, filling.renewed.get(before.twin)!)
}
