/**
 * A triangulation that is being built: a workspace of half-edges. Triangle t owns the half-edges 3t, 3t+1, 3t+2,
 * counter-clockwise; `from[e]` is the vertex a half-edge leaves, `twin[e]` the same edge in the neighbour (-1 at the rim).
 * `tag[e]` is -1 on a free edge, else 2 × segment + (0 along, 1 against the segment's direction).
 */
export type Triangulation = {
  vertices: number
  triangles: number
  x: Float64Array
  y: Float64Array
  /** The wanted edge length at a vertex, mm. */
  size_mm: Float64Array
  /** Some half-edge that leaves a vertex. */
  edgeOf: Int32Array
  /** Segment that a vertex lies inside of; -1 for a free vertex, -2 for a vertex of the outlines. */
  onSegment: Int32Array
  from: Int32Array
  twin: Int32Array
  tag: Int32Array
  /** Body of a triangle, -1 outside. */
  body: Int32Array
  /** Edges whose Delaunay property is to be checked. */
  stack: Int32Array
  /** Where the last search ended: the next one starts there. */
  near: number
}

export const nextEdge = (e: number): number => (e % 3 === 2 ? e - 2 : e + 1)
export const lastEdge = (e: number): number => (e % 3 === 0 ? e + 2 : e - 1)

/** An empty workspace: two triangles over a square far larger than the domain, so that nothing ever lies on its rim. */
export const triangulationOver = (box: Box, capacity: number): Triangulation => {
  const reach = 4 * Math.max(box.right - box.left, box.top - box.bottom, 1)
  const centreX = (box.left + box.right) / 2
  const centreY = (box.bottom + box.top) / 2
  const it = withCapacity(capacity)
  const corners = [-1, -1, 1, -1, 1, 1, -1, 1]
  for (let v = 0; v < 4; v++) {
    it.x[v] = centreX + reach * corners[2 * v]!
    it.y[v] = centreY + reach * corners[2 * v + 1]!
    it.size_mm[v] = reach
  }
  it.vertices = 4
  it.triangles = 2
  it.from.set([0, 1, 2, 0, 2, 3])
  it.twin.set([-1, -1, 3, 2, -1, -1])
  it.edgeOf.set([0, 1, 2, 5])
  return it
}

export type Box = {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

/** Makes room for further vertices (each adds two triangles). */
export const makeRoom = (scratch: Triangulation, vertices: number): void => {
  if (scratch.vertices + vertices <= scratch.x.length) return
  const bigger = withCapacity(2 * (scratch.vertices + vertices))
  bigger.x.set(scratch.x)
  bigger.y.set(scratch.y)
  bigger.size_mm.set(scratch.size_mm)
  bigger.edgeOf.set(scratch.edgeOf)
  bigger.onSegment.set(scratch.onSegment)
  bigger.from.set(scratch.from)
  bigger.twin.set(scratch.twin)
  bigger.tag.set(scratch.tag)
  bigger.body.set(scratch.body)
  Object.assign(scratch, {
    ...bigger,
    vertices: scratch.vertices,
    triangles: scratch.triangles,
    near: scratch.near,
  })
}

const withCapacity = (capacity: number): Triangulation => ({
  vertices: 0,
  triangles: 0,
  x: new Float64Array(capacity),
  y: new Float64Array(capacity),
  size_mm: new Float64Array(capacity),
  edgeOf: new Int32Array(capacity),
  onSegment: new Int32Array(capacity).fill(-1),
  from: new Int32Array(6 * capacity),
  twin: new Int32Array(6 * capacity).fill(-1),
  tag: new Int32Array(6 * capacity).fill(-1),
  body: new Int32Array(2 * capacity).fill(-1),
  stack: new Int32Array(1024),
  near: 0,
})

/** Joins two half-edges; `b` may be -1. */
export const link = (scratch: Triangulation, a: number, b: number): void => {
  scratch.twin[a] = b
  if (b >= 0) scratch.twin[b] = a
}

/** Turns the free edge between two triangles into the other diagonal. The caller knows that their union is convex. */
export const flip = (scratch: Triangulation, e: number): void => {
  const { from, twin, tag, edgeOf } = scratch
  const f = twin[e]!
  const en = nextEdge(e)
  const ep = lastEdge(e)
  const fn = nextEdge(f)
  const fp = lastEdge(f)
  const apex = from[ep]!
  const foot = from[fp]!
  const outerE = twin[fp]!
  const outerF = twin[ep]!
  from[e] = foot
  from[f] = apex
  tag[e] = tag[fp]!
  tag[f] = tag[ep]!
  tag[ep] = -1
  tag[fp] = -1
  link(scratch, e, outerE)
  link(scratch, f, outerF)
  link(scratch, ep, fp)
  edgeOf[foot] = e
  edgeOf[apex] = ep
  edgeOf[from[en]!] = en
  edgeOf[from[fn]!] = fn
}
