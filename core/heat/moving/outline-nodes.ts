import { grid_mm } from '../../geometry'
import type { Point } from '../../geometry'
import type { HeatCase } from '../case'
import type { OutlineGraph } from '../mesh/outline-graph'

/** Which node of the graph each place of a case is, place by place in the order of the case. */
export type OutlineNodes = {
  readonly nodeOf: Int32Array
  /** Nodes that lie inside an edge of a body: from, node, to. They must stay on it. */
  readonly between: Int32Array
}

/** Reads off which node each place of a case became. */
export const outlineNodes = (it: HeatCase, graph: OutlineGraph): OutlineNodes => {
  const byPlace = new Map<string, number>()
  for (let v = 0; v < graph.vertices; v++) byPlace.set(placeKey([graph.x[v]!, graph.y[v]!]), v)
  const nodeOf: number[] = []
  eachPlace(it, point => nodeOf.push(byPlace.get(placeKey(point)) ?? -1))
  return { nodeOf: Int32Array.from(nodeOf), between: hanging(it, graph, byPlace) }
}

/** Goes through all places of a case in a fixed order: outlines, holes, surfaces, foils. */
export const eachPlace = (it: HeatCase, visit: (point: Point, index: number) => void): number => {
  let index = 0
  for (const body of it.bodies) {
    for (const point of body.outline) visit(point, index++)
    for (const hole of body.holes) for (const point of hole) visit(point, index++)
  }
  for (const surface of it.surfaces)
    for (const edge of surface.edges) {
      visit(edge[0], index++)
      visit(edge[1], index++)
    }
  for (const foil of it.foils) for (const point of foil.path) visit(point, index++)
  return index
}

const placeKey = ([x, y]: Point): string => `${Math.round(x / grid_mm)},${Math.round(y / grid_mm)}`

/** Runs of graph edges that are one edge of a body: what lies between its ends. */
const hanging = (it: HeatCase, graph: OutlineGraph, byPlace: ReadonlyMap<string, number>): Int32Array => {
  const edges = new Set<string>()
  for (let s = 0; s < graph.segments; s++) edges.add(`${graph.from[s]},${graph.to[s]}`)
  const isEdge = (a: number, b: number) => edges.has(`${a},${b}`) || edges.has(`${b},${a}`)
  const found: number[] = []
  for (const body of it.bodies)
    for (const ring of [body.outline, ...body.holes])
      ring.forEach((point, i) => {
        const from = byPlace.get(placeKey(point)) ?? -1
        const to = byPlace.get(placeKey(ring[(i + 1) % ring.length] ?? point)) ?? -1
        if (from === to || isEdge(from, to)) return
        for (let v = 0; v < graph.vertices; v++)
          if (v !== from && v !== to && isOnEdge(graph.x, graph.y, from, v, to)) found.push(from, v, to)
      })
  return Int32Array.from(found)
}

/** Whether node v lies on the straight way from a to b, by the grid's measure. */
export const isOnEdge = (x: Float64Array, y: Float64Array, a: number, v: number, b: number): boolean => {
  const [dx, dy] = [x[b]! - x[a]!, y[b]! - y[a]!]
  const [px, py] = [x[v]! - x[a]!, y[v]! - y[a]!]
  const length = Math.hypot(dx, dy)
  const along = dx * px + dy * py
  return Math.abs(dx * py - dy * px) <= 0.75 * grid_mm * length && 0 < along && along < length * length
}
