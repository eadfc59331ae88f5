import type { Mesh } from './mesh'

/** The mesh with every triangle cut into four and every edge into two: the same outlines, twice the subdivisions. */
export const quartered = (it: Mesh): Mesh => {
  const { vertices: n, edges: m, triangles } = it
  const x = new Float64Array(n + m)
  const y = new Float64Array(n + m)
  const inSegment = new Int32Array(n + m)
  x.set(it.x)
  y.set(it.y)
  inSegment.set(it.inSegment)
  const edges = 2 * m + 3 * triangles
  const edgeFrom = new Int32Array(edges)
  const edgeTo = new Int32Array(edges)
  const segmentOf = new Int32Array(edges).fill(-1)
  for (let e = 0; e < m; e++) {
    const [a, b] = [it.edgeFrom[e]!, it.edgeTo[e]!]
    x[n + e] = (it.x[a]! + it.x[b]!) / 2
    y[n + e] = (it.y[a]! + it.y[b]!) / 2
    inSegment[n + e] = it.segmentOf[e]!
    edgeFrom.set([a, n + e], 2 * e)
    edgeTo.set([n + e, b], 2 * e)
    segmentOf.fill(it.segmentOf[e]!, 2 * e, 2 * e + 2)
  }
  const corner = new Int32Array(12 * triangles)
  const edgeOf = new Int32Array(12 * triangles)
  const body = new Int32Array(4 * triangles)
  /** The half of an old edge that touches a vertex. */
  const half = (e: number, v: number): number => (it.edgeFrom[e] === v ? 2 * e : 2 * e + 1)
  for (let t = 0; t < triangles; t++) {
    const inner = 2 * m + 3 * t
    const middle = [0, 1, 2].map(i => n + it.edgeOf[3 * t + i]!)
    for (let i = 0; i < 3; i++) {
      const [j, k] = [(i + 1) % 3, (i + 2) % 3]
      // Inner edge i cuts off corner i: it joins the middles of the two edges that meet there.
      edgeFrom[inner + i] = middle[j]!
      edgeTo[inner + i] = middle[k]!
      const own = it.corner[3 * t + i]!
      corner.set([own, middle[k]!, middle[j]!], 12 * t + 3 * i)
      edgeOf.set(
        [inner + i, half(it.edgeOf[3 * t + j]!, own), half(it.edgeOf[3 * t + k]!, own)],
        12 * t + 3 * i,
      )
    }
    corner.set(middle, 12 * t + 9)
    edgeOf.set([inner, inner + 1, inner + 2], 12 * t + 9)
    body.fill(it.body[t]!, 4 * t, 4 * t + 4)
  }
  return {
    vertices: n + m,
    edges,
    triangles: 4 * triangles,
    x,
    y,
    corner,
    edgeOf,
    body,
    edgeFrom,
    edgeTo,
    segmentOf,
    inSegment, // prettier-ignore
    origin: new Int32Array(n + m).fill(-1),
  }
}
