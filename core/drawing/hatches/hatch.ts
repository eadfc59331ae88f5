import type { Point } from '../../geometry'
import type { Words } from '../../words'
import type { Motif } from './motifs/motif'

/** Parallel lines in paper mm: their angle to the part's own axis, distance, and dashes [on, off …]. */
export type Family = {
  readonly angle_deg: number
  readonly pitch_mm: number
  /** how far the first line lies from the origin, square to the lines */
  readonly offset_mm?: number
  readonly dash_mm?: readonly number[]
  /** alternate rows start later by this much */
  readonly stagger_mm?: number
}

/** How an area of a kind of material is drawn. All lengths are paper millimetres: the same at every scale. */
export type Hatch = {
  readonly key: string
  readonly name: Words
  readonly tint: string
  /** fills the whole area instead of lines */
  readonly solid?: string
  readonly families?: readonly Family[]
  readonly motif?: Motif
  /** follows the long side of its part instead of the wall */
  readonly along?: true
  /** bodies thinner than this on paper get the tint alone */
  readonly least_mm: number
}

/** Lower left and upper right corner of what has to be drawn, in the axes of the area: what lies outside may be left out. */
export type Seen = readonly [low: Point, high: Point]

/** A hatch in place: polylines as flat coordinates x, y, x, y …; rings and dots as x, y, radius …; paper mm. */
export type HatchLines = {
  readonly lines: number[][]
  readonly rings: number[]
  readonly dots: number[]
}
