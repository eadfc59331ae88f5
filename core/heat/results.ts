import type { Point } from '../geometry'
import { film } from './element'
import type { Solution } from './solution'

/** The flow through each surface into the section, W/m, in the order of the case. Their sum is zero to rounding. */
export const flows_W_m = ({ case: it, system, field, properties }: Solution): readonly number[] => {
  const { mesh, filmEdge, filmSurface, filmWeight } = system
  const flows = it.surfaces.map(() => 0)
  for (let m = 0; m < filmEdge.length; m++) {
    const e = filmEdge[m]!
    const s = filmSurface[m]!
    const mean =
      (field.corner_C[mesh.edgeFrom[e]!]! + field.corner_C[mesh.edgeTo[e]!]!) / 2 +
      film.bubbleLoad * field.bubble_K[e]!
    flows[s] = (flows[s] ?? 0) + filmWeight[m]! * (properties.air_C[s]! - mean)
  }
  return flows
}

/** A temperature and where it is. */
export type Spot = { readonly temperature_C: number; readonly at_mm: Point }

/** The coldest place of each surface that has an edge, by the number of the surface. */
export const lowestSpots = ({ case: it, system, field }: Solution): readonly (Spot | undefined)[] => {
  const { filmEdge, filmSurface } = system
  const lowest: (Spot | undefined)[] = it.surfaces.map(() => undefined)
  for (let m = 0; m < filmEdge.length; m++) {
    const s = filmSurface[m]!
    const spot = lowestOnEdge(system, field, filmEdge[m]!)
    const known = lowest[s]
    if (!known || spot.temperature_C < known.temperature_C) lowest[s] = spot
  }
  return lowest
}

/** The coldest place of an edge: an end, or the foot of its parabola. */
const lowestOnEdge = (
  { mesh }: Solution['system'],
  { corner_C, bubble_K }: Solution['field'],
  e: number,
): Spot => {
  const from = mesh.edgeFrom[e]!
  const to = mesh.edgeTo[e]!
  const a = corner_C[from]!
  const b = corner_C[to]!
  const bubble = bubble_K[e]!
  const foot = bubble < 0 ? 0.5 + (b - a) / (8 * bubble) : -1
  const share = 0 < foot && foot < 1 ? foot : a <= b ? 0 : 1
  return {
    temperature_C: a + share * (b - a) + 4 * bubble * share * (1 - share),
    at_mm: [
      mesh.x[from]! + share * (mesh.x[to]! - mesh.x[from]!),
      mesh.y[from]! + share * (mesh.y[to]! - mesh.y[from]!),
    ],
  }
}

/** The temperature at a place of the section; undefined outside. A place on an outline belongs to either side. */
export const temperatureAt = ({ system, field }: Solution, [px, py]: Point): number | undefined => {
  const { mesh } = system
  const { x, y, corner, edgeOf } = mesh
  let best = -1e-9
  let answer: number | undefined
  for (let i = 0; i < 3 * mesh.triangles; i += 3) {
    const [a, b, c] = [corner[i]!, corner[i + 1]!, corner[i + 2]!]
    const area2 = (x[b]! - x[a]!) * (y[c]! - y[a]!) - (y[b]! - y[a]!) * (x[c]! - x[a]!)
    const l0 = ((x[b]! - px) * (y[c]! - py) - (y[b]! - py) * (x[c]! - px)) / area2
    const l1 = ((x[c]! - px) * (y[a]! - py) - (y[c]! - py) * (x[a]! - px)) / area2
    const l2 = 1 - l0 - l1
    const inside = Math.min(l0, l1, l2)
    if (inside < best) continue
    best = inside
    answer =
      l0 * field.corner_C[a]! + l1 * field.corner_C[b]! + l2 * field.corner_C[c]! +
      4 * (l1 * l2 * field.bubble_K[edgeOf[i]!]! + l2 * l0 * field.bubble_K[edgeOf[i + 1]!]! + l0 * l1 * field.bubble_K[edgeOf[i + 2]!]!) // prettier-ignore
  }
  return answer
}
