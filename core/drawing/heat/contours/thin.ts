import type { Point } from '../../../geometry'

/**
 * A line without the places that it does not need: no place that is left out lies further than `tolerance_mm` from the
 * stretch in its stead. First and last place stay. One pass: from the last place kept, a sleeve of directions that pass
 * all places since closely enough is narrowed until the next place lies outside it, or the line turns back.
 */
export const thinned = (points: readonly Point[], tolerance_mm: number): Point[] => {
  const [first] = points
  if (!first || points.length < 3) return [...points]
  const kept: Point[] = [first]
  let [x0, y0] = first
  // The sleeve: its right and left edge as directions; until a place lies off the start, all directions are open.
  let [rx, ry, lx, ly] = [0, 0, 0, 0]
  let far2 = 0
  const restart = ([x, y]: Point): void => {
    ;[x0, y0] = [x, y]
    rx = ry = lx = ly = far2 = 0
  }
  for (let i = 1; i < points.length; i++) {
    const [x, y] = points[i]!
    let [dx, dy] = [x - x0, y - y0]
    let d2 = dx * dx + dy * dy
    const isOpen = far2 === 0
    if (!isOpen && (d2 < far2 || rx * dy - ry * dx < 0 || lx * dy - ly * dx > 0)) {
      const last = points[i - 1]!
      kept.push(last)
      restart(last)
      ;[dx, dy] = [x - x0, y - y0]
      d2 = dx * dx + dy * dy
    }
    if (d2 <= tolerance_mm * tolerance_mm) continue
    const sine = tolerance_mm / Math.sqrt(d2)
    const cosine = Math.sqrt(1 - sine * sine)
    const [ax, ay] = [dx * cosine + dy * sine, dy * cosine - dx * sine]
    const [bx, by] = [dx * cosine - dy * sine, dy * cosine + dx * sine]
    if (far2 === 0) [rx, ry, lx, ly] = [ax, ay, bx, by]
    else {
      if (rx * ay - ry * ax > 0) [rx, ry] = [ax, ay]
      if (lx * by - ly * bx < 0) [lx, ly] = [bx, by]
    }
    far2 = d2
  }
  kept.push(points.at(-1)!)
  return kept
}
