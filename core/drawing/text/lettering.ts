import { advances, unknownAdvance } from './advances'

/** The lettering of every sheet: Roboto Condensed, Apache licence 2.0; figures are tabular. */
export const family = 'Roboto Condensed'

/**
 * Heights of capitals on paper. 2.5 mm is the least for anything that must be read (ISO 3098 nominal heights, reported);
 * which height serves what is ours.
 */
export const heights = {
  caption_mm: 1.8,
  note_mm: 2.5,
  size_mm: 2.5,
  label_mm: 2.5,
  subtitle_mm: 3.5,
  title_mm: 5,
} as const

/** From one line to the next, in heights. ISO 3098 has 1.9; a sans face stays clear at 1.6 (ours). */
export const linePitch = 1.6

/** Height of a capital in parts of the font size: 1456 of 2048 units of the font. */
export const capitalShare = 1456 / 2048

/** The font size that gives capitals of a height. */
export const fontSize_mm = (height_mm: number): number => height_mm / capitalShare

/** How wide words print, without kerning: every writer switches kerning off, so all agree. */
export const textWidth_mm = (words: string, height_mm: number, bold = false): number => {
  const widths = bold ? advances.bold : advances.regular
  let units = 0
  for (const letter of words) units += widths.get(letter) ?? unknownAdvance
  return (units / 2048) * fontSize_mm(height_mm)
}

/** Breaks words into lines of a width, never between a number and its unit. A word that is wider than a line is broken inside. */
export const linesOf = (words: string, width_mm: number, height_mm: number, bold = false): string[] => {
  const fits = (line: string) => textWidth_mm(line, height_mm, bold) <= width_mm
  const lines: string[] = []
  let line = ''
  for (const word of words.split(/[^\S\u00a0]+/).filter(it => it !== '')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (fits(longer)) {
      line = longer
      continue
    }
    if (line !== '') lines.push(line)
    const pieces = piecesOf(word, fits)
    lines.push(...pieces.slice(0, -1))
    line = pieces[pieces.length - 1] ?? ''
  }
  return line === '' ? lines : [...lines, line]
}

const piecesOf = (word: string, fits: (line: string) => boolean): string[] => {
  const pieces: string[] = []
  let piece = ''
  for (const letter of word) {
    if (piece !== '' && !fits(piece + letter)) {
      pieces.push(piece)
      piece = ''
    }
    piece += letter
  }
  return [...pieces, piece]
}
