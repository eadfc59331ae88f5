import { type Point, grid_mm } from '../../geometry'
import { type Problem, type Result, ok, refused } from '../../units'
import { filled, words } from '../../words'
import type { HeatCase } from '../case'

/**
 * The outlines of a case as a planar graph: every vertex once, every edge once, split wherever another vertex lies
 * on it. `left` and `right` are bodies (-1: outside), `surface` is -1 where none is named.
 */
export type OutlineGraph = {
  readonly vertices: number
  readonly x: Float64Array
  readonly y: Float64Array
  readonly segments: number
  readonly from: Int32Array
  readonly to: Int32Array
  readonly left: Int32Array
  readonly right: Int32Array
  readonly surface: Int32Array
  readonly foil_W_K: Float64Array
}

/** Coordinates beyond this reach could not be told apart on the grid. Ours: ten times any section that is cut. */
const reach_mm = 6000

/**
 * Builds the graph of a case. Problems: a place out of reach, two bodies on one side of an edge, a surface or foil
 * that leaves the outlines, a body without area.
 */
export const outlineGraph = (it: HeatCase): Result<OutlineGraph> => {
  const problems: Problem[] = []
  const nodes = gridNodes(problems)
  const runs = bodyRuns(it, nodes)
  const firstNamed = nodes.x.length
  const stretches = namedStretches(it, nodes)
  const edges: GraphEdge[] = []
  const byEnds = new Map<number, number>()
  const outerRun = new Set(runs.map(run => endsKey(run.from, run.to)))
  for (const run of runs) {
    const isShared = outerRun.has(endsKey(run.to, run.from))
    const stops = nodesAlong(nodes, run.from, run.to, isShared ? firstNamed : 0)
    stops.forEach((to, i) => {
      const from = i === 0 ? run.from : (stops[i - 1] ?? run.from)
      if (!addSide(edges, byEnds, from, to, run.body))
        problems.push(overlapAt(it.bodies[run.body]?.name ?? '', placeOf(nodes, from), placeOf(nodes, to)))
    })
  }
  for (const stretch of stretches) nameEdges(stretch, nodes, edges, byEnds, problems)
  const [first, ...more] = problems
  return first ? refused(first, ...more) : ok(packed(nodes, edges))
}

type Nodes = { readonly x: number[]; readonly y: number[]; readonly at: (point: Point, of: string) => number }
type GraphEdge = { from: number; to: number; left: number; right: number; surface: number; foil_W_K: number }
type Run = { readonly from: number; readonly to: number; readonly body: number }
type Named = {
  readonly of: string
  readonly from: number
  readonly to: number
  readonly surface: number
  readonly foil_W_K: number
  readonly mayBeCovered: boolean
}

/** Nodes that are the same on the grid are one node; the first to name it gives its place. */
const gridNodes = (problems: Problem[]): Nodes => {
  const x: number[] = []
  const y: number[] = []
  const byPlace = new Map<number, number>()
  const at = (point: Point, of: string): number => {
    const [px, py] = point
    if (!(Math.abs(px) <= reach_mm && Math.abs(py) <= reach_mm)) {
      problems.push({
        at: of,
        say: filled(outOfReach, `${px}, ${py}`),
        allowed: { unit: 'mm', min: -reach_mm, max: reach_mm },
      })
      return 0
    }
    const key = Math.round(px / grid_mm) * 2 ** 27 + Math.round(py / grid_mm)
    const known = byPlace.get(key)
    if (known !== undefined) return known
    byPlace.set(key, x.length)
    x.push(px)
    y.push(py)
    return x.length - 1
  }
  return { x, y, at }
}

const endsKey = (from: number, to: number): number => from * 2 ** 24 + to
const placeOf = (nodes: Nodes, node: number): Point => [nodes.x[node] ?? 0, nodes.y[node] ?? 0]

const bodyRuns = (it: HeatCase, nodes: Nodes): readonly Run[] => {
  const runs: Run[] = []
  it.bodies.forEach((body, b) => {
    for (const ring of [body.outline, ...body.holes]) {
      const ids = ring.map(point => nodes.at(point, body.name))
      ids.forEach((from, i) => {
        const to = ids[(i + 1) % ids.length] ?? from
        if (from !== to) runs.push({ from, to, body: b })
      })
    }
  })
  return runs
}

const namedStretches = (it: HeatCase, nodes: Nodes): readonly Named[] => {
  const named: Named[] = []
  it.surfaces.forEach((surface, s) => {
    for (const [a, b] of surface.edges)
      named.push({
        of: surface.name,
        from: nodes.at(a, surface.name),
        to: nodes.at(b, surface.name),
        surface: s,
        foil_W_K: 0,
        mayBeCovered: surface.mayBeCovered ?? false,
      })
  })
  for (const foil of it.foils) {
    const ids = foil.path.map(point => nodes.at(point, foil.name))
    for (let i = 1; i < ids.length; i++)
      named.push({
        of: foil.name,
        from: ids[i - 1] ?? 0,
        to: ids[i] ?? 0,
        surface: -1,
        foil_W_K: foil.conductance_W_K,
        mayBeCovered: false,
      })
  }
  return named
}

/** The nodes on a straight run after its first end, in order, the far end last. Nodes before `first` are not looked at. */
const nodesAlong = (nodes: Nodes, from: number, to: number, first: number): readonly number[] => {
  const { x, y } = nodes
  const [ax, ay] = placeOf(nodes, from)
  const [bx, by] = placeOf(nodes, to)
  const [dx, dy] = [bx - ax, by - ay]
  const length2 = dx * dx + dy * dy
  const reach = grid_mm * Math.sqrt(length2)
  const between: { readonly node: number; readonly along: number }[] = []
  for (let node = first; node < x.length; node++) {
    if (node === from || node === to) continue
    const px = (x[node] ?? 0) - ax
    const py = (y[node] ?? 0) - ay
    if (Math.abs(dx * py - dy * px) > 0.75 * reach) continue
    const along = dx * px + dy * py
    if (0 < along && along < length2) between.push({ node, along })
  }
  if (between.length === 0) return [to]
  return [...between.sort((a, b) => a.along - b.along).map(it => it.node), to]
}

/** States which body lies left of a directed edge. False when another body lies there already. */
const addSide = (
  edges: GraphEdge[],
  byEnds: Map<number, number>,
  from: number,
  to: number,
  body: number,
): boolean => {
  const key = endsKey(Math.min(from, to), Math.max(from, to))
  const known = byEnds.get(key)
  if (known === undefined) {
    byEnds.set(key, edges.length)
    edges.push({ from, to, left: body, right: -1, surface: -1, foil_W_K: 0 })
    return true
  }
  const edge = edges[known]
  if (!edge) return false
  if (edge.from === from ? edge.left >= 0 : edge.right >= 0) return false
  if (edge.from === from) edge.left = body
  else edge.right = body
  return true
}

/** Gives the edges along a stretch their surface or foil. */
const nameEdges = (
  it: Named,
  nodes: Nodes,
  edges: GraphEdge[],
  byEnds: Map<number, number>,
  problems: Problem[],
): void => {
  let from = it.from
  for (const to of nodesAlong(nodes, it.from, it.to, 0)) {
    const edge = edges[byEnds.get(endsKey(Math.min(from, to), Math.max(from, to))) ?? -1]
    const isCovered = it.surface >= 0 && edge !== undefined && edge.left >= 0 && edge.right >= 0
    if (!edge || (isCovered && !it.mayBeCovered))
      problems.push({
        at: it.of,
        say: filled(
          it.surface >= 0 ? offSurface : offOutline,
          said(placeOf(nodes, from)),
          said(placeOf(nodes, to)),
        ),
      })
    else if (it.surface >= 0) edge.surface = isCovered ? -1 : it.surface
    else edge.foil_W_K += it.foil_W_K
    from = to
  }
}

/**
 * Puts the graph into an order of its own, so that the mesh does not depend on the order of the parts: nodes along a
 * curve that keeps neighbours together (which also makes their search short), edges by their ends.
 */
const packed = ({ x, y }: Nodes, edges: readonly GraphEdge[]): OutlineGraph => {
  const [left, bottom] = [Math.min(...x), Math.min(...y)]
  const step = (Math.max(Math.max(...x) - left, Math.max(...y) - bottom) || 1) / 65535
  const place = x.map((px, v) => interleaved((px - left) / step, ((y[v] ?? 0) - bottom) / step))
  const order = x
    .map((_, v) => v)
    .sort(
      (a, b) => (place[a] ?? 0) - (place[b] ?? 0) || (x[a] ?? 0) - (x[b] ?? 0) || (y[a] ?? 0) - (y[b] ?? 0),
    )
  const number = new Int32Array(x.length)
  order.forEach((v, i) => (number[v] = i))
  const sorted = edges
    .map((it): GraphEdge => {
      const [from, to] = [number[it.from] ?? 0, number[it.to] ?? 0]
      return from < to ? { ...it, from, to } : { ...it, from: to, to: from, left: it.right, right: it.left }
    })
    .sort((a, b) => a.from - b.from || a.to - b.to)
  return {
    vertices: x.length,
    x: Float64Array.from(order, v => x[v] ?? 0),
    y: Float64Array.from(order, v => y[v] ?? 0),
    segments: sorted.length,
    from: Int32Array.from(sorted, it => it.from),
    to: Int32Array.from(sorted, it => it.to),
    left: Int32Array.from(sorted, it => it.left),
    right: Int32Array.from(sorted, it => it.right),
    surface: Int32Array.from(sorted, it => it.surface),
    foil_W_K: Float64Array.from(sorted, it => it.foil_W_K),
  }
}

/** Interleaves the bits of two numbers of 16 bits (Morton 1966). */
const interleaved = (a: number, b: number): number => spread(a) + 2 * spread(b)

const spread = (value: number): number => {
  let v = value & 0xffff
  v = (v | (v << 8)) & 0x00ff00ff
  v = (v | (v << 4)) & 0x0f0f0f0f
  v = (v | (v << 2)) & 0x33333333
  return (v | (v << 1)) & 0x55555555
}

const said = ([x, y]: Point): string => `(${x}, ${y})`

const overlapAt = (of: string, from: Point, to: Point): Problem => ({
  at: of,
  say: filled(overlaps, said(from), said(to)),
})

const overlaps = words(
  'overlaps another body along {0} to {1}',
  'überdeckt einen anderen Körper entlang {0} bis {1}',
)
const offSurface = words(
  'the surface {0} to {1} is no outer edge of any body',
  'die Oberfläche {0} bis {1} ist keine Außenkante eines Körpers',
)
const offOutline = words(
  'the foil {0} to {1} runs along no edge',
  'die Folie {0} bis {1} läuft auf keiner Kante',
)
const outOfReach = words('the place {0} is out of reach', 'der Ort {0} liegt außer Reichweite')
