import type { Drawing } from '../drawing'
import type { Some, Words } from '../words'

/** What a file says of itself, beside what is drawn. */
export type Information = {
  readonly title: string
  readonly author: string
  /** what kind of document it is, and its number */
  readonly subject: string
  readonly keywords: readonly string[]
  /** day of the revision, `2026-03-14`, or nothing; never the day of writing: the same model gives the same bytes */
  readonly dated: string
}

/** What is written: sheets in their order, what the file says of itself, and the project as its own file holds it. */
export type Sheets = {
  readonly drawings: Some<Drawing>
  readonly information: Information
  /** the text of the project's file: formats that can carry it keep it, so that the program opens the sheet again */
  readonly model?: string
}

/** The font files of a format, by their names in the folder of fonts. */
export type Fonts = ReadonlyMap<string, Uint8Array>

/** A file format of drawings. Words are measured against the bundled metrics table; only writing needs the font files. */
export type Format = {
  readonly id: string
  readonly name: Words
  readonly extension: string
  /** the font files that writing needs; none where the reader brings its own */
  readonly fonts: readonly string[]
  /** how many sheets one file holds; sheets beyond the first are left out where it is one */
  readonly holds: 'one sheet' | 'sheets'
  readonly write: (sheets: Sheets, fonts: Fonts) => Promise<Uint8Array>
}
