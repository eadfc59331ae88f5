import { materialOf, type Project } from '../../../core/detail'
import { drawHatch, hatchOf } from '../../../core/drawing'
import type { Id, Point } from '../../../core/geometry'
import { onDark } from '../board/dark'
import { type HatchPaths, hatchPaths } from './hatch-paths'

/** A swatch as SVG paths in pixels of 18 × 13. */
export type SwatchLook = HatchPaths & { readonly tint: string }

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
  const hatched = drawHatch(
    { outline, holes: [] },
    { key, origin: [0, 0], turn_deg: 0, size: [width_mm, height_mm] },
    1,
  )
  const tint = hatched.solid ?? hatch.tint
  return {
    tint: isDark ? onDark(tint) : tint,
    ...hatchPaths(hatched, { high_mm: height_mm, unit_mm: px_mm }),
  }
}
