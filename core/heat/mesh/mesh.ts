import { type Triangulation, nextEdge } from './triangulation'

/**
 * A conforming triangle mesh of a case. Triangle t has the corners `corner[3t…]`, counter-clockwise, and opposite
 * corner i the edge `edgeOf[3t+i]`. Edges carry the quadratic part of the solution, one unknown each.
 */
export type Mesh = {
  readonly vertices: number
  readonly triangles: number
  readonly edges: number
  readonly x: Float64Array
  readonly y: Float64Array
  readonly corner: Int32Array
  readonly edgeOf: Int32Array
  readonly body: Int32Array
  readonly edgeFrom: Int32Array
  readonly edgeTo: Int32Array
  /** Segment of the outlines that an edge is part of, -1 for a free edge. */
  readonly segmentOf: Int32Array
  /** Segment that a vertex lies inside of; negative for corners of outlines and free vertices. */
  readonly inSegment: Int32Array
  /** Vertex of the triangulation that a vertex was, so that a finer mesh can follow. */
  readonly origin: Int32Array
}

/** Takes the triangles that lie in a body out of a triangulation. */
export const meshOf = (net: Triangulation): Mesh => {
  const { from, twin, tag, body } = net
  const number = new Int32Array(net.vertices).fill(-1)
  const edgeNumber = new Int32Array(3 * net.triangles).fill(-1)
  const corner = new Int32Array(3 * net.triangles)
  const edgeOf = new Int32Array(3 * net.triangles)
  const bodyOf = new Int32Array(net.triangles)
  const edgeFrom = new Int32Array(3 * net.triangles)
  const edgeTo = new Int32Array(3 * net.triangles)
  const segmentOf = new Int32Array(3 * net.triangles)
  const origin = new Int32Array(net.vertices)
  let [vertices, edges, triangles] = [0, 0, 0]
  for (let t = 0; t < net.triangles; t++) {
    if (body[t]! < 0) continue
    for (let i = 0; i < 3; i++) {
      const e = 3 * t + i
      const v = from[e]!
      if (number[v]! < 0) {
        origin[vertices] = v
        number[v] = vertices++
      }
      corner[3 * triangles + i] = number[v]!
      if (edgeNumber[e]! < 0) {
        edgeNumber[e] = edges
        if (twin[e]! >= 0) edgeNumber[twin[e]!] = edges
        edgeFrom[edges] = v
        edgeTo[edges] = from[nextEdge(e)]!
        segmentOf[edges] = tag[e]! >> 1
        edges++
      }
      // Half-edge i runs from corner i to i + 1, opposite corner i + 2.
      edgeOf[3 * triangles + ((i + 2) % 3)] = edgeNumber[e]!
    }
    bodyOf[triangles++] = body[t]!
  }
  for (let e = 0; e < edges; e++) {
    edgeFrom[e] = number[edgeFrom[e]!]!
    edgeTo[e] = number[edgeTo[e]!]!
  }
  const x = new Float64Array(vertices)
  const y = new Float64Array(vertices)
  for (let v = 0; v < vertices; v++) {
    x[v] = net.x[origin[v]!]!
    y[v] = net.y[origin[v]!]!
  }
  return {
    vertices,
    triangles,
    edges,
    x,
    y, // prettier-ignore
    corner: corner.subarray(0, 3 * triangles),
    edgeOf: edgeOf.subarray(0, 3 * triangles),
    body: bodyOf.subarray(0, triangles),
    edgeFrom: edgeFrom.subarray(0, edges),
    edgeTo: edgeTo.subarray(0, edges),
    segmentOf: segmentOf.subarray(0, edges),
    inSegment: Int32Array.from(origin.subarray(0, vertices), v => net.onSegment[v]!),
    origin: origin.subarray(0, vertices),
  }
}
