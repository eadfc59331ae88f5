import type { Outline, Point } from '../../geometry'
import type { Pen, ReadAs, ViewMark } from '../mark'
import { heights } from '../text/lettering'

/** A line on the sheet. */
export const line = (pen: Pen, ...points: readonly Point[]): ViewMark => ({
  kind: 'path',
  layer: 'sheet',
  pen,
  points,
  closed: false,
})

/** A rectangle on the sheet, from its lower left corner. */
export const rectangle = (pen: Pen, [x, y]: Point, [width, height]: Point): ViewMark => ({
  kind: 'path',
  layer: 'sheet',
  pen,
  points: boxOf([x, y], [width, height]),
  closed: true,
})

export const boxOf = ([x, y]: Point, [width, height]: Point): Outline => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
]

type Lettering = {
  readonly height_mm?: number
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly turn_deg?: number
  readonly bold?: boolean
  readonly faint?: boolean
  readonly read?: ReadAs
}

/** A line under words clears the tails of their letters, which reach 0.74 mm down. Ours. */
export const underWords_mm = 1.05

/** A line of words on the sheet; its place is on the foot of the letters. */
export const text = (words: string, at: Point, how: Lettering = {}): ViewMark => ({
  kind: 'text',
  layer: 'words',
  pen: how.faint ? 'faint' : 'text',
  at,
  words,
  height_mm: how.height_mm ?? heights.note_mm,
  turn_deg: how.turn_deg ?? 0,
  anchor: how.anchor ?? 'start',
  ...(how.bold && { bold: true }),
  ...(how.read && { read: how.read }),
})
