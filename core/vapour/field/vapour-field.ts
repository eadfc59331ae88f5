import { saturation_Pa } from '../../air'
import type { Mesh } from '../../heat'
import { permeability_kg_msPa } from '../diffusion'
import { type Domain, domainOf } from './domain'
import { type Equations, equationsOf, residualOf, solveHeld } from './equations'
import type { VapourCase } from './vapour-case'

/** A field of vapour pressure with the zone where water gathers. Flows per metre of depth. */
export type VapourField = {
  readonly domain: Domain
  /** at the nodes of the domain */
  readonly x_mm: Float64Array
  readonly y_mm: Float64Array
  readonly temperature_C: Float64Array
  readonly saturation_Pa: Float64Array
  readonly vapour_Pa: Float64Array
  /** 1 where water gathers */
  readonly isWet: Uint8Array
  /** what gathers at each node, kg/(m·s) */
  readonly gathers_kg_ms: Float64Array
  readonly whole_kg_ms: number
  /** what enters through all films together and is not let out again: equals what gathers */
  readonly kept_kg_ms: number
  /** what goes in where it goes in, kg/(m·s) */
  readonly enters_kg_ms: number
  readonly rounds: number
  /** whether the wet zone has settled */
  readonly isSettled: boolean
}

/** A zone that has not settled after as many rounds cycles about a node or two: ours; five to ten are usual. */
const mostRounds = 40

/** A pressure above saturation by less than this share is rounding. Ours. */
const rounding = 1e-12

/**
 * Vapour at rest where water may gather: p ≤ psat(T), and nothing but water lets it vanish, −div(δ grad p) ≤ 0. Solved as
 * an obstacle problem by a primal-dual active set (Hintermüller, Ito, Kunisch 2002) on the mesh of the heat problem. It
 * begins with the vertices that are guessed to be wet, if any; with `isDry` no obstacle is seen: the plain field comes out.
 */
export const vapourField = (
  it: VapourCase,
  how: { readonly isDry?: true; readonly guess?: Uint8Array } = {},
): VapourField => {
  const domain = domainOf(it)
  const equations = equationsOf(domain, it.mesh)
  const temperature_C = Float64Array.from(domain.vertexOf, v => it.temperature_C[v]!)
  const saturated_Pa = temperature_C.map(saturation_Pa)
  const found = how.isDry
    ? plain(equations, saturated_Pa)
    : obstacle(
        equations,
        saturated_Pa,
        Uint8Array.from(domain.vertexOf, v => how.guess?.[v] ?? 0),
      )
  const { vapour_Pa, isWet, rounds, isSettled } = found
  const gathers_kg_ms = new Float64Array(domain.nodes)
  for (let n = 0; n < domain.nodes; n++)
    if (isWet[n]) gathers_kg_ms[n] = permeability_kg_msPa * residualOf(equations, vapour_Pa, n)
  const through = throughFilms(domain, vapour_Pa)
  return {
    domain,
    x_mm: Float64Array.from(domain.vertexOf, v => it.mesh.x[v]!),
    y_mm: Float64Array.from(domain.vertexOf, v => it.mesh.y[v]!),
    temperature_C,
    saturation_Pa: saturated_Pa,
    vapour_Pa,
    isWet,
    gathers_kg_ms,
    whole_kg_ms: gathers_kg_ms.reduce((sum, one) => sum + one, 0),
    ...through,
    rounds,
    isSettled,
  }
}

type Found = Pick<VapourField, 'vapour_Pa' | 'isWet' | 'rounds' | 'isSettled'>

const workFor = ({ graph }: Equations) => ({
  entries: new Float64Array(graph.columns.length),
  diagonal: new Float64Array(graph.rows),
  pressure_Pa: new Float64Array(graph.rows),
})

const plain = (equations: Equations, saturated_Pa: Float64Array): Found => {
  const work = workFor(equations)
  const isWet = new Uint8Array(equations.graph.rows)
  solveHeld(equations, isWet, saturated_Pa, work)
  return { vapour_Pa: work.pressure_Pa, isWet, rounds: 1, isSettled: true }
}

/**
 * Rounds of: hold what is wet at saturation, solve; what gives water off dries, and what rises above saturation becomes wet.
 * Where some of that lies beside what is wet already, only that: a zone a node too small lets the pressure rise far around
 * it, and all of that would have to dry again, round by round.
 */
const obstacle = (equations: Equations, saturated_Pa: Float64Array, guess: Uint8Array): Found => {
  const work = workFor(equations)
  const { pressure_Pa } = work
  let isWet = guess
  for (let rounds = 1; rounds <= mostRounds; rounds++) {
    solveHeld(equations, isWet, saturated_Pa, work)
    const next = isWet.slice()
    const rising: number[] = []
    let changes = 0
    for (let n = 0; n < isWet.length; n++) {
      if (!isWet[n]) {
        if (pressure_Pa[n]! > saturated_Pa[n]! * (1 + rounding)) rising.push(n)
      } else if (!(residualOf(equations, pressure_Pa, n) > 0)) {
        next[n] = 0
        changes++
      }
    }
    if (changes + rising.length === 0) return { vapour_Pa: pressure_Pa, isWet, rounds, isSettled: true }
    const beside = rising.filter(n => hasWetNeighbour(equations, isWet, n))
    for (const n of beside.length > 0 ? beside : rising) next[n] = 1
    isWet = next
  }
  solveHeld(equations, isWet, saturated_Pa, work)
  return { vapour_Pa: pressure_Pa, isWet, rounds: mostRounds, isSettled: false }
}

const hasWetNeighbour = ({ graph }: Equations, isWet: Uint8Array, n: number): boolean => {
  for (let k = graph.starts[n]!; k < graph.starts[n + 1]!; k++) if (isWet[graph.columns[k]!]) return true
  return false
}

const throughFilms = (
  { films }: Domain,
  vapour_Pa: Float64Array,
): Pick<VapourField, 'kept_kg_ms' | 'enters_kg_ms'> => {
  let [kept, enters] = [0, 0]
  for (let i = 0; i < films.node.length; i++) {
    const flow = films.weight[i]! * (films.air_Pa[i]! - vapour_Pa[films.node[i]!]!)
    kept += flow
    if (flow > 0) enters += flow
  }
  return { kept_kg_ms: permeability_kg_msPa * kept, enters_kg_ms: permeability_kg_msPa * enters }
}

/** The wet vertices of a mesh that was cut into four, guessed from the field on the mesh before: middles between two wet ends are wet. */
export const finerGuess = ({ domain, isWet }: VapourField, mesh: Mesh): Uint8Array => {
  const guess = new Uint8Array(mesh.vertices + mesh.edges)
  isWet.forEach((wet, n) => (guess[domain.vertexOf[n]!]! |= wet))
  for (let e = 0; e < mesh.edges; e++)
    guess[mesh.vertices + e] = guess[mesh.edgeFrom[e]!]! & guess[mesh.edgeTo[e]!]!
  return guess
}
