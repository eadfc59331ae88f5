import type { Mark } from '../mark'
import { line, text, underWords_mm } from '../sheet/marks'
import { a4 } from '../sheet/paper'
import type { Status } from '../style/verdicts'
import { heights, linesOf as brokenAt, textWidth_mm } from '../text/lettering'
import type { Piece } from './pages'

const width_mm = a4.frame[1][0] - a4.frame[0][0]
/** From one line to the next, and what stands above a heading. Ours. */
const pitch_mm = 4
const aboveHeading_mm = 4.5

/** Lines of words; a sign with an index is written as one word, as on the sheets. */
const linesOf = (words: string, width: number, height_mm: number, bold = false): readonly string[] =>
  brokenAt(words.replaceAll('s_d', 'sd'), width, height_mm, bold)

/** A heading over a line; it keeps so many pieces with it. */
export const headingPiece = (words: string, keeps: number): Piece => ({
  height_mm: 8,
  keeps,
  above_mm: aboveHeading_mm,
  draw: ([x, y]) => [
    text(words, [x, y - 4.5], {
      height_mm: heights.subtitle_mm,
      bold: true,
      read: { as: 'H2', row: y, column: 0 },
    }),
    line('field', [x, y - 6.2], [x + width_mm, y - 6.2]),
  ],
})

type RowOf = {
  readonly label: string
  readonly text: string
  readonly number?: string
  readonly labelWidth_mm?: number
  /** how wide the column of numbers is at the least, so that what stands behind them is one column too */
  readonly numberWidth_mm?: number
  readonly indent_mm?: number
  readonly bold?: boolean
  /** an assumed value stands on a dashed line */
  readonly dashed?: boolean
  readonly keeps?: number
  readonly above_mm?: number
}

/** A label at the left, a number before the words if there is one, and the words in as many lines as they need. */
export const rowPiece = (it: RowOf): Piece => {
  const indent = it.indent_mm ?? 0
  const alone = it.text === '' && it.number === undefined
  const labelled = alone ? width_mm - indent : (it.labelWidth_mm ?? 36)
  const named = linesOf(it.label, labelled - 2, heights.note_mm, it.bold === true)
  const numberWidth =
    it.number === undefined
      ? 0
      : Math.max(it.numberWidth_mm ?? 26, textWidth_mm(it.number, heights.note_mm) + 4)
  const at = indent + labelled
  const lines = alone ? [] : linesOf(it.text, width_mm - at - numberWidth, heights.note_mm)
  const count = Math.max(1, named.length, lines.length)
  return {
    height_mm: count * pitch_mm,
    ...(it.keeps !== undefined && { keeps: it.keeps }),
    ...(it.above_mm !== undefined && { above_mm: it.above_mm }),
    draw: ([x, y]) => {
      const foot = (row: number) => y - 3 - row * pitch_mm
      const number = it.number ?? ''
      return [
        ...named.map((words, row) =>
          text(words, [x + indent, foot(row)], {
            bold: it.bold === true,
            faint: it.bold !== true && !alone,
            read: { as: it.bold === true ? 'H3' : 'TH', row: y, column: 0 },
          }),
        ),
        ...(number === ''
          ? []
          : [text(number, [x + at, foot(0)], { read: { as: 'TD', row: y, column: 1 } })]),
        ...lines.map((words, row) =>
          text(words, [x + at + numberWidth, foot(row)], { read: { as: 'TD', row: y, column: 2 } }),
        ),
        ...(it.dashed && number !== ''
          ? [
              line(
                'hidden',
                [x + at, foot(0) - underWords_mm],
                [x + at + textWidth_mm(number, heights.note_mm), foot(0) - underWords_mm],
              ),
            ]
          : []),
      ]
    },
  }
}

/** The head of a finding: mark, word and title, with the sides that it stands at. */
export const statusPiece = (it: {
  readonly status: Status
  readonly word: string
  readonly title: string
  readonly where: string
  readonly keeps: number
}): Piece => {
  const wordAt = 8
  const titleAt = 34
  const whereWidth = it.where === '' ? 0 : textWidth_mm(it.where, heights.note_mm) + 4
  const lines = linesOf(it.title, width_mm - titleAt - whereWidth, heights.note_mm, true)
  return {
    height_mm: Math.max(6, lines.length * pitch_mm + 2),
    keeps: it.keeps,
    above_mm: 2.5,
    draw: ([x, y]): readonly Mark[] => {
      const read = { as: 'H3', row: y, column: 0 } as const
      return [
        { kind: 'symbol', layer: 'words', name: `status-${it.status}`, at: [x + 2.8, y - 3], values: {} },
        text(it.word, [x + wordAt, y - 4.2], { bold: true, read }),
        ...lines.map((words, row) =>
          text(words, [x + titleAt, y - 4.2 - row * pitch_mm], { bold: true, read }),
        ),
        ...(it.where === ''
          ? []
          : [text(it.where, [x + width_mm, y - 4.2], { anchor: 'end', faint: true, read })]),
      ]
    },
  }
}
