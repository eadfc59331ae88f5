import type { Revision } from '../../detail'
import type { Point } from '../../geometry'
import { type Language, words } from '../../words'
import type { ViewMark } from '../mark'
import { heights, linesOf } from '../text/lettering'
import { line, rectangle, text } from './marks'
import { titleBlock_mm } from './paper'

const row_mm = 4.6
const captions = {
  index: words('Rev.', 'Änd.'),
  date: words('Date', 'Datum'),
  note: words('Change', 'Änderung'),
}

/** Where the columns of the table start; index, day, what changed. */
const columns_mm = { index: 0, date: 12, note: 36 }

/** A table shows the last of many revisions. Ours: more would take the room of the drawing. */
const mostShown = 4

/** How high the table is: as many rows as there are revisions, at least `least` to write on. */
export const revisionsHeight_mm = (revisions: readonly Revision[], least: number): number => {
  const rows = Math.min(mostShown, Math.max(least, revisions.length))
  return rows === 0 ? 0 : (rows + 1) * row_mm
}

/** The revisions over the title block, newest at the foot; rows without one are left to write on. */
export const revisionTable = (
  revisions: readonly Revision[],
  least: number,
  [x, y]: Point,
  language: Language,
): readonly ViewMark[] => {
  const height = revisionsHeight_mm(revisions, least)
  if (height === 0) return []
  const [width] = titleBlock_mm
  const shown = revisions.slice(-mostShown)
  const rows = Math.round(height / row_mm) - 1
  const foot = (at: number) => y + height - (at + 2) * row_mm
  return [
    rectangle('block', [x, y], [width, height]),
    ...Array.from({ length: rows }, (_, at) =>
      line('field', [x, foot(at) + row_mm], [x + width, foot(at) + row_mm]),
    ),
    ...[columns_mm.date, columns_mm.note].map(it => line('field', [x + it, y], [x + it, y + height])),
    ...(['index', 'date', 'note'] as const).map(it =>
      text(captions[it][language], [x + columns_mm[it] + 1.5, y + height - row_mm + 1.3], {
        height_mm: heights.caption_mm,
        faint: true,
      }),
    ),
    ...shown.flatMap((it, at) =>
      (['index', 'date', 'note'] as const).map(column =>
        text(shortNote(it[column], column), [x + columns_mm[column] + 1.5, foot(at) + 1.1], {
          bold: column === 'index',
        }),
      ),
    ),
  ]
}

/** What a field of the table holds; a longer text is refused when a sheet is written. */
export const revisionRoom_mm = {
  index: columns_mm.date - 3,
  date: columns_mm.note - columns_mm.date - 3,
  note: titleBlock_mm[0] - columns_mm.note - 3,
}

const shortNote = (it: string, column: keyof typeof revisionRoom_mm): string =>
  linesOf(it, revisionRoom_mm[column], heights.note_mm, column === 'index')[0] ?? ''
