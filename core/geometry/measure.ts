import type { Outline, Point } from './point'

/** Signed area in mm²: positive where the outline runs counter-clockwise. */
export const areaOf = (outline: Outline): number => {
  const [first] = outline
  if (first === undefined) return 0
  const [ox, oy] = first
  return (
    outline.reduce((sum, [ax, ay], i) => {
      const [bx, by] = outline[(i + 1) % outline.length] ?? first
      return sum + (ax - ox) * (by - oy) - (bx - ox) * (ay - oy)
    }, 0) / 2
  )
}

export const isCounterClockwise = (outline: Outline): boolean => areaOf(outline) > 0

export const reversed = (outline: Outline): Outline => [...outline].reverse()

/** Length of a path in mm. */
export const lengthOf = (path: readonly Point[]): number =>
  path.slice(1).reduce((sum, [bx, by], i) => {
    const [ax, ay] = path[i] ?? [bx, by]
    return sum + Math.hypot(bx - ax, by - ay)
  }, 0)

/** The unit vector from one point to another; along x where they are the same. */
export const directionOf = ([ax, ay]: Point, [bx, by]: Point): Point => {
  const length = Math.hypot(bx - ax, by - ay)
  return length === 0 ? [1, 0] : [(bx - ax) / length, (by - ay) / length]
}

/** The first stretch of a path, of a given length; the whole path where it is shorter. */
export const startOf = (path: readonly Point[], length_mm: number): readonly Point[] => {
  const [first] = path
  if (first === undefined) return []
  const start: Point[] = [first]
  let left = length_mm
  for (const [i, b] of path.slice(1).entries()) {
    const a = path[i] ?? b
    const step = Math.hypot(b[0] - a[0], b[1] - a[1])
    if (step >= left) {
      const [ux, uy] = directionOf(a, b)
      return left > 0 ? [...start, [a[0] + ux * left, a[1] + uy * left]] : start
    }
    start.push(b)
    left -= step
  }
  return start
}
