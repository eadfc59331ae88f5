import { type Result, ok, refused } from '../units'
import { words } from '../words'
import type { Point } from '../geometry'
import { factorPattern, factorise } from './algebra/factor'
import type { Factor } from './algebra/factor'
import { nestedDissection } from './algebra/ordering'
import { type Properties, type System, assemble, markContacts, propertiesOf, systemOf } from './assemble'
import type { HeatCase } from './case'
import { type IndicatorWork, type Indicators, indicatorWorkFor, indicators } from './estimate'
import { fixedTriangulation } from './mesh/fixed-triangulation'
import { type Mesh, meshOf } from './mesh/mesh'
import { type OutlineGraph, outlineGraph } from './mesh/outline-graph'
import { type Grading, mostVertices, refine } from './mesh/refine'
import { pointContacts } from './mesh/point-contact'
import { finerSizes, firstSizes } from './mesh/sizes'
import { type Field, type Iteration, iterationFor, solve } from './solve'

/** A solved case: the mesh, its equations and factor (ready for nodes that move), the field, and how good it is. */
export type Solution = {
  readonly case: HeatCase
  readonly graph: OutlineGraph
  readonly mesh: Mesh
  readonly system: System
  readonly factor: Factor
  readonly properties: Properties
  readonly field: Field
  readonly iteration: Iteration
  readonly iterations: number
  /** What the films turn over, W·K per m: the flow times the difference where there are two temperatures. */
  readonly power: number
  /** Estimated share of the power by which the field is off, always upwards; infinite where a place is unsettled. */
  readonly errorShare: number
  /** Places that no mesh settles: fixed temperatures that differ meet there, or good conductors touch in a point alone. */
  readonly unsettled_mm: readonly Point[]
  /** What each stage took by the clock that was given. */
  readonly spent: Spent
}

/** Time by stage, in the unit of the clock. The solve holds order, factor and iteration. */
export type Spent = { readonly mesh: number; readonly assembly: number; readonly solve: number }

/** Core has no clock: whoever wants times brings one. */
export type Clock = () => number
const noClock: Clock = () => 0

/** How good a solution has to be. */
export type Accuracy = {
  /** Estimated error of the heat flow, as a share of it. */
  readonly share: number
  /** Rounds of refinement at most; the estimate is given whether reached or not. */
  readonly rounds: number
}

/** A cautious estimate of 3.6 parts in ten thousand: the true error of the flow then stays below two. */
export const usualAccuracy: Accuracy = { share: 3.6e-4, rounds: 8 }

/** The mesh's grading, ours, measured: fewest unknowns for the same error on jamb and sill sections. */
const grading: Grading = { growth: 1, fullness: 0.7, slimness: 1.9, slenderness: 8, spacing: 0.4 }

/** The indicators see 0.45 to 0.85 of the true error on every reference case, so 2.4 times their sum bounds it in practice. */
const caution = 2.4

/** The first field only steers the mesh: its iteration stops when a step gains this share of the power. Ours, measured. */
const firstTolerance = 1e-3

/** Later fields are iterated until a step gains less than this share of the power. Ours. */
const tolerance = 3e-6

/**
 * Solves a case from nothing: outlines, coarse mesh, a first field, then rounds of refinement where the indicators ask
 * for it until the estimated error is small enough. Problems: outlines that do not tile, bodies that touch no surface.
 */
export const solveCase = (
  it: HeatCase,
  accuracy: Accuracy = usualAccuracy,
  clock: Clock = noClock,
): Result<Solution> => {
  const spent = { mesh: 0, assembly: 0, solve: 0 }
  let since = clock()
  const graph = outlineGraph(it)
  if (!graph.ok) return graph
  const triangulated = fixedTriangulation(
    graph.value,
    it.bodies.map(body => body.name),
  )
  if (!triangulated.ok) return triangulated
  const net = triangulated.value
  const adrift = bodiesAdrift(graph.value, it)
  if (adrift.length > 0) return refused({ at: adrift.join(', '), say: noSurface })
  const properties = propertiesOf(it)
  const touching_mm = pointContacts(net, graph.value, properties)
  firstSizes(net, graph.value, grading)
  refine(net, graph.value, grading)
  const nextLevel = (tolerance: number): Level => {
    const mesh = meshOf(net)
    const meshed = clock()
    const found = solveOn(mesh, graph.value, properties, { tolerance, clock })
    spent.mesh += meshed - since
    spent.assembly += found.assembled - meshed
    since = clock()
    spent.solve += since - found.assembled
    return found
  }
  let level = nextLevel(firstTolerance)
  // Where fixed temperatures meet, the power is mostly that of the corner: elsewhere a small share of it already shows.
  const wanted = level.system.contact.includes(1) ? accuracy.share / 50 : accuracy.share
  // What one vertex may contribute. About this many vertices share the error of a usual section.
  let due = wanted / 2400
  for (let round = 0; ; round++) {
    const share = shareOf(level)
    const isGood = round > 0 && share <= wanted
    const unsettled_mm = [...touching_mm, ...contacts_mm(level.system)]
    if (isGood || round >= accuracy.rounds || net.vertices >= mostVertices || !(level.power > 0))
      return ok(solutionOf(it, graph.value, properties, level, { unsettled_mm, spent }))
    if (round > 0) due *= tightening(level, due, wanted)
    finerSizes(net, level.system.mesh, level.indicators, due * level.power, grading)
    refine(net, graph.value, grading)
    level = nextLevel(tolerance)
  }
}

/**
 * How much less a vertex may contribute in the next round. Where a few corners hold most of the error, nothing: they are
 * over their due and will be refined again. Where it is spread, as much as is missing.
 */
const tightening = ({ indicators, power }: Level, due: number, share: number): number => {
  let spread = 0
  for (const it of indicators.atVertex) spread += Math.min(it, due * power)
  return Math.min(1, Math.max(0.1, (0.7 * share * power) / (caution * spread)))
}

/** Corners where fixed temperatures that differ meet. */
const contacts_mm = ({ mesh, contact }: System): readonly Point[] =>
  [...contact.keys()].filter(v => contact[v] === 1).map((v): Point => [mesh.x[v]!, mesh.y[v]!])

type Level = {
  readonly assembled: number
  readonly system: System
  readonly factor: Factor
  readonly field: Field
  readonly iteration: Iteration
  readonly iterations: number
  readonly gain: number
  readonly power: number
  readonly indicators: Indicators
}

const shareOf = ({ indicators, gain, power }: Pick<Level, 'indicators' | 'gain' | 'power'>): number =>
  power > 0 ? (caution * (indicators.total + gain)) / power : 0

/** One mesh, solved from nothing. */
const solveOn = (
  mesh: Mesh,
  graph: OutlineGraph,
  properties: Properties,
  { tolerance, clock }: { readonly tolerance: number; readonly clock: Clock },
): Level => {
  const system = systemOf(mesh, graph)
  markContacts(system, properties)
  assemble(system, graph, properties)
  const assembled = clock()
  const factor = factorPattern(system.graph, nestedDissection(system.graph, mesh.x, mesh.y))
  factorise(factor, system.graph, system.entries, system.diagonal)
  const field: Field = { corner_C: new Float64Array(mesh.vertices), bubble_K: new Float64Array(mesh.edges) }
  const iteration = iterationFor(system)
  const solved = solve({ system, factor, properties }, { field, iteration }, tolerance)
  return {
    assembled,
    system,
    factor,
    field,
    iteration,
    iterations: solved.iterations,
    gain: solved.gain,
    power: solved.power,
    indicators: indicators(system, field, indicatorWorkFor(mesh)),
  }
}

const solutionOf = (
  it: HeatCase,
  graph: OutlineGraph,
  properties: Properties,
  level: Level,
  { unsettled_mm, spent }: Pick<Solution, 'unsettled_mm' | 'spent'>,
): Solution => ({
  case: it,
  graph,
  mesh: level.system.mesh,
  system: level.system,
  factor: level.factor,
  properties,
  field: level.field,
  iteration: level.iteration,
  iterations: level.iterations,
  power: level.power,
  errorShare: unsettled_mm.length > 0 ? Infinity : shareOf(level),
  unsettled_mm,
  spent,
})

/** Bodies from which no way leads to a surface: their temperature is anybody's guess. */
const bodiesAdrift = (graph: OutlineGraph, it: HeatCase): readonly string[] => {
  const leader = it.bodies.map((_, b) => b)
  const lead = (b: number): number => (leader[b] === b ? b : lead(leader[b] ?? b))
  for (let s = 0; s < graph.segments; s++)
    if (graph.left[s]! >= 0 && graph.right[s]! >= 0) leader[lead(graph.left[s]!)] = lead(graph.right[s]!)
  const reached = new Set<number>()
  for (let s = 0; s < graph.segments; s++)
    if (graph.surface[s]! >= 0 && (it.surfaces[graph.surface[s]!]?.h_W_m2K ?? 0) > 0)
      reached.add(lead(Math.max(graph.left[s]!, graph.right[s]!)))
  return it.bodies.filter((_, b) => !reached.has(lead(b))).map(body => body.name)
}

const noSurface = words(
  'no surface with a film is reached from here, so its temperature is not determined',
  'von hier führt kein Weg zu einer Oberfläche mit Wärmeübergang, die Temperatur ist unbestimmt',
)

/** Solves the equations again after their numbers were renewed, from the field that is there. */
export const resolve = (it: Solution, scratch: IndicatorWork): Solution => {
  const solved = solve(it, { field: it.field, iteration: it.iteration }, tolerance)
  const found = indicators(it.system, it.field, scratch)
  const level = { indicators: found, gain: solved.gain, power: solved.power }
  const errorShare = it.unsettled_mm.length > 0 ? Infinity : shareOf(level)
  return { ...it, iterations: solved.iterations, power: solved.power, errorShare }
}

/** Solves a solution's case on another mesh of the same outlines. */
export const solveAgain = (it: Solution, mesh: Mesh): Solution => {
  const level = solveOn(mesh, it.graph, it.properties, { tolerance, clock: noClock })
  return solutionOf(it.case, it.graph, it.properties, level, it)
}
