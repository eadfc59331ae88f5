import type { Graph } from './algebra/ordering'
import { type HeatCase, fixedFilm_W_m2K } from './case'
import { bubbleBubble, film, foil, offDiagonal } from './element'
import type { Mesh } from './mesh/mesh'
import type { OutlineGraph } from './mesh/outline-graph'
import { metres, perMillimetre } from './si'

/**
 * The equations of a case on a mesh. Unknowns are temperatures at the corners and bubble heights on the edges.
 * Bodies are kept as three off-diagonals a triangle (see element.ts), films and foils as edges with their weights;
 * only the corner block is assembled, for the factor. All numbers are renewed in place when nodes move.
 */
export type System = {
  readonly mesh: Mesh
  readonly graph: Graph
  /** Edge behind each entry of the graph. */
  readonly edgeAt: Int32Array
  /** k_ij opposite corner 0, 1, 2 of each triangle, W/(mK). */
  readonly k: Float64Array
  /** Corner block: diagonal, and one off-diagonal an edge; `entries` are the same in the order of the graph. */
  readonly diagonal: Float64Array
  readonly across: Float64Array
  readonly entries: Float64Array
  /** Diagonal of the bubble block, inverted. */
  readonly bubbleInverse: Float64Array
  /** Edges with a film: which, its surface, film × length in W/(mK). */
  readonly filmEdge: Int32Array
  readonly filmSurface: Int32Array
  readonly filmWeight: Float64Array
  /** 1 where two fixed temperatures that differ meet: the flow there is infinite, in truth as on the mesh. */
  readonly contact: Uint8Array
  /** Edges with a foil: which, conductance / length in W/(mK). */
  readonly foilEdge: Int32Array
  readonly foilWeight: Float64Array
  /** Loads of corners and bubbles, W/m. */
  readonly load: Float64Array
  readonly bubbleLoad: Float64Array
}

/** Lays out the equations of a mesh: all that stays while its nodes only move. Numbers follow by `assemble`. */
export const systemOf = (mesh: Mesh, graph: OutlineGraph): System => {
  const starts = new Int32Array(mesh.vertices + 1)
  for (let e = 0; e < mesh.edges; e++) {
    starts[mesh.edgeFrom[e]! + 1]!++
    starts[mesh.edgeTo[e]! + 1]!++
  }
  for (let v = 0; v < mesh.vertices; v++) starts[v + 1]! += starts[v]!
  const fill = starts.slice()
  const columns = new Int32Array(2 * mesh.edges)
  const edgeAt = new Int32Array(2 * mesh.edges)
  for (let e = 0; e < mesh.edges; e++) {
    const a = mesh.edgeFrom[e]!
    const b = mesh.edgeTo[e]!
    edgeAt[fill[a]!] = e
    columns[fill[a]!++] = b
    edgeAt[fill[b]!] = e
    columns[fill[b]!++] = a
  }
  const isFilm = (e: number) => mesh.segmentOf[e]! >= 0 && graph.surface[mesh.segmentOf[e]!]! >= 0
  const isFoil = (e: number) => mesh.segmentOf[e]! >= 0 && graph.foil_W_K[mesh.segmentOf[e]!]! > 0
  const filmEdge = edgesWhere(mesh, isFilm)
  const foilEdge = edgesWhere(mesh, isFoil)
  return {
    mesh,
    graph: { rows: mesh.vertices, starts, columns },
    edgeAt,
    k: new Float64Array(3 * mesh.triangles),
    diagonal: new Float64Array(mesh.vertices),
    across: new Float64Array(mesh.edges),
    entries: new Float64Array(2 * mesh.edges),
    bubbleInverse: new Float64Array(mesh.edges),
    filmEdge,
    filmSurface: filmEdge.map(e => graph.surface[mesh.segmentOf[e]!]!),
    filmWeight: new Float64Array(filmEdge.length),
    contact: new Uint8Array(mesh.vertices),
    foilEdge,
    foilWeight: new Float64Array(foilEdge.length),
    load: new Float64Array(mesh.vertices),
    bubbleLoad: new Float64Array(mesh.edges),
  }
}

const edgesWhere = (mesh: Mesh, holds: (e: number) => boolean): Int32Array => {
  const found: number[] = []
  for (let e = 0; e < mesh.edges; e++) if (holds(e)) found.push(e)
  return Int32Array.from(found)
}

/** Conductivities per body and films and temperatures per surface: what a case says besides its shape. */
export type Properties = {
  readonly lambda_W_mK: Float64Array
  readonly film_W_m2K: Float64Array
  readonly air_C: Float64Array
}

export const propertiesOf = (it: HeatCase): Properties => ({
  lambda_W_mK: Float64Array.from(it.bodies, body => body.lambda_W_mK),
  film_W_m2K: Float64Array.from(it.surfaces, surface => surface.h_W_m2K),
  air_C: Float64Array.from(it.surfaces, surface => surface.air_C),
})

/** Marks the corners where two fixed temperatures that differ meet. */
export const markContacts = (scratch: System, { film_W_m2K, air_C }: Properties): void => {
  const { mesh, filmEdge, filmSurface, contact } = scratch
  const fixed_C = new Map<number, number>()
  for (let m = 0; m < filmEdge.length; m++) {
    const s = filmSurface[m]!
    if (film_W_m2K[s]! < fixedFilm_W_m2K) continue
    for (const v of [mesh.edgeFrom[filmEdge[m]!]!, mesh.edgeTo[filmEdge[m]!]!]) {
      const other = fixed_C.get(v)
      if (other !== undefined && other !== air_C[s]) contact[v] = 1
      fixed_C.set(v, air_C[s]!)
    }
  }
}

/** Renews all numbers of the equations from the places of the nodes. Nothing is allocated. */
export const assemble = (
  scratch: System,
  graph: OutlineGraph,
  { lambda_W_mK, film_W_m2K, air_C }: Properties,
): void => {
  const { mesh, k, diagonal, across, entries, edgeAt, bubbleInverse, load, bubbleLoad } = scratch
  const { x, y, corner, edgeOf, body, edgeFrom, edgeTo } = mesh
  diagonal.fill(0)
  across.fill(0)
  bubbleInverse.fill(0)
  load.fill(0)
  bubbleLoad.fill(0)
  for (let t = 0; t < mesh.triangles; t++) {
    const [i, j, l] = [3 * t, 3 * t + 1, 3 * t + 2]
    const a = corner[i]!
    const b = corner[j]!
    const c = corner[l]!
    const [ax, ay, bx, by, cx, cy] = [x[a]!, y[a]!, x[b]!, y[b]!, x[c]!, y[c]!]
    const area2 = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax)
    const lambda = lambda_W_mK[body[t]!]!
    const k0 = lambda * offDiagonal(bx, by, cx, cy, ax, ay, area2)
    const k1 = lambda * offDiagonal(cx, cy, ax, ay, bx, by, area2)
    const k2 = lambda * offDiagonal(ax, ay, bx, by, cx, cy, area2)
    k[i] = k0
    k[j] = k1
    k[l] = k2
    diagonal[a]! -= k1 + k2
    diagonal[b]! -= k2 + k0
    diagonal[c]! -= k0 + k1
    across[edgeOf[i]!]! += k0
    across[edgeOf[j]!]! += k1
    across[edgeOf[l]!]! += k2
    const own = -bubbleBubble * (k0 + k1 + k2)
    bubbleInverse[edgeOf[i]!]! += own
    bubbleInverse[edgeOf[j]!]! += own
    bubbleInverse[edgeOf[l]!]! += own
  }
  const { filmEdge, filmSurface, filmWeight, foilEdge, foilWeight } = scratch
  for (let m = 0; m < filmEdge.length; m++) {
    const e = filmEdge[m]!
    const a = edgeFrom[e]!
    const b = edgeTo[e]!
    const weight = perMillimetre(film_W_m2K[filmSurface[m]!]!) * Math.hypot(x[b]! - x[a]!, y[b]! - y[a]!)
    const air = air_C[filmSurface[m]!]!
    filmWeight[m] = weight
    diagonal[a]! += film.own * weight
    diagonal[b]! += film.own * weight
    across[e]! += film.across * weight
    bubbleInverse[e]! += film.bubbleOwn * weight
    load[a]! += film.load * weight * air
    load[b]! += film.load * weight * air
    bubbleLoad[e]! += film.bubbleLoad * weight * air
  }
  for (let m = 0; m < foilEdge.length; m++) {
    const e = foilEdge[m]!
    const a = edgeFrom[e]!
    const b = edgeTo[e]!
    const weight = graph.foil_W_K[mesh.segmentOf[e]!]! / metres(Math.hypot(x[b]! - x[a]!, y[b]! - y[a]!))
    foilWeight[m] = weight
    diagonal[a]! += foil.ends * weight
    diagonal[b]! += foil.ends * weight
    across[e]! -= foil.ends * weight
    bubbleInverse[e]! += foil.bubble * weight
  }
  for (let e = 0; e < mesh.edges; e++) bubbleInverse[e] = 1 / bubbleInverse[e]!
  for (let n = 0; n < entries.length; n++) entries[n] = across[edgeAt[n]!]!
}
