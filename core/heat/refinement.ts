import { quartered } from './mesh/quartered'
import { flows_W_m } from './results'
import { type Solution, solveAgain } from './solution'

/** The heat flow with n and with 2n subdivisions, and the balance of both. */
export type Refinement = {
  readonly unknowns: number
  readonly finerUnknowns: number
  /** Difference of the flows into the section, in percent of the finer one. */
  readonly difference_percent: number
  /** Sum of all flows over half the sum of their amounts. */
  readonly imbalance: number
}

/** ISO 10211 asks for at most 1 % between n and 2n subdivisions, and for flows that balance to 1e-4 (from memory). */
export const mostDifference_percent = 1
export const mostImbalance = 1e-4

/** Applies the refinement criterion of ISO 10211 to a solution: every edge halved, solved again. */
export const refinementOf = (it: Solution): Refinement => {
  const fine = finer(it)
  const [flows, finerFlows] = [flows_W_m(it), flows_W_m(fine)]
  const [into, finerInto] = [inwards(flows), inwards(finerFlows)]
  return {
    unknowns: it.mesh.vertices + it.mesh.edges,
    finerUnknowns: fine.mesh.vertices + fine.mesh.edges,
    difference_percent: finerInto > 0 ? (100 * Math.abs(into - finerInto)) / finerInto : 0,
    imbalance: Math.max(imbalanceOf(flows), imbalanceOf(finerFlows)),
  }
}

/** The same case on a mesh of twice the subdivisions. */
export const finer = (it: Solution): Solution => solveAgain(it, quartered(it.mesh))

const inwards = (flows: readonly number[]): number => flows.reduce((sum, flow) => sum + Math.max(0, flow), 0)

const imbalanceOf = (flows: readonly number[]): number => {
  const amount = flows.reduce((sum, flow) => sum + Math.abs(flow), 0) / 2
  return amount > 0 ? Math.abs(flows.reduce((sum, flow) => sum + flow, 0)) / amount : 0
}
