import type { Point } from '../../geometry'

/** How many pairs of some lines cross each other. */
export const crossings = (lines: readonly (readonly Point[])[]): number => {
  const stretches = lines.map(line => line.slice(1).map((to, at) => [line[at] ?? to, to] as const))
  return stretches.reduce(
    (sum, own, at) =>
      sum +
      stretches
        .slice(at + 1)
        .filter(other => own.some(([a, b]) => other.some(([c, d]) => doCross(a, b, c, d)))).length,
    0,
  )
}

const doCross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  sideOf(a, b, c) * sideOf(a, b, d) < 0 && sideOf(c, d, a) * sideOf(c, d, b) < 0

/** On which side of a line a place lies: left is above zero. */
const sideOf = ([ax, ay]: Point, [bx, by]: Point, [x, y]: Point): number =>
  (bx - ax) * (y - ay) - (by - ay) * (x - ax)
