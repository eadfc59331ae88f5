import { incircle, orient2d } from 'robust-predicates'

/** Rounding bound of the plain determinant below (Shewchuk 1997, (3 + 16 eps) eps with eps = 2^-53). */
const turnBound = (3 + 16 * 2 ** -53) * 2 ** -53

/** Rounding bound of the in-circle determinant (Shewchuk 1997, (10 + 96 eps) eps). */
const circleBound = (10 + 96 * 2 ** -53) * 2 ** -53

/**
 * Twice the signed area of a triangle, its sign exact: positive when a, b, c run counter-clockwise (y up),
 * zero when they lie on a line. The quick determinant answers nearly always; the exact one decides the rest.
 */
export const turn = (ax: number, ay: number, bx: number, by: number, cx: number, cy: number): number => {
  const left = (ax - cx) * (by - cy)
  const right = (ay - cy) * (bx - cx)
  const det = left - right
  return Math.abs(det) > turnBound * (Math.abs(left) + Math.abs(right))
    ? det
    : -orient2d(ax, ay, bx, by, cx, cy)
}

/** Whether d lies strictly inside the circle through a, b, c, which run counter-clockwise. Exact. */
export const isInCircle = (
  ax: number, ay: number, bx: number, by: number, cx: number, cy: number, dx: number, dy: number,
): boolean => {
  const adx = ax - dx
  const ady = ay - dy
  const bdx = bx - dx
  const bdy = by - dy
  const cdx = cx - dx
  const cdy = cy - dy
  const bc = bdx * cdy
  const cb = cdx * bdy
  const ca = cdx * ady
  const ac = adx * cdy
  const ab = adx * bdy
  const ba = bdx * ady
  const a = adx * adx + ady * ady
  const b = bdx * bdx + bdy * bdy
  const c = cdx * cdx + cdy * cdy
  const det = a * (bc - cb) + b * (ca - ac) + c * (ab - ba)
  const bound =
    (Math.abs(bc) + Math.abs(cb)) * a + (Math.abs(ca) + Math.abs(ac)) * b + (Math.abs(ab) + Math.abs(ba)) * c
  return Math.abs(det) > circleBound * bound ? det > 0 : incircle(ax, ay, bx, by, cx, cy, dx, dy) > 0
} // prettier-ignore
