import type { Project, ZonePlace } from '../../../core/detail'
import {
  type Column,
  drawSection,
  type Slots,
  standInWindow,
  zoneLook,
  type DrawnSection,
} from '../../../core/drawing'
import type { Point } from '../../../core/geometry'
import type { Section } from '../../../core/section'
import type { Language } from '../../../core/words'
import { type Camera, paper_px_mm } from './camera'
import { inkParts, type ViewInk } from './reuse'

/** What is painted: the ink, and the view it came from. */
export type BoardDrawing = DrawnSection & { readonly ink: ViewInk; readonly px_mm: number }

export type BoardLook = {
  readonly camera: Camera
  readonly language: Language
  readonly numbers: boolean
  /** slots of the numbers before, while something moves */
  readonly kept?: Slots
  /** the drawing before: what has not changed keeps its ink */
  readonly before?: BoardDrawing | undefined
}

/** How much more than the board is drawn on each side, so that a short pan shows no bare paper. */
const beyond = 0.35

/** Draws the section for the board: the visible part and some beyond it, at the scale on the screen. */
export const drawBoard = (
  project: Project,
  place: ZonePlace,
  section: Section,
  { camera, language, numbers, kept, before }: BoardLook,
): BoardDrawing => {
  const scale = camera.px_mm / paper_px_mm
  const isMirrored = place.side === 'sill'
  const { view, layout } = drawSection(section, {
    ...zoneLook(project, place, language),
    // What covers the board goes on doing so: parts that stand still on the paper then keep their ink.
    window: before && covers(before, camera) ? before.view.window : windowOf(camera),
    scale,
    at: [0, 0],
    ...standInWindow,
    mirrored: isMirrored,
    show: { sizes: false, numbers },
    ...(numbers && { columns: [columnOf(camera)] }),
    ...(numbers && section.levels && { near: seenBy(camera) }),
    ...(kept && { kept }),
  })
  return { view, layout, ink: inkParts(view, language, before?.ink), px_mm: camera.px_mm }
}

const windowOf = ({ toModel, width_px, height_px }: Camera): readonly [Point, Point] => {
  const [dx, dy] = [width_px * beyond, height_px * beyond]
  const [a, b] = [toModel([-dx, -dy]), toModel([width_px + dx, height_px + dy])]
  return [
    [Math.min(a[0], b[0]), Math.min(a[1], b[1])],
    [Math.max(a[0], b[0]), Math.max(a[1], b[1])],
  ]
}

/** What the board shows, clear of the numbers at its right edge. */
const seenBy = ({ toModel, width_px, height_px }: Camera): readonly [Point, Point] => {
  const [a, b] = [toModel([0, 0]), toModel([width_px - 90, height_px])]
  return [
    [Math.min(a[0], b[0]), Math.min(a[1], b[1])],
    [Math.max(a[0], b[0]), Math.max(a[1], b[1])],
  ]
}

/** Numbers stand in a column at the right edge of the board, in paper mm of the drawn window. */
const columnOf = ({ width_px, height_px }: Camera): Column => ({
  side: 'right',
  x: (width_px * (1 + beyond) - 60) / paper_px_mm,
  low: (height_px * beyond + 50) / paper_px_mm,
  high: (height_px * (1 + beyond) - 20) / paper_px_mm,
  pitch_mm: 6.5,
})

/** Whether a drawing still covers what the camera shows. */
export const covers = (drawn: BoardDrawing, camera: Camera): boolean => {
  if (drawn.px_mm !== camera.px_mm) return false
  const [low, high] = drawn.view.window
  return (
    [
      [0, 0],
      [camera.width_px, camera.height_px],
    ] as const
  ).every(px => {
    const [x, y] = camera.toModel(px)
    return low[0] <= x && x <= high[0] && low[1] <= y && y <= high[1]
  })
}

/**
 * The outlines of a part as it is drawn: what is traced when it is selected, or left behind when it moves.
 * Chambers inside a body are no outlines of it.
 */
export const outlinesOf = (
  { ink }: Pick<BoardDrawing, 'ink'>,
  parts: readonly string[],
): readonly (readonly Point[])[] =>
  parts
    .flatMap(part => ink.parts.get(part)?.marks ?? [])
    .flatMap(mark => {
      if (mark.kind !== 'path' || mark.pen === 'axis') return []
      if (!mark.closed) return [mark.points]
      const [first] = mark.points
      return first && turns(mark.points) > 0 ? [[...mark.points, first]] : []
    })

/** Twice the area that a line goes round, negative where it goes round clockwise, as a hole does. */
const turns = (points: readonly Point[]): number =>
  points.reduce((sum, [x, y], at) => {
    const [toX, toY] = points[(at + 1) % points.length] ?? [x, y]
    return sum + x * toY - toX * y
  }, 0)
