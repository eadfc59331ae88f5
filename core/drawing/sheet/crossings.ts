import type { Point } from '../../geometry'
import { doCross } from '../labels/shape'

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
