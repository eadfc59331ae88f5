import type { PDFDocument } from 'pdfkit'
import { words } from '../../words'
import type { Language } from '../../words'
import { utf8 } from '../utf-8'

/** The name of the project inside a sheet. */
export const attachedName = 'model.jamb'

const description = words(
  'The project that this sheet was drawn from',
  'Das Projekt, aus dem dieses Blatt gezeichnet wurde',
)

/** Attaches a project to a document, so that the sheet can be opened and worked on again. */
export const attachModel = (
  doc: PDFDocument,
  model: string,
  on: { readonly dated?: Date; readonly language: Language },
): void => {
  const bytes = utf8(model)
  const file = doc.ref({
    Type: 'EmbeddedFile',
    Subtype: 'application#2Fjson',
    Params: { Size: bytes.length, ...(on.dated && { ModDate: on.dated }) },
  })
  file.end(bytes)
  const entry = doc.ref({
    Type: 'Filespec',
    AFRelationship: 'Source',
    F: new String(attachedName),
    UF: new String(attachedName),
    EF: { F: file, UF: file },
    Desc: new String(description[on.language]),
  })
  entry.end()
  doc.addNamedEmbeddedFile(attachedName, entry)
  doc._root.data.AF = [entry]
}
