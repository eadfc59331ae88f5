import type { Point } from '../../../core/geometry'

/** Lower left and upper right corner of an upright rectangle. */
export type Box = readonly [low: Point, high: Point]

/** The box round some points; nothing round none. */
export const boxOf = (points: readonly Point[]): Box | undefined => {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const at of points) {
    const x = at[0]
    const y = at[1]
    if (x < x0) x0 = x
    if (y < y0) y0 = y
    if (x > x1) x1 = x
    if (y > y1) y1 = y
  }
  return x0 <= x1
    ? [
        [x0, y0],
        [x1, y1],
      ]
    : undefined
}

/** What two boxes share; nothing where that has no width. */
export const within = (a: Box, b: Box): Box | undefined => {
  const low: Point = [Math.max(a[0][0], b[0][0]), Math.max(a[0][1], b[0][1])]
  const high: Point = [Math.min(a[1][0], b[1][0]), Math.min(a[1][1], b[1][1])]
  return low[0] < high[0] && low[1] < high[1] ? [low, high] : undefined
}

/** The box round all of some boxes. */
export const around = (boxes: readonly Box[]): Box | undefined => boxOf(boxes.flat())

export const grown = ([[x0, y0], [x1, y1]]: Box, by: number): Box => [
  [x0 - by, y0 - by],
  [x1 + by, y1 + by],
]

export const shifted = ([[x0, y0], [x1, y1]]: Box, [dx, dy]: Point): Box => [
  [x0 + dx, y0 + dy],
  [x1 + dx, y1 + dy],
]

export const touches = (a: Box, b: Box): boolean =>
  a[0][0] <= b[1][0] && b[0][0] <= a[1][0] && a[0][1] <= b[1][1] && b[0][1] <= a[1][1]

export const contains = (outer: Box, inner: Box): boolean =>
  outer[0][0] <= inner[0][0] &&
  outer[0][1] <= inner[0][1] &&
  inner[1][0] <= outer[1][0] &&
  inner[1][1] <= outer[1][1]
