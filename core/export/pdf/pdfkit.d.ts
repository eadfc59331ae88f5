/** The part of the PDF library that the writer uses. Its own types would bring those of Node into core. */
declare module 'pdfkit' {
  /** An indirect object. It is written when it ends; one that never ends breaks the file. */
  export type Reference = {
    readonly data: Record<string, unknown>
    readonly end: (bytes?: Uint8Array) => void
  }

  /** An element of the structure that readers for the blind follow. */
  export type StructureElement = {
    readonly add: (child: StructureElement) => unknown
    readonly end: () => void
  }

  export type TextOptions = {
    readonly baseline: 'alphabetic'
    readonly lineBreak: false
    readonly features: Readonly<Record<string, boolean>>
  }

  export class PDFDocument {
    constructor(options: {
      readonly pdfVersion: '1.7'
      readonly autoFirstPage: false
      readonly font: null
      readonly lang: string
      readonly tagged: true
      readonly info: Readonly<Record<string, string | Date>>
    })
    /** the catalogue: what a reader looks at first */
    readonly _root: Reference
    readonly page: { readonly resources: Reference }
    /** what the file says of itself; what is not there is not said */
    readonly info: Partial<Record<string, string | Date>>
    readonly outline: {
      readonly addItem: (title: string, options: { readonly fit: true }) => unknown
    }
    /** called at the end to describe the file in XML; the library's own does not escape what it is given */
    _addInfo: () => void
    readonly appendXML: (xml: string) => void
    readonly ref: (data: Readonly<Record<string, unknown>>) => Reference
    readonly addNamedEmbeddedFile: (name: string, file: Reference) => void
    readonly addPage: (options: {
      readonly size: readonly [number, number]
      readonly margin: 0
    }) => PDFDocument
    readonly scale: (factor: number) => PDFDocument
    readonly save: () => PDFDocument
    readonly restore: () => PDFDocument
    readonly rotate: (
      clockwise_deg: number,
      about: { readonly origin: readonly [number, number] },
    ) => PDFDocument
    readonly addContent: (operators: string) => PDFDocument
    readonly registerFont: (name: string, bytes: Uint8Array) => PDFDocument
    readonly font: (name: string) => PDFDocument
    readonly fontSize: (size: number) => PDFDocument
    readonly text: (words: string, x: number, y: number, options: TextOptions) => PDFDocument
    readonly image: (
      jpeg: Uint8Array,
      x: number,
      y: number,
      options: { readonly width: number; readonly height: number },
    ) => PDFDocument
    readonly struct: (
      type: string,
      options?: Readonly<Record<string, unknown>>,
      children?: readonly (() => void)[],
    ) => StructureElement
    /** content that is drawn and not read, up to the next end */
    readonly markContent: (tag: 'Artifact') => PDFDocument
    readonly endMarkedContent: () => PDFDocument
    readonly addStructure: (element: StructureElement) => PDFDocument
    readonly on: ((event: 'data', take: (bytes: Uint8Array) => void) => PDFDocument) &
      ((event: 'end', take: () => void) => PDFDocument)
    readonly end: () => void
  }
}
