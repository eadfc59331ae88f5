import { type Result, ok } from '../../units'
import { factorise } from '../algebra/factor'
import { assemble } from '../assemble'
import type { HeatCase } from '../case'
import { type IndicatorWork, indicatorWorkFor } from '../estimate'
import { fixedTriangulation } from '../mesh/fixed-triangulation'
import { type Accuracy, type Solution, resolve, solveCase, usualAccuracy } from '../solution'
import { type NodeMap, follow, nodeMap, shapesOf } from './node-map'
import { type OutlineNodes, eachPlace, isOnEdge, outlineNodes } from './outline-nodes'

/** A solution whose outlines may move. It is a workspace: following a move changes its arrays in place. */
export type Moving = {
  readonly solution: Solution
  readonly nodes: OutlineNodes
  readonly map: NodeMap
  /** Where the outlines are now. */
  readonly x: Float64Array
  readonly y: Float64Array
  /** Shapes of the triangles when they were made, and now. */
  readonly firstShapes: Float64Array
  readonly shapes: Float64Array
  /** Marks of the outline's nodes while new places are taken. */
  readonly seen: Uint8Array
  readonly work: IndicatorWork
  readonly accuracy: Accuracy
}

/** A frame of a movement: how it was reached, and the workspace for the next. */
export type Frame = { readonly how: 'followed' | 'remeshed'; readonly moving: Moving }

/** A triangle that keeps less than this share of its first shape, and is slimmer than `slim`, asks for a new mesh. Ours. */
const leastShare = 0.3
const slim = 0.05

/** A mesh that was good may become this much worse before it is made anew. Ours. */
const mostError = 4

/** Solves a case and makes it ready to move: on picking up a grip, before the first frame. */
export const startMoving = (it: HeatCase, accuracy: Accuracy = usualAccuracy): Result<Moving> => {
  const solved = solveCase(it, accuracy)
  if (!solved.ok) return solved
  const { graph, mesh } = solved.value
  const coarse = fixedTriangulation(graph, it.bodies.map(body => body.name)) // prettier-ignore
  if (!coarse.ok) return coarse
  const firstShapes = new Float64Array(mesh.triangles)
  shapesOf(mesh, firstShapes)
  return ok({
    solution: solved.value,
    nodes: outlineNodes(it, graph),
    map: nodeMap(mesh, graph, coarse.value, mesh.inSegment),
    x: graph.x.slice(),
    y: graph.y.slice(),
    firstShapes,
    shapes: firstShapes.slice(),
    seen: new Uint8Array(graph.vertices),
    work: indicatorWorkFor(mesh),
    accuracy,
  })
}

/**
 * The next frame: the nodes follow the outlines and the last field is the start of the next. Where the case is no longer
 * the same one moved, or the mesh has become too poor, it is made anew. Problems: as for a new case.
 */
export const moveTo = (scratch: Moving, to: HeatCase): Result<Frame> => {
  if (!isSameMoved(scratch, to)) return anew(to, scratch.accuracy)
  const { solution, map, x, y, work } = scratch
  follow(solution.mesh, map, x, y)
  if (!isSound(scratch)) return anew(to, scratch.accuracy)
  to.bodies.forEach((body, b) => (solution.properties.lambda_W_mK[b] = body.lambda_W_mK))
  to.surfaces.forEach((surface, s) => {
    solution.properties.film_W_m2K[s] = surface.h_W_m2K
    solution.properties.air_C[s] = surface.air_C
  })
  assemble(solution.system, solution.graph, solution.properties)
  factorise(solution.factor, solution.system.graph, solution.system.entries, solution.system.diagonal)
  const next = resolve({ ...solution, case: to }, work)
  if (
    next.errorShare > mostError * Math.max(scratch.accuracy.share, solution.errorShare) &&
    next.errorShare < Infinity
  )
    return anew(to, scratch.accuracy)
  return ok({ how: 'followed', moving: { ...scratch, solution: next } })
}

const anew = (to: HeatCase, accuracy: Accuracy): Result<Frame> => {
  const moving = startMoving(to, accuracy)
  return moving.ok ? ok({ how: 'remeshed', moving: moving.value }) : moving
}

/** Takes the new places of the outlines, if the case is the same one with its places moved. */
const isSameMoved = (scratch: Moving, to: HeatCase): boolean => {
  const { nodeOf, between } = scratch.nodes
  const { case: before } = scratch.solution
  if (!isAlike(before, to)) return false
  let isWhole = true
  const { seen } = scratch
  seen.fill(0)
  const places = eachPlace(to, ([px, py], index) => {
    const node = nodeOf[index] ?? -1
    if (node < 0) isWhole = false
    else if (!seen[node]) {
      seen[node] = 1
      scratch.x[node] = px
      scratch.y[node] = py
    } else if (Math.abs(scratch.x[node]! - px) > 1e-4 || Math.abs(scratch.y[node]! - py) > 1e-4)
      isWhole = false
  })
  if (!isWhole || places !== nodeOf.length) return false
  for (let i = 0; i < between.length; i += 3)
    if (!isOnEdge(scratch.x, scratch.y, between[i]!, between[i + 1]!, between[i + 2]!)) return false
  return true
}

/** Whether two cases have the same bodies, surfaces and foils, place by place. */
const isAlike = (a: HeatCase, b: HeatCase): boolean =>
  a.bodies.length === b.bodies.length &&
  a.surfaces.length === b.surfaces.length &&
  a.foils.length === b.foils.length &&
  a.bodies.every((body, i) => {
    const other = b.bodies[i]
    return (
      other?.name === body.name &&
      other.outline.length === body.outline.length &&
      other.holes.length === body.holes.length &&
      body.holes.every((hole, h) => hole.length === other.holes[h]?.length)
    )
  }) &&
  a.surfaces.every(
    (surface, i) =>
      surface.name === b.surfaces[i]?.name && surface.edges.length === b.surfaces[i]?.edges.length,
  ) &&
  a.foils.every(
    (foil, i) =>
      foil.path.length === b.foils[i]?.path.length && foil.conductance_W_K === b.foils[i]?.conductance_W_K,
  )

const isSound = ({ solution, firstShapes, shapes }: Moving): boolean => {
  shapesOf(solution.mesh, shapes)
  for (let t = 0; t < shapes.length; t++) {
    const shape = shapes[t]!
    if (!(shape > 0) || (shape < slim && shape < leastShare * firstShapes[t]!)) return false
  }
  return true
}
