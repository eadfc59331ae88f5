import { materialOf, type Project } from '../../../core/detail'
import { drawHatch, hatchOf } from '../../../core/drawing'
import type { Id, Point } from '../../../core/geometry'
import { onDark } from '../board/dark'

/** A swatch as SVG paths in pixels of 18 × 13. */
export type SwatchLook = { readonly tint: string; readonly lines: string; readonly dots: string }

/** The hatch is drawn on a piece of paper of this size, then shrunk: at its own pitch too little of it would show. */
const [width_mm, height_mm] = [9, 6.5]
const px_mm = 18 / width_mm

const known = new Map<string, SwatchLook>()

/** How a material looks in small. Each is drawn once. */
export const swatchOf = (project: Project, material: Id, isDark: boolean): SwatchLook => {
  const key = materialOf(project, material)?.hatch ?? 'air_cavity'
  const name = `${key} ${isDark}`
  const found = known.get(name) ?? drawn(key, isDark)
  known.set(name, found)
  return found
}

const outline: readonly Point[] = [
  [0, 0],
  [width_mm, 0],
  [width_mm, height_mm],
  [0, height_mm],
]

const drawn = (key: string, isDark: boolean): SwatchLook => {
  const hatch = hatchOf(key)
  const { lines, rings, dots, solid } = drawHatch(
    { outline, holes: [] },
    { key, origin: [0, 0], turn_deg: 0, size: [width_mm, height_mm] },
    1,
  )
  const tint = solid ?? hatch.tint
  return {
    tint: isDark ? onDark(tint) : tint,
    lines: lines.map(polyline).join('') + circles(rings),
    dots: circles(dots),
  }
}

const px = (mm: number): string => (mm * px_mm).toFixed(1)

const polyline = (flat: readonly number[]): string => {
  let path = ''
  for (let at = 0; at + 1 < flat.length; at += 2)
    path += `${at === 0 ? 'M' : 'L'}${px(flat[at] ?? 0)} ${px(height_mm - (flat[at + 1] ?? 0))}`
  return path
}

const circles = (flat: readonly number[]): string => {
  let path = ''
  for (let at = 0; at + 2 < flat.length; at += 3) {
    const [x, y, r] = [flat[at] ?? 0, flat[at + 1] ?? 0, px(flat[at + 2] ?? 0)]
    path += `M${px(x - (flat[at + 2] ?? 0))} ${px(height_mm - y)}a${r} ${r} 0 1 0 ${px(2 * (flat[at + 2] ?? 0))} 0a${r} ${r} 0 1 0 ${px(-2 * (flat[at + 2] ?? 0))} 0`
  }
  return path
}
