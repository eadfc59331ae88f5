import { through_kg_m2s } from '../diffusion'
import type { FaceState } from './profile'

/** What a face needs for its water: where it lies in vapour resistance, and its saturation. */
export type Obstacle = Pick<FaceState, 'sd_m' | 'saturation_Pa'>

/**
 * Vapour pressures through layers where water may lie: the string from end to end, pulled tight below the saturation
 * of every face (the lower convex hull), held at saturation wherever a face is wet (EN ISO 13788; Glaser 1959).
 * At the ends the air's own pressure holds, but no more than saturation.
 */
export const tautPressures_Pa = (
  faces: readonly Obstacle[],
  ends: { readonly outside_Pa: number; readonly inside_Pa: number },
  isWet: (face: number) => boolean,
): readonly number[] => {
  const last = faces.length - 1
  const points = faces.map(({ sd_m, saturation_Pa }, i): Point => {
    const air_Pa = i === 0 ? ends.outside_Pa : i === last ? ends.inside_Pa : Infinity
    return { sd_m, pressure_Pa: Math.min(air_Pa, saturation_Pa) }
  })
  const held = points.map((_, i) => i).filter(i => i === 0 || i === last || isWet(i))
  return held.flatMap((from, k) => {
    const to = held[k + 1]
    if (to === undefined) return [points[from]?.pressure_Pa ?? 0]
    return hullBetween(points.slice(from, to + 1)).slice(0, -1)
  })
}

type Point = { readonly sd_m: number; readonly pressure_Pa: number }

/** The lower convex hull over a run of points, read at each of them (Andrew's monotone chain). */
const hullBetween = (points: readonly Point[]): readonly number[] => {
  const hull: Point[] = []
  for (const point of points) {
    for (let n = hull.length; n >= 2 && !turnsUp(hull[n - 2], hull[n - 1], point); n = hull.length) hull.pop()
    hull.push(point)
  }
  let piece = 1
  return points.map(({ sd_m, pressure_Pa }) => {
    while (piece < hull.length - 1 && (hull[piece]?.sd_m ?? Infinity) < sd_m) piece++
    const [a, b] = [hull[piece - 1], hull[piece]]
    if (!a || !b) return pressure_Pa
    if (b.sd_m <= a.sd_m) return Math.min(a.pressure_Pa, b.pressure_Pa)
    return a.pressure_Pa + ((sd_m - a.sd_m) / (b.sd_m - a.sd_m)) * (b.pressure_Pa - a.pressure_Pa)
  })
}

const turnsUp = (a: Point | undefined, b: Point | undefined, c: Point): boolean =>
  !a ||
  !b ||
  (b.sd_m - a.sd_m) * (c.pressure_Pa - b.pressure_Pa) > (c.sd_m - b.sd_m) * (b.pressure_Pa - a.pressure_Pa)

/** What gathers at each face, kg/(m²·s): what comes from inside less what goes on outwards; negative where it dries. */
export const gathering_kg_m2s = (
  faces: readonly Obstacle[],
  pressures_Pa: readonly number[],
): readonly number[] => {
  const flow = (i: number): number | undefined => {
    const [a, b] = [faces[i], faces[i + 1]]
    const [from, to] = [pressures_Pa[i], pressures_Pa[i + 1]]
    if (!a || !b || from === undefined || to === undefined) return undefined
    return through_kg_m2s(to - from, b.sd_m - a.sd_m)
  }
  return faces.map((_, i) => {
    const [outwards, fromInside] = [flow(i - 1), flow(i)]
    // Nothing is kept at the ends: the air takes it.
    if (outwards === undefined || fromInside === undefined) return 0
    const rate = fromInside - outwards
    return Math.abs(rate) > rounding * (Math.abs(outwards) + Math.abs(fromInside)) ? rate : 0
  })
}

/** Two flows that differ by less are one: the string is straight there. Ours. */
const rounding = 1e-9
