import type { PDFDocument, StructureElement } from 'pdfkit'
import type { Ink, InkGroup, ReadAs } from '../../drawing'

/** Whether a page has words that are to be read in their order: headings and tables. */
export const isRead = (groups: readonly InkGroup[]): boolean =>
  groups.some(group => group.inks.some(it => readAs(it) !== undefined))

/**
 * Adds a page to the structure that readers for the blind follow: headings, and tables of rows of cells. Words that are
 * neither (the head and the foot of each page) and lines are marked as not to be read.
 */
export const readingOf = (doc: PDFDocument, page: StructureElement) => {
  let table:
    { readonly element: StructureElement; row: number; readonly rows: StructureElement[] } | undefined
  const endTable = (): void => {
    table?.element.end()
    table = undefined
  }
  const rowOf = (row: number): StructureElement => {
    if (table === undefined) {
      table = { element: doc.struct('Table'), row: NaN, rows: [] }
      page.add(table.element)
    }
    const last = table.rows.at(-1)
    if (last && table.row === row) return last
    const next = doc.struct('TR')
    table.element.add(next)
    table.rows.push(next)
    table.row = row
    return next
  }
  const read = ({ as, row, column }: ReadAs, paint: () => void): void => {
    if (as === 'TH' || as === 'TD') {
      const scope = as === 'TD' ? {} : { scope: column === 0 ? 'Row' : 'Column' }
      rowOf(row).add(doc.struct(as, scope, [paint]))
      return
    }
    endTable()
    page.add(doc.struct(as, {}, [paint]))
  }
  return {
    /** paints ink of one layer: what belongs together in one piece, the rest as not to be read */
    paint: (inks: readonly Ink[], paint: (it: Ink) => void): void => {
      for (const run of runsOf(inks)) {
        const as = run[0] && readAs(run[0])
        const all = () => run.forEach(paint)
        if (as) read(as, all)
        else {
          doc.markContent('Artifact')
          all()
          doc.endMarkedContent()
        }
      }
    },
    end: (): void => {
      endTable()
      page.end()
    },
  }
}

const readAs = (it: Ink): ReadAs | undefined => (it.kind === 'letters' ? it.read : undefined)

/** Ink that follows each other and is one heading, one cell, or nothing that is read. */
const runsOf = (inks: readonly Ink[]): readonly (readonly Ink[])[] => {
  const runs: Ink[][] = []
  for (const it of inks) {
    const last = runs.at(-1)
    if (last?.[0] && keyOf(last[0]) === keyOf(it)) last.push(it)
    else runs.push([it])
  }
  return runs
}

const keyOf = (it: Ink): string => {
  const read = readAs(it)
  return read ? `${read.as} ${read.row} ${read.column}` : ''
}
