import { frameOf, type Project, profileOf, wallDepths, wallOf, type ZonePlace } from '../../../core/detail'
import type { View as Placed } from '../../../core/drawing'
import type { Point } from '../../../core/geometry'
import type { Side } from '../../../core/kinds'
import type { View } from '../../editor'

/** A place on the screen, in CSS pixels from the upper left corner of the board. */
export type Px = readonly [x: number, y: number]

/**
 * How the section lies on the board: outside is left, inside right, in every cut. In head and jambs the wall is above
 * the joint, in the sill below it.
 */
export type Camera = {
  readonly px_mm: number
  /** model point in the middle of the board */
  readonly at: Point
  readonly width_px: number
  readonly height_px: number
  readonly toPx: (at: Point) => Px
  readonly toModel: (at: Px) => Point
  /** a move on the screen as a move in the model */
  readonly moved: (by: Px) => Point
  readonly turn: Pick<Placed, 'turn_deg' | 'mirrored'>
}

export type BoardSize = { readonly width_px: number; readonly height_px: number }

/** Pixels of a millimetre of paper: CSS has 96 to the inch. */
export const paper_px_mm = 96 / 25.4

/** From the whole wall to a tape that fills the board. *Ours*. */
export const zoomRange = { min: 0.2, max: 40 } as const

/** The camera of a view; what the view leaves open is fitted. */
export const cameraOf = (
  view: View,
  fit: { readonly at: Point; readonly zoom: number },
  size: BoardSize,
): Camera => camera({ at: view.at ?? fit.at, px_mm: view.zoom ?? fit.zoom, side: view.side }, size)

/** A camera at a point of the model. */
export const camera = (
  { at, px_mm, side }: { readonly at: Point; readonly px_mm: number; readonly side: Side },
  { width_px, height_px }: BoardSize,
): Camera => {
  const down = side === 'sill' ? -1 : 1
  return {
    px_mm,
    at,
    width_px,
    height_px,
    toPx: ([x, y]) => [width_px / 2 + (y - at[1]) * px_mm, height_px / 2 + down * (x - at[0]) * px_mm],
    toModel: ([px, py]) => [
      at[0] + (down * (py - height_px / 2)) / px_mm,
      at[1] + (px - width_px / 2) / px_mm,
    ],
    moved: ([dx, dy]) => [(down * dy) / px_mm, dx / px_mm],
    turn: { turn_deg: 270, mirrored: side === 'sill' },
  }
}

/** Whether two cameras show the same in the same places. */
export const isSameCamera = (a: Camera, b: Camera): boolean =>
  a.px_mm === b.px_mm &&
  a.at[0] === b.at[0] &&
  a.at[1] === b.at[1] &&
  a.width_px === b.width_px &&
  a.height_px === b.height_px &&
  a.turn.mirrored === b.turn.mirrored

/** What the fitted board shows along the wall: from the masonry to well into the glazing, in mm. *Ours*. */
const shown = { from_mm: -74, to_mm: 146 } as const
/** Room at both sides for sizes and words. */
const aside_px = 150

/** Shows the whole depth of the wall with what stands in it. */
export const fitted = (
  project: Project,
  place: ZonePlace,
  size: BoardSize,
): { readonly at: Point; readonly zoom: number } => {
  const { outer_mm, inner_mm } = wallDepths(wallOf(project, place.opening))
  const position = project.openings[place.opening]?.position_mm.value ?? 0
  const back = position + profileOf(frameOf(project, place.opening)).depth_mm
  const [from, to] = [Math.min(outer_mm, position), Math.max(inner_mm, back)]
  const zoom = Math.min(
    (size.width_px - aside_px) / (to - from),
    size.height_px / (shown.to_mm - shown.from_mm),
  )
  return { at: [(shown.from_mm + shown.to_mm) / 2, (from + to) / 2], zoom: Math.max(zoomRange.min, zoom) }
}

/** Zooms so that the model point under the pointer stays under it. */
export const zoomedAt = (
  camera: Camera,
  pointer: Px,
  factor: number,
): Pick<Required<View>, 'at' | 'zoom'> => {
  const zoom = Math.min(zoomRange.max, Math.max(zoomRange.min, camera.px_mm * factor))
  const fixed = camera.toModel(pointer)
  const share = camera.px_mm / zoom
  return {
    zoom,
    at: [fixed[0] + (camera.at[0] - fixed[0]) * share, fixed[1] + (camera.at[1] - fixed[1]) * share],
  }
}
