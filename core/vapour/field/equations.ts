import {
  type Factor,
  type Graph,
  factorPattern,
  factorise,
  nestedDissection,
  offDiagonal,
  solveFactor,
} from '../../heat'
import type { Mesh } from '../../heat'
import type { Domain } from './domain'

/** The equations of a vapour domain, one unknown pressure a node, in units of what still air lets through. */
export type Equations = {
  readonly graph: Graph
  readonly entries: Float64Array
  readonly diagonal: Float64Array
  readonly load: Float64Array
  readonly factor: Factor
}

/** Assembles the equations: linear triangles by their conductivity 1/µ, membranes as links, films as loads. */
export const equationsOf = (domain: Domain, mesh: Mesh): Equations => {
  const { nodes, corner, mu, vertexOf, links, films } = domain
  const graph = graphOf(domain)
  const diagonal = new Float64Array(nodes)
  const load = new Float64Array(nodes)
  const entries = new Float64Array(graph.columns.length)
  const couple = (a: number, b: number, weight: number) => {
    entries[placeOf(graph, a, b)]! -= weight
    entries[placeOf(graph, b, a)]! -= weight
    diagonal[a]! += weight
    diagonal[b]! += weight
  }
  for (let t = 0; t < domain.triangles; t++) {
    const [a, b, c] = [corner[3 * t]!, corner[3 * t + 1]!, corner[3 * t + 2]!]
    const [va, vb, vc] = [vertexOf[a]!, vertexOf[b]!, vertexOf[c]!]
    const [ax, ay, bx, by, cx, cy] = [
      mesh.x[va]!,
      mesh.y[va]!,
      mesh.x[vb]!,
      mesh.y[vb]!,
      mesh.x[vc]!,
      mesh.y[vc]!,
    ]
    const area2 = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax)
    const open = 1 / mu[t]!
    couple(b, c, -open * offDiagonal(bx, by, cx, cy, ax, ay, area2))
    couple(c, a, -open * offDiagonal(cx, cy, ax, ay, bx, by, area2))
    couple(a, b, -open * offDiagonal(ax, ay, bx, by, cx, cy, area2))
  }
  for (let i = 0; i < links.a.length; i++) couple(links.a[i]!, links.b[i]!, links.weight[i]!)
  for (let i = 0; i < films.node.length; i++) {
    diagonal[films.node[i]!]! += films.weight[i]!
    load[films.node[i]!]! += films.weight[i]! * films.air_Pa[i]!
  }
  const x = Float64Array.from(vertexOf, v => mesh.x[v]!)
  const y = Float64Array.from(vertexOf, v => mesh.y[v]!)
  return { graph, entries, diagonal, load, factor: factorPattern(graph, nestedDissection(graph, x, y)) }
}

/** Solves for the pressures, with some nodes held at a value. `pressure_Pa` is the answer. */
export const solveHeld = (
  { graph, entries, diagonal, load, factor }: Equations,
  isHeld: Uint8Array,
  held_Pa: Float64Array,
  scratch: {
    readonly entries: Float64Array
    readonly diagonal: Float64Array
    readonly pressure_Pa: Float64Array
  },
): void => {
  const right = scratch.pressure_Pa
  for (let n = 0; n < graph.rows; n++) {
    right[n] = isHeld[n] ? held_Pa[n]! : load[n]!
    scratch.diagonal[n] = isHeld[n] ? 1 : diagonal[n]!
    for (let k = graph.starts[n]!; k < graph.starts[n + 1]!; k++) {
      const m = graph.columns[k]!
      scratch.entries[k] = isHeld[n] || isHeld[m] ? 0 : entries[k]!
      if (!isHeld[n] && isHeld[m]) right[n]! -= entries[k]! * held_Pa[m]!
    }
  }
  factorise(factor, graph, scratch.entries, scratch.diagonal)
  solveFactor(factor, right, right)
}

/** What is left of each equation: load − K p. */
export const residualOf = (
  { graph, entries, diagonal, load }: Equations,
  pressure_Pa: Float64Array,
  n: number,
): number => {
  let rest = load[n]! - diagonal[n]! * pressure_Pa[n]!
  for (let k = graph.starts[n]!; k < graph.starts[n + 1]!; k++)
    rest -= entries[k]! * pressure_Pa[graph.columns[k]!]!
  return rest
}

const graphOf = ({ nodes, triangles, corner, links }: Domain): Graph => {
  const pairs = new Float64Array(6 * triangles + 2 * links.a.length)
  let count = 0
  for (let t = 0; t < triangles; t++)
    for (let i = 0; i < 3; i++) {
      const [a, b] = [corner[3 * t + i]!, corner[3 * t + ((i + 1) % 3)]!]
      pairs[count++] = a * nodes + b
      pairs[count++] = b * nodes + a
    }
  for (let i = 0; i < links.a.length; i++) {
    pairs[count++] = links.a[i]! * nodes + links.b[i]!
    pairs[count++] = links.b[i]! * nodes + links.a[i]!
  }
  pairs.sort()
  const starts = new Int32Array(nodes + 1)
  const columns = new Int32Array(count)
  let kept = 0
  for (let i = 0; i < count; i++) {
    if (i > 0 && pairs[i] === pairs[i - 1]) continue
    const row = Math.floor(pairs[i]! / nodes)
    columns[kept++] = pairs[i]! - row * nodes
    starts[row + 1]!++
  }
  for (let n = 0; n < nodes; n++) starts[n + 1]! += starts[n]!
  return { rows: nodes, starts, columns: columns.subarray(0, kept) }
}

/** Where the entry of a row and a column stands. */
const placeOf = ({ starts, columns }: Graph, row: number, column: number): number => {
  let [low, high] = [starts[row]!, starts[row + 1]! - 1]
  while (low < high) {
    const middle = (low + high) >> 1
    if (columns[middle]! < column) low = middle + 1
    else high = middle
  }
  return low
}
