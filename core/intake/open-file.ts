import { fromBase64, type Opened, openProject, textOf } from '../detail'
import { ok, type Problem, type Result, refused } from '../units'
import { words } from '../words'
import { inflated } from './inflate'
import { attachmentIn } from './pdf-attachment'
import { declaresTypes, metadataIn } from './svg-metadata'

/** No project is longer than this once it is unpacked. Ours. */
const most_bytes = 64 * 1024 * 1024

/**
 * Opens a project from its own file, or from a PDF or SVG sheet of this program that carries it. Of a sheet the attached
 * project alone is read; what is drawn is not. Nothing is thrown whatever the bytes are.
 */
export const openFile = (bytes: Uint8Array): Result<Opened> => {
  const text = projectText(bytes)
  return text.ok ? openProject(text.value) : text
}

/** The text of the project in a file of any kind that can hold one. */
export const projectText = (bytes: Uint8Array): Result<string> => {
  if (startsWith(bytes, '%PDF-')) return fromPdf(bytes)
  const text = textOf(bytes)
  if (text === undefined) return refused(noText)
  return /^\uFEFF?\s*<(?:\?xml|svg|!)/.test(text) ? fromSvg(text) : ok(text)
}

const startsWith = (bytes: Uint8Array, signs: string): boolean =>
  [...signs].every((sign, at) => bytes[at] === sign.charCodeAt(0))

const fromPdf = (bytes: Uint8Array): Result<string> => {
  const found = attachmentIn(bytes)
  if (found === undefined) return refused(noModel)
  const model = found.isDeflated ? inflated(found.bytes, most_bytes) : found.bytes
  return model === undefined ? refused(damaged) : checked(model)
}

const fromSvg = (svg: string): Result<string> => {
  if (declaresTypes(svg)) return refused(noModel)
  const found = metadataIn(svg)
  if (found === undefined) return refused(noModel)
  const model = fromBase64(found)
  return model === undefined ? refused(damaged) : checked(model)
}

const checked = (model: Uint8Array | 'too long'): Result<string> => {
  if (model === 'too long' || most_bytes < model.length) return refused(tooLong)
  const text = textOf(model)
  return text === undefined ? refused(damaged) : ok(text)
}

const at = 'file'

const noText: Problem = {
  at,
  say: words(
    'this is no text: the file is damaged or of another kind',
    'das ist kein Text: die Datei ist beschädigt oder von anderer Art',
  ),
}

const noModel: Problem = {
  at,
  say: words(
    'no project is attached to this sheet: it was written without one, or another program has saved it since',
    'an diesem Blatt hängt kein Projekt: es wurde ohne geschrieben, oder ein anderes Programm hat es neu gespeichert',
  ),
}

const damaged: Problem = {
  at,
  say: words(
    'the project attached to this sheet is damaged',
    'das angehängte Projekt dieses Blatts ist beschädigt',
  ),
}

const tooLong: Problem = {
  at,
  say: words(
    'the project attached to this sheet is longer than 64 MB',
    'das angehängte Projekt dieses Blatts ist länger als 64 MB',
  ),
}
