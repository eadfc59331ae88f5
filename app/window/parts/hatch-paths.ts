import type { HatchLines } from '../../../core/drawing'

/** A hatch as two SVG paths: what is stroked, and what is filled. */
export type HatchPaths = { readonly lines: string; readonly dots: string }

/** The paths of a hatch that was drawn on paper of this height, y upwards, in units of `unit_mm` to a paper millimetre. */
export const hatchPaths = (
  { lines, rings, dots }: HatchLines,
  paper: { readonly high_mm: number; readonly unit_mm: number },
): HatchPaths => {
  const x = (mm: number): string => (mm * paper.unit_mm).toFixed(1)
  const y = (mm: number): string => ((paper.high_mm - mm) * paper.unit_mm).toFixed(1)
  const polyline = (flat: readonly number[]): string => {
    let path = ''
    for (let at = 0; at + 1 < flat.length; at += 2)
      path += `${at === 0 ? 'M' : 'L'}${x(flat[at] ?? 0)} ${y(flat[at + 1] ?? 0)}`
    return path
  }
  const circles = (flat: readonly number[]): string => {
    let path = ''
    for (let at = 0; at + 2 < flat.length; at += 3) {
      const [cx, cy, r] = [flat[at] ?? 0, flat[at + 1] ?? 0, flat[at + 2] ?? 0]
      path += `M${x(cx - r)} ${y(cy)}a${x(r)} ${x(r)} 0 1 0 ${x(2 * r)} 0a${x(r)} ${x(r)} 0 1 0 ${x(-2 * r)} 0`
    }
    return path
  }
  return { lines: lines.map(polyline).join('') + circles(rings), dots: circles(dots) }
}
