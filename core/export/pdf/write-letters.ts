import type { PDFDocument } from 'pdfkit'
import { fontSize_mm, type Letters, printable, textWidth_mm } from '../../drawing'
import { fontFiles } from '../font-files'
import { fillOf } from './operators'

/** Kerning and joined letters would make words other than the table of widths says; every format leaves them off. */
const features = { kern: false, liga: false, clig: false, calt: false }

/** Writes a line of words in the embedded font, at its place and in its direction. */
export const writeLetters = (doc: PDFDocument, letters: Letters, height_mm: number): void => {
  const words = printable(letters.words)
  if (words === '') return
  const { at, turn_deg, bold } = letters
  const [x, y] = [at[0], height_mm - at[1]]
  const width = textWidth_mm(words, letters.height_mm, bold)
  const start = letters.anchor === 'start' ? x : letters.anchor === 'middle' ? x - width / 2 : x - width
  doc.font(bold ? fontFiles.bold : fontFiles.regular).fontSize(fontSize_mm(letters.height_mm))
  doc.addContent(fillOf(letters.colour).trimEnd())
  if (turn_deg !== 0) doc.save().rotate(-turn_deg, { origin: [x, y] })
  doc.text(words, start, y, { baseline: 'alphabetic', lineBreak: false, features })
  if (turn_deg !== 0) doc.restore()
}
