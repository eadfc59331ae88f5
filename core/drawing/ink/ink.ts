import type { Id, Point } from '../../geometry'
import type { Words } from '../../words'
import type { Layer, Pen, ReadAs } from '../mark'

/** A polyline as flat coordinates x, y, x, y … in paper mm. */
export type Flat = readonly number[]

/** What painters and writers put on paper, in paper mm, y upwards. Later ink covers earlier ink. */
export type Ink =
  | {
      readonly kind: 'fill'
      readonly as: FillUse
      readonly colour: string
      /** outline and holes: inside is what an odd number of them surrounds */
      readonly loops: readonly Flat[]
    }
  | (Line & { readonly kind: 'stroke'; readonly lines: readonly Flat[]; readonly closed: boolean })
  /** x, y, radius of each */
  | (Line & { readonly kind: 'rings'; readonly circles: Flat })
  | {
      readonly kind: 'discs'
      readonly as: FillUse
      readonly pen: Pen
      readonly colour: string
      readonly circles: Flat
    }
  | Letters
  | {
      readonly kind: 'picture'
      readonly at: Point
      readonly size: Point
      readonly jpeg: Uint8Array
      readonly says: Words
    }

/** A line of words: `at` is its anchor on the foot of the letters. */
export type Letters = {
  readonly kind: 'letters'
  readonly at: Point
  readonly words: string
  readonly height_mm: number
  readonly turn_deg: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly bold: boolean
  readonly colour: string
  readonly read?: ReadAs
}

type Line = {
  readonly pen: Pen
  readonly width_mm: number
  readonly dash_mm: readonly number[]
  readonly colour: string
}

/**
 * Why something is filled, so that a dark window can choose its own colours: `clear` hides what lies below, `heat` is a
 * band of a temperature field.
 */
export type FillUse = 'tint' | 'solid' | 'clear' | 'mark' | 'heat'

/** The ink of one part on one layer: a board may keep its paths and repaint it alone. */
export type InkGroup = { readonly layer: Layer; readonly part?: Id; readonly inks: readonly Ink[] }

/** From the bottom of the paper to the top. */
export const paintOrder: readonly Layer[] = [
  'tint', 'hatch', 'heat', 'seen', 'fabric', 'parts', 'sealing', 'isotherms', 'sheet', 'sizes', 'numbers', 'words',
] // prettier-ignore
