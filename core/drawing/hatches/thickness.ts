import type { Outline } from '../../geometry'

/**
 * How thick an area is: the shorter side of the rectangle with the same area and the same length of edge.
 * Exact for strips, also bent and hollow ones; a compact body counts as the square of its area.
 */
export const thicknessOf_mm = (area: {
  readonly outline: Outline
  readonly holes: readonly Outline[]
}): number => {
  let [twice, edge_mm] = [0, 0]
  for (const outline of [area.outline, ...area.holes]) {
    let before = outline[outline.length - 1]
    let own = 0
    for (const corner of outline) {
      if (before) {
        own += before[0] * corner[1] - corner[0] * before[1]
        edge_mm += Math.hypot(corner[0] - before[0], corner[1] - before[1])
      }
      before = corner
    }
    twice += outline === area.outline ? Math.abs(own) : -Math.abs(own)
  }
  const body = Math.max(0, twice / 2)
  const half = edge_mm / 2
  const root = half * half - 4 * body
  return root > 0 ? (half - Math.sqrt(root)) / 2 : Math.sqrt(body)
}
