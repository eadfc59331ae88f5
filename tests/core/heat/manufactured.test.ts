import { describe, expect, it } from 'vitest'
import { nestedDissection } from '../../../core/heat/algebra/ordering'
import { factorPattern, factorise } from '../../../core/heat/algebra/factor'
import { assemble, propertiesOf, systemOf } from '../../../core/heat/assemble'
import { fixedTriangulation } from '../../../core/heat/mesh/fixed-triangulation'
import { type Mesh, meshOf } from '../../../core/heat/mesh/mesh'
import { outlineGraph } from '../../../core/heat/mesh/outline-graph'
import { refine } from '../../../core/heat/mesh/refine'
import { quartered } from '../../../core/heat/mesh/quartered'
import { iterationFor, solve } from '../../../core/heat/solve'
import type { HeatCase } from '../../../core/heat'

/** Two rhombic halves of one conductivity, film all round. */
const plate: HeatCase = {
  name: 'plate',
  bodies: [
    { name: 'left', outline: [[0, 0], [60, 0], [45, 80], [0, 80]], holes: [], lambda_W_mK: 0.7 },
    { name: 'right', outline: [[60, 0], [100, 0], [100, 80], [45, 80]], holes: [], lambda_W_mK: 0.7 },
  ],
  surfaces: [
    { name: 'round', h_W_m2K: 10, air_C: 0, edges: [[[0, 0], [60, 0]], [[60, 0], [100, 0]], [[100, 0], [100, 80]], [[100, 80], [45, 80]], [[45, 80], [0, 80]], [[0, 80], [0, 0]]] },
  ],
  foils: [],
  probes: {},
} // prettier-ignore

/** A field without sources: exp(x/a) cos(y/a), and its derivatives. */
const a = 40
const exact = (x: number, y: number) => Math.exp(x / a) * Math.cos(y / a)
const alongX = (x: number, y: number) => exact(x, y) / a
const alongY = (x: number, y: number) => -(Math.exp(x / a) * Math.sin(y / a)) / a

/** Five-point Gauss rule on 0 … 1. */
const gauss = [
  [0.5, 0.28444444444444444],
  [0.23076534494715845, 0.23931433524968324],
  [0.7692346550528415, 0.23931433524968324],
  [0.04691007703066802, 0.11846344252809454],
  [0.9530899229693319, 0.11846344252809454],
] as const

/** The largest error at corners and edge middles, with air temperatures that make `exact` the solution. */
const largestError = (mesh: Mesh, graph: Parameters<typeof systemOf>[1]): number => {
  const properties = propertiesOf(plate)
  const system = systemOf(mesh, graph)
  assemble(system, graph, properties)
  system.load.fill(0)
  system.bubbleLoad.fill(0)
  for (const e of system.filmEdge) {
    const [from, to] = [mesh.edgeFrom[e] ?? 0, mesh.edgeTo[e] ?? 0]
    const [ax, ay, bx, by] = [mesh.x[from] ?? 0, mesh.y[from] ?? 0, mesh.x[to] ?? 0, mesh.y[to] ?? 0]
    const length = Math.hypot(bx - ax, by - ay)
    // Outward normal: the section is convex about (50, 40).
    const side = (bx - ax) * (40 - ay) - (by - ay) * (50 - ax) > 0 ? 1 : -1
    for (const [s, weight] of gauss) {
      const [x, y] = [ax + s * (bx - ax), ay + s * (by - ay)]
      const slope = (side * ((by - ay) * alongX(x, y) - (bx - ax) * alongY(x, y))) / length
      const inflow = weight * length * (10e-3 * exact(x, y) + 0.7 * slope)
      system.load[from] = (system.load[from] ?? 0) + inflow * (1 - s)
      system.load[to] = (system.load[to] ?? 0) + inflow * s
      system.bubbleLoad[e] = (system.bubbleLoad[e] ?? 0) + inflow * 4 * s * (1 - s)
    }
  }
  const factor = factorPattern(system.graph, nestedDissection(system.graph, mesh.x, mesh.y))
  factorise(factor, system.graph, system.entries, system.diagonal)
  const field = { corner_C: new Float64Array(mesh.vertices), bubble_K: new Float64Array(mesh.edges) }
  solve({ system, factor, properties }, { field, iteration: iterationFor(system) }, 0)
  let worst = 0
  for (let v = 0; v < mesh.vertices; v++)
    worst = Math.max(worst, Math.abs((field.corner_C[v] ?? NaN) - exact(mesh.x[v] ?? 0, mesh.y[v] ?? 0)))
  return worst
}

describe('a manufactured solution', () => {
  it('is met with the third order, as quadratic elements are to meet it, halving after halving', () => {
    const graph = outlineGraph(plate)
    if (!graph.ok) throw new Error(JSON.stringify(graph.problems))
    const net = fixedTriangulation(graph.value, ['left', 'right'])
    if (!net.ok) throw new Error(JSON.stringify(net.problems))
    net.value.size_mm.fill(25)
    refine(net.value, graph.value, { growth: 1, fullness: 0.7, slimness: 1.9, slenderness: 8, spacing: 0.4 })
    const coarse = meshOf(net.value)
    const meshes = [
      coarse,
      quartered(coarse),
      quartered(quartered(coarse)),
      quartered(quartered(quartered(coarse))),
    ]
    const errors = meshes.map(mesh => largestError(mesh, graph.value))
    const orders = errors.slice(1).map((error, i) => Math.log2((errors[i] ?? NaN) / error))
    for (const order of orders) expect(order).toBeGreaterThan(2.6)
    expect(orders.at(-1)).toBeGreaterThan(2.9)
    expect(errors.at(-1)).toBeLessThan(3e-4)
  })
})
