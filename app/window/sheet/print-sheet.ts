import type { Host } from '../../host'

/**
 * Prints the sheets that are shown: each on a page of its own size, at true size, without margins. A sheet is drawn with
 * one unit a millimetre; its page is as large as its view box, so that nothing has to be fitted. Whether there was a sheet.
 */
export const printSheet = (page: Document, host: Pick<Host, 'print'>): boolean => {
  const sheets = [...page.querySelectorAll<SVGSVGElement>('[data-testid="sheet"] svg')]
  const [first] = sheets.map(sizeOf_mm)
  if (first === undefined) return false
  const [width_mm, height_mm] = first
  const rules = new CSSStyleSheet()
  rules.replaceSync(`@page { size: ${width_mm}mm ${height_mm}mm; margin: 0 }`)
  const paper = page.createElement('div')
  paper.className = 'printed'
  for (const sheet of sheets) {
    const copy = page.importNode(sheet, true)
    const [wide, high] = sizeOf_mm(sheet)
    copy.setAttribute('width', `${wide}mm`)
    copy.setAttribute('height', `${high}mm`)
    paper.append(copy)
  }
  const before = page.adoptedStyleSheets
  page.adoptedStyleSheets = [...before, rules]
  page.body.append(paper)
  const clear = (): void => {
    paper.remove()
    page.adoptedStyleSheets = before
  }
  page.defaultView?.addEventListener('afterprint', clear, { once: true })
  void host.print({ width_mm, height_mm }).catch(clear)
  return true
}

const sizeOf_mm = (sheet: SVGSVGElement): readonly [width: number, height: number] => {
  const { width, height } = sheet.viewBox.baseVal
  return [width, height]
}
