// Every room that imports this one must find the types, and an import of them would stay in the program.
// oxlint-disable-next-line triple-slash-reference
/// <reference path="./pdfkit.d.ts" />
import type { PDFDocument } from 'pdfkit'
import { type Ink, type InkGroup, inkOf, printable } from '../../drawing'
import { words } from '../../words'
import { fontFiles } from '../font-files'
import type { Fonts, Format, Information, Sheets } from '../format'
import { addLayers, type PdfLayers } from './layers'
import { attachModel } from './model'
import { operatorsOf } from './operators'
import { isRead, readingOf } from './structure'
import { writeLetters } from './write-letters'
import { xmpOf } from './xmp'

/**
 * Portable document format: every sheet a page in its true size, lines and hatches as lines, words as words in an
 * embedded font, layers, bookmarks, a text for who cannot see the page, and the project attached.
 */
export const pdf: Format = {
  id: 'pdf',
  name: words('PDF', 'PDF'),
  extension: 'pdf',
  fonts: [fontFiles.regular, fontFiles.bold],
  holds: 'sheets',
  write: async (sheets, fonts) => {
    // Loaded when it is needed: it is larger than the rest of the program's own code.
    const { PDFDocument } = await import('pdfkit')
    const { information, drawings } = sheets
    const doc = new PDFDocument({
      pdfVersion: '1.7',
      autoFirstPage: false,
      font: null,
      lang: drawings[0].language,
      tagged: true,
      info: infoOf(information),
    })
    if (dateOf(information) === undefined) delete doc.info.CreationDate
    const bytes = bytesOf(doc)
    writeSheets(doc, sheets, fonts)
    doc.end()
    return bytes
  },
}

const program = 'Jambwright'

/** Day and nothing else; a sheet without a day has none. */
const dateOf = ({ dated }: Information): Date | undefined =>
  /^\d{4}-\d{2}-\d{2}$/.test(dated) ? new Date(`${dated}T00:00:00Z`) : undefined

const infoOf = (information: Information): Readonly<Record<string, string | Date>> => ({
  Title: printable(information.title),
  Author: printable(information.author),
  Subject: printable(information.subject),
  Keywords: printable(information.keywords.join(', ')),
  Creator: program,
  Producer: program,
  // Without a day the library would take the clock's.
  CreationDate: dateOf(information) ?? new Date(0),
})

/** Collects what the document writes. */
const bytesOf = (doc: PDFDocument): Promise<Uint8Array> =>
  new Promise(done => {
    const chunks: Uint8Array[] = []
    doc.on('data', chunk => chunks.push(chunk))
    doc.on('end', () => done(joined(chunks)))
  })

const joined = (chunks: readonly Uint8Array[]): Uint8Array => {
  const all = new Uint8Array(chunks.reduce((sum, it) => sum + it.length, 0))
  let at = 0
  for (const chunk of chunks) {
    all.set(chunk, at)
    at += chunk.length
  }
  return all
}

const pt_mm = 72 / 25.4

const writeSheets = (doc: PDFDocument, sheets: Sheets, fonts: Fonts): void => {
  const { drawings, information, model } = sheets
  const { language } = drawings[0]
  for (const name of [fontFiles.regular, fontFiles.bold]) {
    const file = fonts.get(name)
    if (file === undefined) throw new Error(`the font file ${name} is missing`)
    doc.registerFont(name, file)
  }
  const inks = drawings.map(inkOf)
  const layers = addLayers(doc, new Set(inks.flat().map(it => it.layer)), language)
  const structure = doc.struct('Document')
  doc.addStructure(structure)
  drawings.forEach((drawing, at) => {
    const [width, height] = drawing.size_mm
    const size = [width * pt_mm, height * pt_mm] as const
    doc.addPage({ size, margin: 0 })
    doc.outline.addItem(printable(drawing.title), { fit: true })
    const groups = inks[at] ?? []
    if (isRead(groups)) {
      const section = doc.struct('Sect', { title: printable(drawing.title) })
      structure.add(section)
      const reading = readingOf(doc, section)
      paintPage(doc, groups, { layers, height_mm: height, reading })
      reading.end()
      return
    }
    const paint = () => paintPage(doc, groups, { layers, height_mm: height })
    structure.add(
      doc.struct('Figure', { alt: printable(drawing.says), bbox: [0, 0, ...size], placement: 'Block' }, [
        paint,
      ]),
    )
  })
  structure.end()
  const { data } = doc._root
  data.PageLabels = { Nums: [0, { S: 'D', St: 1 }] }
  data.ViewerPreferences = doc.ref({
    DisplayDocTitle: true,
    PrintScaling: 'None',
    PickTrayByPDFSize: true,
  })
  const dated = dateOf(information)
  if (model !== undefined) attachModel(doc, model, { language, ...(dated && { dated }) })
  doc._addInfo = () => doc.appendXML(xmpOf(information, language, program))
}

const paintPage = (
  doc: PDFDocument,
  groups: readonly InkGroup[],
  on: {
    readonly layers: PdfLayers
    readonly height_mm: number
    /** for a page whose words are read one by one; any other is a figure with words for it */
    readonly reading?: ReturnType<typeof readingOf>
  },
): void => {
  doc.save()
  doc.scale(pt_mm)
  // Corners are cut as in the other formats; lines end where they end.
  doc.addContent('4 M 0 J 0 j')
  groups.forEach((group, at) => {
    if (group.layer !== groups[at - 1]?.layer) on.layers.open(group.layer)
    const write = (ink: Ink) => writeInk(doc, ink, on.height_mm)
    if (on.reading) on.reading.paint(group.inks, write)
    else group.inks.forEach(write)
    if (group.layer !== groups[at + 1]?.layer) on.layers.close()
  })
  doc.restore()
}

const writeInk = (doc: PDFDocument, ink: Ink, height_mm: number): void => {
  switch (ink.kind) {
    case 'letters':
      writeLetters(doc, ink, height_mm)
      return
    case 'picture':
      doc.image(ink.jpeg, ink.at[0], height_mm - ink.at[1] - ink.size[1], {
        width: ink.size[0],
        height: ink.size[1],
      })
      return
    default:
      doc.addContent(operatorsOf(ink, height_mm))
  }
}
