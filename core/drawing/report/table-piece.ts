import type { Table } from '../../study'
import type { Language } from '../../words'
import { line, text } from '../sheet/marks'
import { a4 } from '../sheet/paper'
import { heights, linesOf, textWidth_mm } from '../text/lettering'
import type { Piece } from './pages'
import { headingPiece, rowPiece } from './pieces'

const width_mm = a4.frame[1][0] - a4.frame[0][0]
/** From one line to the next, and between two columns. Ours. */
const pitch_mm = 4
const between_mm = 5
const underHead_mm = 1.2
/** A name is broken where the numbers leave no more room than this: ours. */
const leastName_mm = 50

/** A table as pieces: its title, its head with the first row, each row, its notes. */
export const tablePieces = ({ title, head, rows, notes }: Table, language: Language): readonly Piece[] => {
  const numbers_mm = head.map((_, column) =>
    column === 0 ? 0 : Math.max(0, ...[head, ...rows].map(row => widthOf(row[column]?.[language] ?? ''))),
  )
  const taken_mm = numbers_mm.reduce((sum, it) => sum + (it > 0 ? it + between_mm : 0), 0)
  const name_mm = Math.max(leastName_mm, width_mm - taken_mm)
  const widest_mm = Math.max(...[head, ...rows].map(row => widthOf(row[0]?.[language] ?? '')))
  const shown_mm = Math.min(name_mm, widest_mm)
  const rowOf = (row: (typeof rows)[number], isHead: boolean): Piece => {
    const named = linesOf(written(row[0]?.[language] ?? ''), shown_mm, heights.note_mm)
    return {
      height_mm: Math.max(1, named.length) * pitch_mm + (isHead ? underHead_mm : 0),
      ...(isHead && { keeps: Math.min(2, rows.length) }),
      draw: ([x, y]) => {
        let right = x + shown_mm
        return [
          ...named.map((words, at) =>
            text(words, [x, y - 3 - at * pitch_mm], {
              faint: isHead,
              read: { as: 'TH', row: y, column: 0 },
            }),
          ),
          ...row.slice(1).map((cell, at) => {
            right += (numbers_mm[at + 1] ?? 0) > 0 ? (numbers_mm[at + 1] ?? 0) + between_mm : 0
            return text(written(cell[language]), [right, y - 3], {
              anchor: 'end',
              faint: isHead,
              read: { as: isHead ? 'TH' : 'TD', row: y, column: at + 1 },
            })
          }),
          ...(isHead ? [line('field', [x, y - pitch_mm - 0.2], [right, y - pitch_mm - 0.2])] : []),
        ]
      },
    }
  }
  return [
    headingPiece(title[language], rows.length === 0 ? 1 : 3),
    ...(rows.length === 0 ? [] : [rowOf(head, true), ...rows.map(row => rowOf(row, false))]),
    ...notes.map((it, at) => rowPiece({ label: '–', text: it[language], labelWidth_mm: 5, ...(at === 0 && { above_mm: 1.2 }) })), // prettier-ignore
  ]
}

/** A sign with an index is written as one word, as on the sheets. */
const written = (it: string): string => it.replaceAll('s_d', 'sd')

const widthOf = (it: string): number => textWidth_mm(written(it), heights.note_mm)
