import type { Outline, Point } from './point'

/**
 * A strip of sheet along a path, as a closed outline: the path is one face of it, the other lies to the left of the
 * path's way at the thickness, mitred at its bends. Counter-clockwise. Bends are no sharper than a right angle.
 */
export const stripOutline = (path: readonly Point[], thickness_mm: number): Outline => {
  const normals = path.slice(1).map((b, i) => leftOf(path[i] ?? b, b))
  const other = path.map(([x, y], i): Point => {
    const before = normals[i - 1] ?? normals[i] ?? [0, 0]
    const after = normals[i] ?? before
    // along both normals at once: their sum, as long as it has to be for either
    const scale = thickness_mm / (1 + before[0] * after[0] + before[1] * after[1])
    return [x + scale * (before[0] + after[0]), y + scale * (before[1] + after[1])]
  })
  return [...path, ...other.toReversed()]
}

const leftOf = ([ax, ay]: Point, [bx, by]: Point): Point => {
  const length = Math.hypot(bx - ax, by - ay)
  return length === 0 ? [0, 0] : [-(by - ay) / length, (bx - ax) / length]
}
