import { type Outline, type Point, areaOf } from '../../geometry'

/** Parts of a cavity that hang together by no more than this count as cavities of their own (EN ISO 10077-2, published). */
const throat_mm = 2

/**
 * Splits an outline (counter-clockwise) at its throats: wherever an inner corner comes as near as 2 mm to an edge that it
 * sees and both sides are wider than the throat, a cut closes the cavity. Areas add up to the whole.
 */
export const splitAtThroats = (outline: Outline): readonly Outline[] => {
  for (let i = 0; i < outline.length; i++) {
    const corner = outline[i]
    if (!corner || !isReflex(outline, i)) continue
    const cut = nearestAcross(outline, i)
    if (!cut) continue
    const [first, second] = cutAt(outline, i, cut)
    if (isThin(first) || isThin(second)) continue
    return [...splitAtThroats(first), ...splitAtThroats(second)]
  }
  return [outline]
}

type Cut = { readonly edge: number; readonly at: Point }

const isReflex = (outline: Outline, i: number): boolean => {
  const [a, b, c] = [outline.at(i - 1), outline[i], outline[(i + 1) % outline.length]]
  return a !== undefined && b !== undefined && c !== undefined && turn(a, b, c) < -1e-9
}

const turn = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

/** The nearest place of an edge that faces the corner across the cavity, at most a throat away. */
const nearestAcross = (outline: Outline, i: number): Cut | undefined => {
  const n = outline.length
  const corner = outline[i]
  let nearest_mm = throat_mm
  let found: Cut | undefined
  for (let k = 0; corner && k < n; k++) {
    if (k === i || k === (i + n - 1) % n) continue
    const [from, to] = [outline[k], outline[(k + 1) % n]]
    // An edge that shows the corner its outer side lies behind something else.
    if (!from || !to || turn(from, to, corner) <= 0) continue
    const at = nearestOn(from, to, corner)
    const away_mm = Math.hypot(at[0] - corner[0], at[1] - corner[1])
    if (away_mm > nearest_mm || !pointsInside(outline, i, at)) continue
    nearest_mm = away_mm
    found = { edge: k, at }
  }
  return found
}

const nearestOn = (a: Point, b: Point, p: Point): Point => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const share = ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy)
  return share <= 0 ? a : share >= 1 ? b : [a[0] + share * dx, a[1] + share * dy]
}

/** Whether a way from a reflex corner starts into the cavity. */
const pointsInside = (outline: Outline, i: number, at: Point): boolean => {
  const [a, b, c] = [outline.at(i - 1), outline[i], outline[(i + 1) % outline.length]]
  return a !== undefined && b !== undefined && c !== undefined && (turn(a, b, at) >= 0 || turn(b, c, at) >= 0)
}

const cutAt = (outline: Outline, i: number, { edge, at }: Cut): readonly [Outline, Outline] => {
  const n = outline.length
  const run = (from: number, to: number): Point[] => {
    const points: Point[] = []
    for (let k = from; ; k = (k + 1) % n) {
      const point = outline[k]
      if (point) points.push(point)
      if (k === to) return points
    }
  }
  return [distinct([...run(i, edge), at]), distinct([at, ...run((edge + 1) % n, i)])]
}

/** A place that repeats its neighbour is left out. */
const distinct = (points: readonly Point[]): Outline =>
  points.filter((p, i) => {
    const before = points.at(i - 1)
    return !before || p[0] !== before[0] || p[1] !== before[1]
  })

/** A part with hardly more area than the square of a throat is the throat itself, not a cavity. */
const isThin = (outline: Outline): boolean => outline.length < 3 || areaOf(outline) <= throat_mm * throat_mm
