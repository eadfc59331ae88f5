import type { System } from './assemble'
import type { Mesh } from './mesh/mesh'
import type { Field } from './solve'

/** Indicators of a field's error: their sum in W·K per metre, and the share of each vertex. */
export type Indicators = { readonly atVertex: Float64Array; readonly total: number }

/**
 * How far a field is from the next better one: the residual tested with the cubic functions that the quadratic field
 * lacks (one on each edge, φiφj(φi−φj), and one in each triangle, φ0φ1φ2), each weighed by its own stiffness
 * (Bank & Smith 1993). On an edge that is the jump of the flux's slope. With `a`, `b` the ends and c the far corner:
 *   residual of the edge function  2/15 (b_ab (k_ca − k_cb) − (b_ac − b_bc) k_cc),  stiffness −(3 k_ab + 2 k_ac + 2 k_bc)/45
 *   residual of the inner function −2/15 Σ b k,                                     stiffness −(k_0 + k_1 + k_2)/90
 */
export const indicators = (system: System, field: Field, scratch: IndicatorWork): Indicators => {
  const { mesh, k } = system
  const { residual, stiffness, atVertex } = scratch
  const { corner, edgeOf, edgeFrom, edgeTo } = mesh
  const b = field.bubble_K
  residual.fill(0)
  stiffness.fill(0)
  atVertex.fill(0)
  let total = 0
  for (let i = 0; i < 3 * mesh.triangles; i += 3) {
    const e0 = edgeOf[i]!
    const e1 = edgeOf[i + 1]!
    const e2 = edgeOf[i + 2]!
    const k0 = k[i]!
    const k1 = k[i + 1]!
    const k2 = k[i + 2]!
    const b0 = b[e0]!
    const b1 = b[e1]!
    const b2 = b[e2]!
    const r0 = (2 / 15) * (b0 * (k2 - k1) + (b2 - b1) * (k1 + k2))
    const r1 = (2 / 15) * (b1 * (k0 - k2) + (b0 - b2) * (k2 + k0))
    const r2 = (2 / 15) * (b2 * (k1 - k0) + (b1 - b0) * (k0 + k1))
    residual[e0]! += edgeFrom[e0] === corner[i + 1] ? r0 : -r0
    residual[e1]! += edgeFrom[e1] === corner[i + 2] ? r1 : -r1
    residual[e2]! += edgeFrom[e2] === corner[i] ? r2 : -r2
    stiffness[e0]! -= (3 * k0 + 2 * k1 + 2 * k2) / 45
    stiffness[e1]! -= (3 * k1 + 2 * k2 + 2 * k0) / 45
    stiffness[e2]! -= (3 * k2 + 2 * k0 + 2 * k1) / 45
    const inner = (2 / 15) * (b0 * k0 + b1 * k1 + b2 * k2)
    const share = (inner * inner * 90) / -(k0 + k1 + k2)
    total += share
    atVertex[corner[i]!]! += share / 3
    atVertex[corner[i + 1]!]! += share / 3
    atVertex[corner[i + 2]!]! += share / 3
  }
  for (let m = 0; m < system.filmEdge.length; m++) {
    const e = system.filmEdge[m]!
    residual[e]! +=
      (system.filmWeight[m]! / 60) * (field.corner_C[edgeFrom[e]!]! - field.corner_C[edgeTo[e]!]!)
    stiffness[e]! += system.filmWeight[m]! / 210
  }
  for (let e = 0; e < mesh.edges; e++) {
    const share = (residual[e]! * residual[e]!) / stiffness[e]!
    total += share
    atVertex[edgeFrom[e]!]! += share / 2
    atVertex[edgeTo[e]!]! += share / 2
  }
  for (let v = 0; v < mesh.vertices; v++) {
    if (!system.contact[v]) continue
    // Its own share is infinite and told elsewhere; the mesh is to close in on it all the same.
    total -= atVertex[v]!
    atVertex[v] = Infinity
  }
  return { atVertex, total: Math.max(0, total) }
}

/** Room for the indicators of one mesh; `atVertex` holds the answer. */
export type IndicatorWork = {
  readonly residual: Float64Array
  readonly stiffness: Float64Array
  readonly atVertex: Float64Array
}

export const indicatorWorkFor = ({ edges, vertices }: Mesh): IndicatorWork => ({
  residual: new Float64Array(edges),
  stiffness: new Float64Array(edges),
  atVertex: new Float64Array(vertices),
})
