import type { Indicators } from '../estimate'
import { squareCorners } from './fixed-triangulation'
import type { Mesh } from './mesh'
import type { OutlineGraph } from './outline-graph'
import { type Grading, finest_mm, lowerToThickness } from './refine'
import { type Triangulation, nextEdge } from './triangulation'

/** Sizes from the outlines alone: at each vertex its shortest edge, lowered to what thin bodies allow. */
export const firstSizes = (scratch: Triangulation, graph: OutlineGraph, grading: Grading): void => {
  const { x, y, size_mm, from, body } = scratch
  size_mm.fill(longestOf(graph), 0, scratch.vertices)
  for (let e = 0; e < 3 * scratch.triangles; e++) {
    if (body[(e / 3) | 0]! < 0) continue
    const a = from[e]!
    const b = from[nextEdge(e)]!
    const length = Math.max(finest_mm, Math.hypot(x[a]! - x[b]!, y[a]! - y[b]!))
    if (length < size_mm[a]!) size_mm[a] = length
    if (length < size_mm[b]!) size_mm[b] = length
  }
  for (let v = squareCorners; v < scratch.vertices; v++) lowerToThickness(scratch, graph, v, grading)
  limitGrowth(scratch, grading)
}

/** No edge is wanted longer than an eighth of the section's diagonal: the coarse field must see the whole. Ours. */
const longestOf = ({ x, y }: OutlineGraph): number => {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity]
  for (let v = 0; v < x.length; v++) {
    left = Math.min(left, x[v]!)
    right = Math.max(right, x[v]!)
    bottom = Math.min(bottom, y[v]!)
    top = Math.max(top, y[v]!)
  }
  return Math.hypot(right - left, top - bottom) / 8
}

/**
 * Sizes from a solution: where a vertex's share of the error passes its due, edges become shorter. At a corner of
 * the outlines the field behaves like r^μ, its error like h^2μ with μ between 1/2 and 1; elsewhere the error falls with
 * a high power of h, so little is asked for. Exponents measured on the reference sections, ours.
 */
export const finerSizes = (
  scratch: Triangulation,
  mesh: Mesh,
  { atVertex }: Indicators,
  due: number,
  grading: Grading,
): void => {
  const { size_mm, onSegment } = scratch
  const length = new Float64Array(mesh.vertices)
  const count = new Int32Array(mesh.vertices)
  for (let e = 0; e < mesh.edges; e++) {
    const a = mesh.edgeFrom[e]!
    const b = mesh.edgeTo[e]!
    const l = Math.hypot(mesh.x[a]! - mesh.x[b]!, mesh.y[a]! - mesh.y[b]!)
    length[a]! += l
    length[b]! += l
    count[a]!++
    count[b]!++
  }
  for (let v = 0; v < mesh.vertices; v++) {
    const ratio = due / atVertex[v]!
    if (!(ratio < 1)) continue
    const o = mesh.origin[v]!
    const shrink = Math.pow(ratio, onSegment[o] === -2 ? cornerPower : smoothPower)
    const wanted = Math.max(least_mm, (length[v]! / count[v]!) * Math.max(leastShrink, shrink))
    if (wanted < size_mm[o]!) size_mm[o] = wanted
  }
  limitGrowth(scratch, grading)
}

const cornerPower = 0.7
const smoothPower = 0.2

/** No edge shrinks more in one round: the indicator of a coarse mesh is not to be trusted further. Ours. */
const leastShrink = 0.01

/** Below this nothing is a window any more: a tenth of the grid on which outlines lie. Ours. */
const least_mm = 1e-5

/** Lets sizes grow no faster than the grading from vertex to vertex along the edges that are there. */
const limitGrowth = ({ x, y, size_mm, from, body, triangles }: Triangulation, { growth }: Grading): void => {
  for (let sweep = 0, changed = true; changed && sweep < 12; sweep++) {
    changed = false
    for (let e = 0; e < 3 * triangles; e++) {
      if (body[(e / 3) | 0]! < 0) continue
      const a = from[e]!
      const b = from[nextEdge(e)]!
      const reach = growth * Math.hypot(x[a]! - x[b]!, y[a]! - y[b]!)
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
