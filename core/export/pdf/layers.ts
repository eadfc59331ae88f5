import type { PDFDocument, Reference } from 'pdfkit'
import { type Layer, paintOrder } from '../../drawing'
import type { Language } from '../../words'
import { layerNames } from '../layer-names'

/** Layers that a reader can show and hide, all of them on at first. */
export type PdfLayers = {
  /** opens a layer on the current page; `close` ends it */
  readonly open: (layer: Layer) => void
  readonly close: () => void
}

/**
 * Gives a document the layers that its sheets use. The library has no call for them, so they are dictionaries of our own
 * (optional content, ISO 32000-1 8.11, from memory). `BaseState` is said because a reader without it shows an empty list.
 */
export const addLayers = (doc: PDFDocument, used: ReadonlySet<Layer>, language: Language): PdfLayers => {
  const groups = new Map<Layer, Reference>()
  for (const layer of paintOrder.filter(it => used.has(it))) {
    // The library tells strings from names by the object String.
    const group = doc.ref({ Type: 'OCG', Name: new String(layerNames[layer][language]) })
    group.end()
    groups.set(layer, group)
  }
  const all = [...groups.values()]
  doc._root.data.OCProperties = {
    OCGs: all,
    D: { Name: new String('Jambwright'), BaseState: 'ON', ON: all, Order: all, RBGroups: [] },
  }
  return {
    open: layer => {
      doc.page.resources.data.Properties = Object.fromEntries(groups)
      doc.addContent(`/OC /${layer} BDC`)
    },
    close: () => doc.addContent('EMC'),
  }
}
