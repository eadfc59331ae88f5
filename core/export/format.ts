import type { Drawing } from '../drawing'
import type { Words } from '../words'

/** A file format of drawings. Words are measured against the bundled metrics table; only writing needs the font files. */
export type Format = {
  readonly id: string
  readonly name: Words
  readonly extension: string
  readonly write: (drawing: Drawing, fonts: ReadonlyMap<string, Uint8Array>) => Promise<Uint8Array>
}
