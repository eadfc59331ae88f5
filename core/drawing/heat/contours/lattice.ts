import type { Solution } from '../../../heat'

/**
 * The quadratic field of a mesh on its triangles split in four: nodes are the corners and then the middles of the
 * edges. A rung joins two nodes; along each the field is a parabola, so its crossings with a level are exact. Rungs are
 * the halves of the edges (2e, 2e + 1, from `edgeFrom` to `edgeTo`), then the three that cut off the corners of each
 * triangle (2·edges + 3t + i cuts off corner i, from the middle opposite i + 1 to the middle opposite i + 2).
 */
export type Lattice = {
  readonly it: Solution
  /** the temperature at each node, °C */
  readonly node_C: Float64Array
  readonly rungs: number
}

export const latticeOf = (it: Solution): Lattice => {
  const { mesh, field } = it
  const node_C = new Float64Array(mesh.vertices + mesh.edges)
  node_C.set(field.corner_C)
  for (let e = 0; e < mesh.edges; e++) {
    const [a, b] = [mesh.edgeFrom[e]!, mesh.edgeTo[e]!]
    node_C[mesh.vertices + e] = (field.corner_C[a]! + field.corner_C[b]!) / 2 + field.bubble_K[e]!
  }
  return { it, node_C, rungs: 2 * mesh.edges + 3 * mesh.triangles }
}

/** Writes where a level crosses a rung that it is known to cross: the ends of the rung lie on both sides of it. */
export const crossing = (
  { it: { mesh, field }, node_C }: Lattice,
  rung: number,
  level_C: number,
  scratch: { x: number; y: number },
): void => {
  const { x, y, edgeFrom, edgeTo, edgeOf, edges, vertices } = mesh
  if (rung < 2 * edges) {
    const e = rung >> 1
    const [a, b] = [edgeFrom[e]!, edgeTo[e]!]
    const middle = node_C[vertices + e]!
    const isFirst = (rung & 1) === 0
    const [from, to] = isFirst ? [node_C[a]!, middle] : [middle, node_C[b]!]
    // A parabola over half an edge rises a quarter as high as over the whole.
    const share = root(from, to, field.bubble_K[e]! / 4, level_C) / 2 + (isFirst ? 0 : 0.5)
    scratch.x = x[a]! + share * (x[b]! - x[a]!)
    scratch.y = y[a]! + share * (y[b]! - y[a]!)
    return
  }
  const i = rung - 2 * edges
  const t = (i / 3) | 0
  const k = i - 3 * t
  const e = edgeOf[i]!
  const [ea, eb] = [edgeOf[3 * t + ((k + 1) % 3)]!, edgeOf[3 * t + ((k + 2) % 3)]!]
  const share = root(node_C[vertices + ea]!, node_C[vertices + eb]!, field.bubble_K[e]! / 4, level_C)
  const ax = (x[edgeFrom[ea]!]! + x[edgeTo[ea]!]!) / 2
  const ay = (y[edgeFrom[ea]!]! + y[edgeTo[ea]!]!) / 2
  scratch.x = ax + share * ((x[edgeFrom[eb]!]! + x[edgeTo[eb]!]!) / 2 - ax)
  scratch.y = ay + share * ((y[edgeFrom[eb]!]! + y[edgeTo[eb]!]!) / 2 - ay)
}

/** Where from + s (to − from) + 4 rise s (1 − s) takes a value between its ends: the one root in 0 … 1. */
const root = (from: number, to: number, rise: number, value: number): number => {
  const a = -4 * rise
  const b = to - from + 4 * rise
  const c = from - value
  if (c === 0) return 0
  const span = Math.sqrt(Math.max(0, b * b - 4 * a * c))
  // The two roots without cancellation; exactly one of them lies between the ends.
  const q = -(b + (b < 0 ? -span : span)) / 2
  const [first, second] = [q / a, c / q]
  const isFirst = Math.abs(first - 0.5) < Math.abs(second - 0.5)
  return Math.min(1, Math.max(0, isFirst ? first : second))
}

/** The temperature and its slope at a place of a triangle, °C and K/mm, exact for the quadratic field. */
export const fieldAt = (
  { it: { mesh, field } }: Lattice,
  t: number,
  px: number,
  py: number,
  scratch: { value: number; dx: number; dy: number },
): void => {
  const { x, y, corner, edgeOf } = mesh
  const [a, b, c] = [corner[3 * t]!, corner[3 * t + 1]!, corner[3 * t + 2]!]
  const [xa, ya, xb, yb, xc, yc] = [x[a]!, y[a]!, x[b]!, y[b]!, x[c]!, y[c]!]
  const area2 = (xb - xa) * (yc - ya) - (yb - ya) * (xc - xa)
  const la = ((xb - px) * (yc - py) - (yb - py) * (xc - px)) / area2
  const lb = ((xc - px) * (ya - py) - (yc - py) * (xa - px)) / area2
  const lc = 1 - la - lb
  const [ba, bb, bc] = [
    4 * field.bubble_K[edgeOf[3 * t]!]!,
    4 * field.bubble_K[edgeOf[3 * t + 1]!]!,
    4 * field.bubble_K[edgeOf[3 * t + 2]!]!,
  ]
  const [ua, ub, uc] = [field.corner_C[a]!, field.corner_C[b]!, field.corner_C[c]!]
  scratch.value = la * ua + lb * ub + lc * uc + lb * lc * ba + lc * la * bb + la * lb * bc
  // Slopes with respect to the three shares of the corners.
  const [ga, gb, gc] = [ua + lc * bb + lb * bc, ub + lc * ba + la * bc, uc + lb * ba + la * bb]
  scratch.dx = (ga * (yb - yc) + gb * (yc - ya) + gc * (ya - yb)) / area2
  scratch.dy = (ga * (xc - xb) + gb * (xa - xc) + gc * (xb - xa)) / area2
}
