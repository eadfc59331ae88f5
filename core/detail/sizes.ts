import type { Side } from '../kinds'
import { frameOf, jointOf, openingOf, profileOf } from './find'
import type { Opening, Project } from './model'
import type { Id } from '../geometry'

/** A width and a height in mm. */
export type Size = { readonly width_mm: number; readonly height_mm: number }

/** The three sizes of an opening that are never mixed up, each under its own name. */
export type Sizes = {
  /** clear opening in the wall: the smallest that was measured, else the frame and its planned joints */
  readonly opening: Size
  readonly isMeasured: boolean
  /** outer edges of the frame */
  readonly frame: Size
  /** what is glass: inside the edges of sash and beads */
  readonly daylight: Size
  /** the frame that fits the smallest opening with the planned joint on every side */
  readonly proposed: Size
}

export const sizesOf = (project: Project, id: Id): Sizes => {
  const opening = openingOf(project, id)
  const joints = (...sides: readonly Side[]): number =>
    sides.reduce((sum, side) => sum + widestPlanned_mm(project, opening, side), 0)
  const frame = { width_mm: opening.width_mm.value, height_mm: opening.height_mm.value }
  const across_mm = joints('left', 'right')
  // a box takes its height out of what the frame may have
  const upright_mm = joints('head', 'sill') + (opening.box?.height_mm.value ?? 0)
  const measuredWidth = smallest(opening.survey?.widths_mm)
  const measuredHeight = smallest(opening.survey?.heights_mm)
  const clear = {
    width_mm: measuredWidth ?? frame.width_mm + across_mm,
    height_mm: measuredHeight ?? frame.height_mm + upright_mm,
  }
  const edge_mm = daylightEdge_mm(project, id)
  return {
    opening: clear,
    isMeasured: measuredWidth !== undefined || measuredHeight !== undefined,
    frame,
    daylight: { width_mm: frame.width_mm - 2 * edge_mm, height_mm: frame.height_mm - 2 * edge_mm },
    proposed: { width_mm: clear.width_mm - across_mm, height_mm: clear.height_mm - upright_mm },
  }
}

const widestPlanned_mm = (project: Project, opening: Opening, side: Side): number =>
  Math.max(...opening.sides[side].map(zone => jointOf(project, zone).planned_mm.value))

const smallest = (
  sizes: Readonly<Record<string, { readonly value: number } | undefined>> | undefined,
): number | undefined => {
  const values = Object.values(sizes ?? {}).flatMap(it => (it ? [it.value] : []))
  return values.length === 0 ? undefined : Math.min(...values)
}

/** From the outer edge of the frame to where glass shows: the edge of frame, sash and bead. */
const daylightEdge_mm = (project: Project, opening: Id): number => {
  const opaque = profileOf(frameOf(project, opening)).bodies.filter(
    it => it.member !== 'glazing' && it.member !== 'gasket',
  )
  return Math.max(...opaque.flatMap(it => it.outline.map(([u]) => u)))
}

/** How far a measured opening is off its square: the spread of its sizes, and the difference of its diagonals. */
export type OutOfSquare = {
  readonly widths_mm: number | undefined
  readonly heights_mm: number | undefined
  /** difference of the diagonals, and the same per metre of the smaller side's offset at the longer one */
  readonly diagonals_mm: number | undefined
  readonly slope_mm_m: number | undefined
}

export const outOfSquare = (opening: Opening): OutOfSquare => {
  const spread = (
    sizes: Readonly<Record<string, { readonly value: number } | undefined>> | undefined,
  ): number | undefined => {
    const values = Object.values(sizes ?? {}).flatMap(it => (it ? [it.value] : []))
    return values.length < 2 ? undefined : Math.max(...values) - Math.min(...values)
  }
  const { rising, falling } = opening.survey?.diagonals_mm ?? {}
  const width_mm = smallest(opening.survey?.widths_mm)
  const height_mm = smallest(opening.survey?.heights_mm)
  const difference = rising && falling ? Math.abs(rising.value - falling.value) : undefined
  return {
    widths_mm: spread(opening.survey?.widths_mm),
    heights_mm: spread(opening.survey?.heights_mm),
    diagonals_mm: difference,
    // A rectangle w × h sheared by s has diagonals whose squares differ by 4 w s: s = (d₁² − d₂²) / 4w, over its height.
    slope_mm_m:
      rising && falling && width_mm !== undefined && height_mm !== undefined
        ? (1000 * Math.abs(rising.value ** 2 - falling.value ** 2)) / (4 * width_mm * height_mm)
        : undefined,
  }
}
