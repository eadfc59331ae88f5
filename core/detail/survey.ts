import type { Side } from '../kinds'
import type { Stated } from '../units'

/** Where along an opening a width is taken, and where a height. */
export const widthPlaces = ['top', 'middle', 'bottom'] as const
export const heightPlaces = ['left', 'centre', 'right'] as const
export const diagonals = ['rising', 'falling'] as const

/** How far a flank lies off its plumb line (a jamb) or level (head, sill) at a place along the side: into the opening positive. */
export type Offset = { readonly side: Side; readonly at_mm: number; readonly offset_mm: number }

/** A joint as it was measured, where it is narrowest and where it is widest. */
export type MeasuredGap = { readonly narrowest: Stated<number>; readonly widest: Stated<number> }

/** What was measured on site. Nothing of it is ever written by a remedy. */
export type Survey = {
  readonly widths_mm?: { readonly [K in (typeof widthPlaces)[number]]?: Stated<number> }
  readonly heights_mm?: { readonly [K in (typeof heightPlaces)[number]]?: Stated<number> }
  readonly diagonals_mm?: { readonly [K in (typeof diagonals)[number]]?: Stated<number> }
  readonly offsets?: readonly Offset[]
  /** joints measured on the frame as it stands, narrowest and widest of each side */
  readonly joints_mm?: {
    readonly [K in Side]?: MeasuredGap
  }
  /** the gap between the nib of a rebate and the frame, measured the same way */
  readonly rebates_mm?: { readonly [K in Side]?: MeasuredGap }
}
