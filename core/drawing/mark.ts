import type { FieldAt } from '../detail'
import type { Id, Outline, Point } from '../geometry'
import type { Language, Some, Words } from '../words'

type Drawn = { readonly layer: Layer; readonly part?: Id }
type Ink = Drawn & { readonly pen: Pen }

/** Groups of a drawing that can be shown or hidden together; a DXF makes layers of them. */
export const layers = [
  'fabric', 'parts', 'sealing', 'hatch', 'tint', 'heat', 'seen', 'sizes', 'numbers', 'words', 'isotherms', 'sheet',
] as const // prettier-ignore
export type Layer = (typeof layers)[number]

/** Pens by use; their widths and line types on paper are in the style. */
export const pens = [
  'cut', 'cut-small', 'light', 'seen', 'hidden', 'axis', 'break', 'hatch', 'size', 'stroke', 'leader',
  'membrane-inner', 'membrane-outer', 'membrane-water', 'sheet', 'block', 'field', 'text', 'faint',
  'isotherm', 'isotherm-strong', 'isotherm-named', 'curve',
] as const // prettier-ignore
export type Pen = (typeof pens)[number]

/**
 * Which hatch an area has, from where, and turned how far. The origin is fixed to the part, so the hatch does not swim.
 * `size` is the part's extent along and across its own axis: rows are divided evenly into it, rings are centred off it.
 * Neighbours of one material are told apart: the second is mirrored, the third closer.
 */
export type Hatching = {
  readonly key: string
  readonly origin: Point
  readonly turn_deg: number
  readonly size?: Point
  readonly mirrored?: true
  readonly closer?: true
  /** drawn however thin its area is: the field of a legend */
  readonly always?: true
}

/**
 * What words are to a reader that does not see where they stand: a heading by its level, or a cell of a table. Words of one
 * heading or cell stand behind each other and have `row` and `column` in common; rows that follow each other are one table.
 */
export type ReadAs = {
  readonly as: 'H1' | 'H2' | 'H3' | 'TH' | 'TD'
  readonly row: number
  readonly column: number
}

/**
 * A mark that may stand on a sheet (in paper mm) or in a view (its places in model mm).
 * Pens, text heights and hatches are paper millimetres in both.
 */
export type ViewMark =
  | (Ink & { readonly kind: 'path'; readonly points: readonly Point[]; readonly closed: boolean })
  | (Drawn & {
      readonly kind: 'area'
      readonly outline: Outline
      readonly holes: readonly Outline[]
      readonly hatch?: Hatching
      readonly tint?: string
    })
  | (Ink & {
      readonly kind: 'text'
      readonly at: Point
      readonly words: string
      readonly height_mm: number
      /** as it is read on the sheet: a view turns its places, never its words */
      readonly turn_deg: number
      readonly anchor: 'start' | 'middle' | 'end'
      readonly bold?: true
      readonly read?: ReadAs
    })
  | (Ink & {
      readonly kind: 'dimension'
      readonly from: Point
      readonly to: Point
      /** a point of the dimension line, which runs in the direction from `from` to `to` */
      readonly line: Point
      readonly words: string
      /** middle of the foot of the words */
      readonly text: Point
      readonly field?: FieldAt
    })
  | (Ink & {
      readonly kind: 'leader'
      readonly path: Some<Point>
      readonly end: 'dot' | 'arrow' | 'none'
      /** stands in a circle that the path ends at */
      readonly number: string
    })
  | (Drawn & {
      readonly kind: 'symbol'
      readonly name: string
      readonly at: Point
      readonly values: Readonly<Record<string, string>>
    })
  | (Drawn & {
      readonly kind: 'picture'
      readonly at: Point
      readonly size: Point
      readonly jpeg: Uint8Array
      readonly says: Words
    })

/** A window into the model: marks in model mm at a scale, shown on paper with its lower left corner at `at`. */
export type View = Drawn & {
  readonly kind: 'view'
  /** lower left and upper right corner of what is shown, in model mm */
  readonly window: readonly [Point, Point]
  readonly at: Point
  /** paper mm per model mm: 0.5 is 1:2 */
  readonly scale: number
  /** turns the model on the sheet, counter-clockwise */
  readonly turn_deg: 0 | 90 | 180 | 270
  readonly mirrored: boolean
  readonly marks: readonly ViewMark[]
  /** a part of the view before it, drawn once more at a larger scale */
  readonly enlarged?: true
}

export type Mark = ViewMark | View

/** Tinted areas and coloured lines, or the black set that any site printer and copier keeps. */
export type Palette = 'colour' | 'black'

/**
 * A list of marks on paper: x to the right, y upwards, in mm from the lower left corner.
 * `materials` names what a part is made of, for formats that keep it; `says` describes the picture to who cannot see it.
 */
export type Drawing = {
  readonly size_mm: Point
  readonly language: Language
  readonly title: string
  readonly says: string
  readonly palette: Palette
  readonly materials: ReadonlyMap<Id, Id>
  readonly marks: readonly Mark[]
}

/** One writer for every kind of mark: a format that forgets a kind does not compile. */
export type Writers<Out> = { readonly [K in Mark['kind']]: (mark: Extract<Mark, { kind: K }>) => Out }
