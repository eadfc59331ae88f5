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
