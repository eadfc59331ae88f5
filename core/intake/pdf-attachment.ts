import { attachedName } from '../export'
import { type PdfValue, valueAt } from './pdf-objects'

/** What a file holds of an attachment: its bytes as they lie there, and whether they are deflated. */
export type Attachment = { readonly bytes: Uint8Array; readonly isDeflated: boolean }

/**
 * Finds the attached project in a PDF that this program wrote. Nothing else of the file is read or run. Nothing is given
 * where there is none, or where another program has written the file anew in a form of its own.
 */
export const attachmentIn = (pdf: Uint8Array): Attachment | undefined => {
  const text = binaryText(pdf)
  const start = /startxref\s+(\d{1,10})\s+%%EOF\s*$/.exec(text.slice(-64))?.[1]
  if (start === undefined) return undefined
  const table = tableAt(text, Number(start))
  if (table === undefined) return undefined
  const open = (value: PdfValue | undefined): PdfValue | undefined => {
    if (value?.kind !== 'reference') return value
    const at = table.places.get(value.id)
    return at === undefined ? undefined : objectAt(text, value.id, at)?.value
  }
  const into = (value: PdfValue | undefined, key: string): PdfValue | undefined => {
    const held = open(value)
    return held?.kind === 'dictionary' ? held.entries.get(key) : undefined
  }
  const names = open(into(into(into(into(table.trailer, 'Root'), 'Names'), 'EmbeddedFiles'), 'Names'))
  if (names?.kind !== 'list') return undefined
  const at = names.items.findIndex(it => it.kind === 'string' && it.value === attachedName)
  const file = into(into(names.items[at + 1], 'EF'), 'F')
  if (at < 0 || file?.kind !== 'reference') return undefined
  const place = table.places.get(file.id)
  return place === undefined ? undefined : streamAt(pdf, text, file.id, place)
}

/** Every byte as the letter of its number. */
const binaryText = (bytes: Uint8Array): string => {
  const pieces: string[] = []
  for (let at = 0; at < bytes.length; at += 8192)
    pieces.push(String.fromCharCode(...bytes.subarray(at, at + 8192)))
  return pieces.join('')
}

/** The table of places, whose entries are 20 bytes each, and the trailer behind it. */
const tableAt = (
  text: string,
  start: number,
): { readonly places: ReadonlyMap<number, number>; readonly trailer: PdfValue } | undefined => {
  const head = /^xref\s+0 (\d{1,7})\s*?\n/.exec(text.slice(start, start + 40))
  if (head === null) return undefined
  const places = new Map<number, number>()
  let at = start + head[0].length
  for (let id = 0; id < Number(head[1]); id++, at += 20) {
    const entry = /^(\d{10}) \d{5} ([nf])/.exec(text.slice(at, at + 20))
    if (entry === null) return undefined
    if (entry[2] === 'n') places.set(id, Number(entry[1]))
  }
  const trailer = text.startsWith('trailer', at) ? valueAt(text, at + 'trailer'.length) : undefined
  return trailer && { places, trailer: trailer.value }
}

const objectAt = (text: string, id: number, at: number): ReturnType<typeof valueAt> => {
  const head = new RegExp(`^${id} \\d{1,5} obj`).exec(text.slice(at, at + 24))?.[0]
  return head === undefined ? undefined : valueAt(text, at + head.length)
}

const streamAt = (pdf: Uint8Array, text: string, id: number, at: number): Attachment | undefined => {
  const found = objectAt(text, id, at)
  if (found?.value.kind !== 'dictionary') return undefined
  const { entries } = found.value
  const length = entries.get('Length')
  const filter = entries.get('Filter')
  const opening = /^\s*stream\r?\n/.exec(text.slice(found.end, found.end + 16))?.[0]
  if (length?.kind !== 'number' || opening === undefined) return undefined
  const from = found.end + opening.length
  if (pdf.length < from + length.value) return undefined
  const isDeflated = filter?.kind === 'name' && filter.value === 'FlateDecode'
  if (filter !== undefined && !isDeflated) return undefined
  return { bytes: pdf.subarray(from, from + length.value), isDeflated }
}
