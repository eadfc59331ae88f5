import type { Point } from '../../core/geometry'
import { type Words, words } from '../../core/words'

/** What a dragged thing can be caught by, the strongest first. Helper lines are not among them: they never attract. */
export const snapKinds = ['corner', 'face', 'middle', 'grid'] as const
export type SnapKind = (typeof snapKinds)[number]
export const snapName: Readonly<Record<SnapKind, Words>> = {
  corner: words('corner', 'Ecke'),
  face: words('face', 'Fläche'),
  middle: words('middle', 'Mitte'),
  grid: words('grid', 'Raster'),
}

/** How near something must come to be caught, in screen pixels. *Ours*: about the width of a pointer's tip. */
export const reach_px = 6

/** Where a dragged thing comes to rest: caught by something, or where the pointer is. */
export type Snapped<T> = { readonly at: T; readonly kind?: SnapKind }

/** What a point can be caught by: corners, edges with their middles, and a grid of this step. */
export type SnapPoints = { readonly edges: readonly (readonly [Point, Point])[]; readonly grid_mm: number }

/** How far things attract, in model millimetres; `held` is true while the key is held that suspends it. */
export type Reach = { readonly reach_mm: number; readonly held: boolean }

/**
 * The place that catches a point: of the strongest kind within reach, the nearest. The order of kinds is fixed,
 * so a corner is never lost to a middle that happens to be nearer.
 */
export const snapPoint = (to: Point, { edges, grid_mm }: SnapPoints, reach: Reach): Snapped<Point> =>
  caught(
    to,
    {
      corner: edges.flat(),
      face: edges.map(edge => nearestOn(edge, to)),
      middle: edges.map(([a, b]) => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] as const),
      grid: [[onStep(to[0], grid_mm), onStep(to[1], grid_mm)]],
    },
    distance,
    reach,
  )

/** What a value that is dragged along a line can be caught by, by kind, as places on that line. */
export type SnapValues = {
  readonly [K in Exclude<SnapKind, 'grid'>]: readonly number[]
} & { readonly grid_mm: number }

/** The same along one line: a face that moves in the depth of the wall, a joint that widens. */
export const snapValue = (to: number, values: SnapValues, reach: Reach): Snapped<number> =>
  caught(
    to,
    { corner: values.corner, face: values.face, middle: values.middle, grid: [onStep(to, values.grid_mm)] },
    (a, b) => Math.abs(a - b),
    reach,
  )

const caught = <T>(
  to: T,
  places: Readonly<Record<SnapKind, readonly T[]>>,
  between: (a: T, b: T) => number,
  { reach_mm, held }: Reach,
): Snapped<T> => {
  if (held) return { at: to }
  for (const kind of snapKinds) {
    const near = places[kind].filter(it => between(it, to) <= reach_mm)
    const [first, ...others] = near
    if (first === undefined) continue
    return { at: others.reduce((best, it) => (between(it, to) < between(best, to) ? it : best), first), kind }
  }
  return { at: to }
}

const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1])

/** The point of an edge that is nearest to another. */
const nearestOn = ([a, b]: readonly [Point, Point], to: Point): Point => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const length2 = dx * dx + dy * dy
  if (length2 === 0) return a
  const share = Math.min(1, Math.max(0, ((to[0] - a[0]) * dx + (to[1] - a[1]) * dy) / length2))
  return [a[0] + share * dx, a[1] + share * dy]
}

/** The nearest multiple of a step, free of the noise of its multiplication. */
const onStep = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(6))
