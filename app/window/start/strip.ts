import { layerDepths, type Wall } from '../../../core/detail'
import { drawHatch, hatchOf } from '../../../core/drawing'
import type { Point } from '../../../core/geometry'
import { material } from '../../../core/materials'
import { onDark } from '../board/dark'
import { type HatchPaths, hatchPaths } from '../parts/hatch-paths'

/** A layer of the strip, in units of the picture from its left edge: its tint and its hatch. */
export type StripLayer = HatchPaths & { readonly x: number; readonly width: number; readonly tint: string }

/** A wall in small, outside at the left, and where a frame stands in it. */
export type Strip = {
  readonly layers: readonly StripLayer[]
  readonly frame: { readonly x: number; readonly width: number; readonly tint: string }
}

/** Paper mm per mm of the wall: 1 to 5. */
export const stripScale = 0.2
/** How high the strip is on paper, and how many units of the picture a paper mm has. */
export const stripHeight = 9
export const stripUnit = 4

/** Units of the picture per mm of the wall. */
export const unit_mm = stripScale * stripUnit

/** The wall and its frame as they are drawn on the card: all cards have one scale. */
export const stripOf = (
  wall: Wall,
  frame: { readonly position_mm: number; readonly depth_mm: number },
  isDark: boolean,
): Strip => {
  const layers = layerDepths(wall)
  const outer_mm = layers[0]?.from_mm ?? 0
  const x = (depth_mm: number): number => (depth_mm - outer_mm) * unit_mm
  return {
    layers: layers.map(({ layer, from_mm, to_mm }) => {
      const key = material(layer.material)?.hatch ?? 'air_cavity'
      return { x: x(from_mm), width: (to_mm - from_mm) * unit_mm, ...layerLook(key, to_mm - from_mm, isDark) }
    }),
    frame: {
      x: x(frame.position_mm),
      width: frame.depth_mm * unit_mm,
      tint: tintOf(hatchOf(timber).tint, isDark),
    },
  }
}

const tintOf = (tint: string, isDark: boolean): string => (isDark ? onDark(tint) : tint)

/** What the frame that one begins with is made of. */
const timber = material('softwood')?.hatch ?? 'air_cavity'

const layerLook = (
  key: string,
  width_mm: number,
  isDark: boolean,
): HatchPaths & { readonly tint: string } => {
  const high_mm = stripHeight / stripScale
  const outline: readonly Point[] = [
    [0, 0],
    [width_mm, 0],
    [width_mm, high_mm],
    [0, high_mm],
  ]
  // A layer lies along its wall, which is upright here.
  const hatched = drawHatch(
    { outline, holes: [] },
    { key, origin: [0, 0], turn_deg: 90, size: [high_mm, width_mm] },
    stripScale,
  )
  const tint = hatched.solid ?? hatchOf(key).tint
  return {
    tint: tintOf(tint, isDark),
    ...hatchPaths(hatched, { high_mm: stripHeight, unit_mm: stripUnit }),
  }
}
