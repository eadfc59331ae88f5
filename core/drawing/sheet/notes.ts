import type { Point } from '../../geometry'
import { type Language, type Words, words } from '../../words'
import type { ViewMark } from '../mark'
import { heights, linesOf } from '../text/lettering'
import { notePitch_mm } from './legend'
import { line, text } from './marks'

/** A heading and its notes; `assumed` notes carry a dashed line, as assumed values do everywhere. */
export type Notes = { readonly heading: Words; readonly notes: readonly Words[]; readonly assumed?: true }

/** What stands on every sheet, because a drawing cannot say it by itself. */
export const cautions: readonly Words[] = [
  words('Measure on site before parts are cut or ordered.', 'Vor Zuschnitt und Bestellung am Bau messen.'),
  words('Membranes are drawn thicker and apart.', 'Folien sind dicker und abgerückt gezeichnet.'),
  words('Strength, guarding and fire are proved elsewhere.', 'Statik, Absturz, Brand: eigene Nachweise.'),
]

export const assumedHeading = words('Assumed, to be confirmed', 'Angenommen, zu bestätigen')
export const cautionsHeading = words('Cautions', 'Hinweise')
export const nothingAssumed = words('nothing', 'nichts')

/** The lines that notes break into at a width, the first of each with its bullet. */
const linesAt = (notes: readonly Words[], width_mm: number, language: Language) =>
  notes.flatMap(note =>
    linesOf(note[language].replace('s_d', 'sd'), width_mm - indent_mm, heights.note_mm).map((words, at) => ({
      words,
      first: at === 0,
    })),
  )

const indent_mm = 2.6

/** How high notes of a width are, heading included. */
export const notesHeight_mm = ({ notes }: Notes, width_mm: number, language: Language): number =>
  (linesAt(notes, width_mm, language).length + 1) * notePitch_mm + 0.6

/** Draws notes from their upper left corner. */
export const drawNotes = (
  { heading, notes, assumed }: Notes,
  [x, top]: Point,
  width_mm: number,
  language: Language,
): readonly ViewMark[] => [
  text(heading[language], [x, top - heights.note_mm], { bold: true }),
  ...linesAt(notes, width_mm, language).flatMap(({ words, first }, at): readonly ViewMark[] => {
    const y = top - heights.note_mm - 0.6 - (at + 1) * notePitch_mm
    const bullet = first ? bulletAt([x, y + heights.note_mm / 2], assumed === true) : []
    return [...bullet, text(words, [x + indent_mm, y])]
  }),
]

/** A short dash; in two pieces where the note is assumed. */
const bulletAt = ([x, y]: Point, assumed: boolean): readonly ViewMark[] =>
  assumed
    ? [line('stroke', [x, y], [x + 0.6, y]), line('stroke', [x + 1, y], [x + 1.6, y])]
    : [line('stroke', [x, y], [x + 1.6, y])]
