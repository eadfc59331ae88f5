import { type Problem, type Result, ok, refused } from '../../units'
import { filled, words } from '../../words'
import { fixSegment } from './fix-segment'
import { insertPoint } from './insert'
import type { OutlineGraph } from './outline-graph'
import { type Triangulation, triangulationOver } from './triangulation'

/** Vertices of the enclosing square come first, so a vertex of the outlines has its graph number plus this. */
export const squareCorners = 4

/**
 * The constrained Delaunay triangulation of the outlines alone, every triangle knowing its body.
 * Problems: edges that cross, bodies that overlap or leave their own outline open.
 */
export const fixedTriangulation = (graph: OutlineGraph, names: readonly string[]): Result<Triangulation> => {
  const net = triangulationOver(boxOf(graph), Math.max(2048, 4 * graph.vertices))
  const problems: Problem[] = []
  for (let v = 0; v < graph.vertices; v++) {
    insertPoint(net, graph.x[v]!, graph.y[v]!)
    net.onSegment[v + squareCorners] = -2
  }
  for (let s = 0; s < graph.segments; s++) {
    const done = fixSegment(net, graph.from[s]! + squareCorners, graph.to[s]! + squareCorners, s)
    if (done.kind === 'crossed') problems.push(crossing(graph, names, s, done.by))
  }
  if (problems.length === 0) problems.push(...fillBodies(net, graph, names))
  const [first, ...more] = problems
  return first ? refused(first, ...more) : ok(net)
}

const boxOf = ({ x, y }: OutlineGraph) => ({
  left: x.reduce((a, b) => Math.min(a, b), Infinity),
  right: x.reduce((a, b) => Math.max(a, b), -Infinity),
  bottom: y.reduce((a, b) => Math.min(a, b), Infinity),
  top: y.reduce((a, b) => Math.max(a, b), -Infinity),
})

/** Spreads each body from its outlines over the triangles; what contradicts is a problem. */
const fillBodies = (
  net: Triangulation,
  graph: OutlineGraph,
  names: readonly string[],
): readonly Problem[] => {
  const { twin, tag, body, triangles } = net
  const unknown = -2
  body.fill(unknown, 0, triangles)
  const open: number[] = []
  const wrong = new Set<number>()
  const say = (t: number, is: number) => {
    if (body[t] === unknown) {
      body[t] = is
      open.push(t)
    } else if (body[t] !== is) wrong.add(Math.max(body[t]!, is))
  }
  // The square's first triangle edge at its rim belongs to the outside.
  for (let e = 0; e < 3 * triangles; e++) if (twin[e]! < 0) say((e / 3) | 0, -1)
  for (let e = 0; e < 3 * triangles; e++) {
    const segment = tag[e]! >> 1
    if (tag[e]! >= 0) say((e / 3) | 0, (tag[e]! & 1) === 0 ? graph.left[segment]! : graph.right[segment]!)
  }
  for (let t = open.pop(); t !== undefined; t = open.pop())
    for (let e = 3 * t; e < 3 * t + 3; e++)
      if (twin[e]! >= 0 && tag[e]! < 0) say((twin[e]! / 3) | 0, body[t]!)
  return [...wrong].map(b => ({ at: names[b] ?? 'outline', say: notATiling }))
}

const crossing = (graph: OutlineGraph, names: readonly string[], s: number, by: number): Problem => ({
  at: names[Math.max(graph.left[s]!, graph.right[s]!)] ?? '',
  say: filled(
    crosses,
    spot(graph, graph.from[s]!),
    spot(graph, graph.to[s]!),
    names[Math.max(graph.left[by]!, graph.right[by]!)] ?? '',
  ),
})

const spot = ({ x, y }: OutlineGraph, v: number): string => `(${x[v]}, ${y[v]})`

const crosses = words(
  'the edge {0} to {1} crosses an edge of {2}',
  'die Kante {0} bis {1} kreuzt eine Kante von {2}',
)
const notATiling = words(
  'overlaps another body, or its outline is not closed or runs the wrong way round',
  'überdeckt einen anderen Körper, oder sein Umriss ist offen oder läuft falsch herum',
)
