import { callout } from '../style/spacing'

/** Slopes of leaders, the usual one first: multiples of 15°. */
const slopes_deg = [callout.slope_deg, 75, 30] as const

/** A leader nearer than this to the direction of a hatch reads as one of its lines. Ours. */
const apart_deg = 10

/**
 * The slope of all leaders of a picture, to either side and either way, against the hatches as they lie on paper: the first
 * that none of them comes near, or else the one that keeps furthest off.
 */
export const slopeAgainst = (hatches_deg: readonly number[]): number => {
  const offs = slopes_deg.map(slope => ({
    slope,
    off: Math.min(90, ...hatches_deg.map(it => offSlope_deg(it, slope))),
  }))
  const free = offs.find(it => it.off >= apart_deg) ?? offs.toSorted((a, b) => b.off - a.off)[0]
  return free?.slope ?? callout.slope_deg
}

const offSlope_deg = (hatch_deg: number, slope_deg: number): number =>
  Math.min(between_deg(hatch_deg, slope_deg), between_deg(hatch_deg, -slope_deg))

/** The angle between two directions of lines. */
const between_deg = (a: number, b: number): number => {
  const apart = (((a - b) % 180) + 180) % 180
  return Math.min(apart, 180 - apart)
}
