import { locate } from '../mesh/insert'
import { squareCorners } from '../mesh/fixed-triangulation'
import type { Mesh } from '../mesh/mesh'
import type { OutlineGraph } from '../mesh/outline-graph'
import type { Triangulation } from '../mesh/triangulation'

/**
 * How the nodes of a mesh follow its outlines (after Liu, Qin & Xia 2006): each node as a mean of three nodes of the
 * outlines, those of the triangle of the outlines alone that it lies in; on an edge only its two ends count.
 */
export type NodeMap = { readonly anchor: Int32Array; readonly weight: Float64Array }

/** Ties the nodes of a mesh to the outlines. `coarse` is the triangulation of the outlines alone. */
export const nodeMap = (
  mesh: Mesh,
  graph: OutlineGraph,
  coarse: Triangulation,
  edgesOf: EdgeNodes,
): NodeMap => {
  const anchor = new Int32Array(3 * mesh.vertices)
  const weight = new Float64Array(3 * mesh.vertices)
  for (let v = 0; v < mesh.vertices; v++) {
    const [px, py] = [mesh.x[v]!, mesh.y[v]!]
    const segment = edgesOf[v]!
    if (segment >= 0) {
      const [a, b] = [graph.from[segment]!, graph.to[segment]!]
      const [dx, dy] = [graph.x[b]! - graph.x[a]!, graph.y[b]! - graph.y[a]!]
      const share = ((px - graph.x[a]!) * dx + (py - graph.y[a]!) * dy) / (dx * dx + dy * dy)
      anchor.set([a, b, a], 3 * v)
      weight.set([1 - share, share, 0], 3 * v)
      continue
    }
    const place = locate(coarse, px, py)
    if (place.kind === 'vertex') {
      anchor.fill(place.vertex - squareCorners, 3 * v, 3 * v + 3)
      weight.set([1, 0, 0], 3 * v)
      continue
    }
    const t = place.kind === 'inside' ? place.triangle : (place.edge / 3) | 0
    const [a, b, c] = [coarse.from[3 * t]!, coarse.from[3 * t + 1]!, coarse.from[3 * t + 2]!]
    const area = cross(coarse, a, b, coarse.x[c]!, coarse.y[c]!)
    const wc = cross(coarse, a, b, px, py) / area
    const wa = cross(coarse, b, c, px, py) / area
    anchor.set([a - squareCorners, b - squareCorners, c - squareCorners], 3 * v)
    weight.set([wa, 1 - wa - wc, wc], 3 * v)
  }
  return { anchor, weight }
}

/** Segment that each node lies inside of, -1 for others. */
export type EdgeNodes = Int32Array

const cross = ({ x, y }: Triangulation, a: number, b: number, px: number, py: number): number =>
  (x[b]! - x[a]!) * (py - y[a]!) - (y[b]! - y[a]!) * (px - x[a]!)

/** Moves the nodes of a mesh after its outlines. Nothing is allocated. */
export const follow = (
  scratch: Mesh,
  { anchor, weight }: NodeMap,
  x: Float64Array,
  y: Float64Array,
): void => {
  for (let v = 0, i = 0; v < scratch.vertices; v++, i += 3) {
    const [a, b, c] = [anchor[i]!, anchor[i + 1]!, anchor[i + 2]!]
    scratch.x[v] = weight[i]! * x[a]! + weight[i + 1]! * x[b]! + weight[i + 2]! * x[c]!
    scratch.y[v] = weight[i]! * y[a]! + weight[i + 1]! * y[b]! + weight[i + 2]! * y[c]!
  }
}

/** Twice the area of each triangle over the square of its longest edge: 0.87 for the best, 0 for none. */
export const shapesOf = (mesh: Mesh, scratch: Float64Array): void => {
  const { x, y, corner } = mesh
  for (let t = 0; t < mesh.triangles; t++) {
    const [a, b, c] = [corner[3 * t]!, corner[3 * t + 1]!, corner[3 * t + 2]!]
    const [ux, uy, vx, vy] = [x[b]! - x[a]!, y[b]! - y[a]!, x[c]! - x[a]!, y[c]! - y[a]!]
    const longest2 = Math.max(ux * ux + uy * uy, vx * vx + vy * vy, (ux - vx) ** 2 + (uy - vy) ** 2)
    scratch[t] = (ux * vy - uy * vx) / longest2
  }
}
