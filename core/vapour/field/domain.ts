import type { Mesh } from '../../heat'
import { film_m } from '../diffusion'
import type { Interface, VapourCase } from './vapour-case'
import { type Groups, groups, join, leaderOf } from './groups'

/**
 * Where vapour moves: linear triangles, cut open along membranes, without what is tight and without islands that no air
 * reaches. `a`, `b` are the two nodes of a link; its weight is what it lets through per pascal, in units of still air.
 */
export type Domain = {
  readonly nodes: number
  readonly vertexOf: Int32Array
  readonly triangles: number
  readonly corner: Int32Array
  readonly mu: Float64Array
  readonly links: { readonly a: Int32Array; readonly b: Int32Array; readonly weight: Float64Array }
  readonly films: { readonly node: Int32Array; readonly weight: Float64Array; readonly air_Pa: Float64Array }
}

/** An interface edge as two links, and a film edge as two films: what each end takes of its length (lumped, so that no pressure overshoots). */
const half = 0.5

/** Lays out the domain of a case. */
export const domainOf = (it: VapourCase): Domain => {
  const { mesh } = it
  const kept = keptTriangles(it)
  const sides = edgeSides(mesh, kept)
  const across_m = interfaceEdges(mesh, it.interfaces)
  const slots = cutOpen(mesh, sides, across_m)
  const { node, count } = numbered(slots, kept)
  const links: Link[] = []
  const films: Film[] = []
  for (let e = 0; e < mesh.edges; e++) {
    const [one, other] = [sides[2 * e]!, sides[2 * e + 1]!]
    if (one < 0) continue
    const length_m = edgeLength_m(mesh, e)
    for (const v of [mesh.edgeFrom[e]!, mesh.edgeTo[e]!]) {
      const own = node[slotAt(mesh, one, v)]!
      const beyond = other >= 0 && across_m[e]! > 0 ? node[slotAt(mesh, other, v)]! : own
      // Round the free end of a membrane both sides are one node.
      if (beyond !== own) links.push({ a: own, b: beyond, weight: (half * length_m) / across_m[e]! })
      const air_Pa = other < 0 ? it.airAt_Pa(e) : undefined
      if (air_Pa !== undefined)
        films.push({ node: own, air_Pa, weight: (half * length_m) / (film_m + across_m[e]!) })
    }
  }
  return withoutIslands({ mesh, mu: it.mu, kept, node, count, links, films })
}

type Link = { readonly a: number; readonly b: number; readonly weight: number }
type Film = { readonly node: number; readonly weight: number; readonly air_Pa: number }

const keptTriangles = ({ mesh, mu }: VapourCase): readonly number[] => {
  const kept: number[] = []
  for (let t = 0; t < mesh.triangles; t++) if (Number.isFinite(mu[mesh.body[t]!])) kept.push(t)
  return kept
}

/** The one or two kept triangles of each edge, -1 for none. */
const edgeSides = (mesh: Mesh, kept: readonly number[]): Int32Array => {
  const sides = new Int32Array(2 * mesh.edges).fill(-1)
  for (const t of kept)
    for (let i = 0; i < 3; i++) {
      const e = mesh.edgeOf[3 * t + i]!
      sides[sides[2 * e]! < 0 ? 2 * e : 2 * e + 1] = t
    }
  return sides
}

const edgeLength_m = (mesh: Mesh, e: number): number => {
  const [a, b] = [mesh.edgeFrom[e]!, mesh.edgeTo[e]!]
  return Math.hypot(mesh.x[b]! - mesh.x[a]!, mesh.y[b]! - mesh.y[a]!) / 1000
}

/** Resistance of the membranes that lie along each edge; 0 for none. Edges of outlines alone can carry one. */
const interfaceEdges = (mesh: Mesh, interfaces: readonly Interface[]): Float64Array => {
  const across_m = new Float64Array(mesh.edges)
  if (interfaces.length === 0) return across_m
  for (let e = 0; e < mesh.edges; e++) {
    if (mesh.segmentOf[e]! < 0) continue
    const [a, b] = [mesh.edgeFrom[e]!, mesh.edgeTo[e]!]
    for (const { path, sd_m } of interfaces)
      if (
        path.some(
          (to, i) =>
            i > 0 && isBeside(mesh, a, path[i - 1] ?? to, to) && isBeside(mesh, b, path[i - 1] ?? to, to),
        )
      )
        across_m[e]! += sd_m
  }
  return across_m
}

/** A vertex counts as lying on a membrane within a few steps of the grid of outlines, 1e-4 mm. */
const near_mm = 5e-4

const isBeside = (
  mesh: Mesh,
  v: number,
  [ax, ay]: readonly [number, number],
  [bx, by]: readonly [number, number],
): boolean => {
  const [px, py] = [mesh.x[v]!, mesh.y[v]!]
  const length = Math.hypot(bx - ax, by - ay)
  if (length === 0) return false
  const off_mm = Math.abs((bx - ax) * (py - ay) - (by - ay) * (px - ax)) / length
  const along_mm = ((bx - ax) * (px - ax) + (by - ay) * (py - ay)) / length
  return off_mm <= near_mm && -near_mm <= along_mm && along_mm <= length + near_mm
}

/** Which slot (corner of a triangle) of a triangle a vertex is. */
const slotAt = (mesh: Mesh, t: number, v: number): number =>
  mesh.corner[3 * t] === v ? 3 * t : mesh.corner[3 * t + 1] === v ? 3 * t + 1 : 3 * t + 2

/** Corners of triangles that share a vertex are one node, unless a membrane or what is tight parts them. */
const cutOpen = (mesh: Mesh, sides: Int32Array, across_m: Float64Array): Groups => {
  const slots = groups(3 * mesh.triangles)
  for (let e = 0; e < mesh.edges; e++) {
    const [one, other] = [sides[2 * e]!, sides[2 * e + 1]!]
    if (one < 0 || other < 0 || across_m[e]! > 0) continue
    for (const v of [mesh.edgeFrom[e]!, mesh.edgeTo[e]!])
      join(slots, slotAt(mesh, one, v), slotAt(mesh, other, v))
  }
  return slots
}

const numbered = (
  slots: Groups,
  kept: readonly number[],
): { readonly node: Int32Array; readonly count: number } => {
  const node = new Int32Array(slots.length).fill(-1)
  let count = 0
  for (const t of kept)
    for (let i = 3 * t; i < 3 * t + 3; i++) {
      const leader = leaderOf(slots, i)
      if (node[leader]! < 0) node[leader] = count++
      node[i] = node[leader]!
    }
  return { node, count }
}

type Raw = {
  readonly mesh: Mesh
  readonly mu: readonly number[]
  readonly kept: readonly number[]
  readonly node: Int32Array
  readonly count: number
  readonly links: readonly Link[]
  readonly films: readonly Film[]
}

/** Drops what no film reaches: chambers inside what is tight. Nobody knows the pressure there. */
const withoutIslands = ({ mesh, mu, kept, node, count, links, films }: Raw): Domain => {
  const parts = groups(count)
  for (const t of kept) {
    join(parts, node[3 * t]!, node[3 * t + 1]!)
    join(parts, node[3 * t]!, node[3 * t + 2]!)
  }
  for (const { a, b } of links) join(parts, a, b)
  const reached = new Uint8Array(count)
  for (const it of films) reached[leaderOf(parts, it.node)] = 1
  const number = new Int32Array(count).fill(-1)
  let nodes = 0
  for (let n = 0; n < count; n++) if (reached[leaderOf(parts, n)]) number[n] = nodes++
  const own = kept.filter(t => number[node[3 * t]!]! >= 0)
  const corner = Int32Array.from(
    own.flatMap(t => [3 * t, 3 * t + 1, 3 * t + 2]),
    slot => number[node[slot]!]!,
  )
  const vertexOf = new Int32Array(nodes)
  own.forEach((t, i) => {
    for (let c = 0; c < 3; c++) vertexOf[corner[3 * i + c]!] = mesh.corner[3 * t + c]!
  })
  const used = links.filter(it => number[it.a]! >= 0)
  return {
    nodes,
    vertexOf,
    triangles: own.length,
    corner,
    mu: Float64Array.from(own, t => mu[mesh.body[t]!] ?? Infinity),
    links: {
      a: Int32Array.from(used, it => number[it.a]!),
      b: Int32Array.from(used, it => number[it.b]!),
      weight: Float64Array.from(used, it => it.weight),
    },
    films: {
      node: Int32Array.from(films, it => number[it.node]!),
      weight: Float64Array.from(films, it => it.weight),
      air_Pa: Float64Array.from(films, it => it.air_Pa),
    },
  }
}
