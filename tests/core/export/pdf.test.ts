import { describe, expect, it } from 'vitest'
import { checkReport, type Drawing, inkOf } from '../../../core/drawing'
import { formats, type Sheets } from '../../../core/export'
import { check } from '../../../core/rules'
import { aHatchSheet } from '../../given/a-hatch-sheet'
import { contentsOf, extentOf, judged, strokesOf, unpacked } from '../../given/a-reader-of-pdf'
import { firstPlace, sheetFonts, sheetOf, sheetsOf } from '../../given/sample-sheets'

const pdf = formats.find(it => it.id === 'pdf')
const write = (sheets: Sheets): Promise<Uint8Array> => {
  if (pdf === undefined) throw new Error('there is no PDF')
  return pdf.write(sheets, sheetFonts)
}

const { project, place } = firstPlace()
const first = sheetOf(project, place, { language: 'de', palette: 'colour' })

const latin1 = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1')

/** How far the extent of a page's strokes is from that of the drawing's, as a share of it. */
const scaleError = (content: string, drawing: Drawing): number => {
  const inks = inkOf(drawing).flatMap(it => it.inks)
  const drawn = extentOf(
    inks.flatMap(ink => (ink.kind === 'stroke' ? ink.lines.flatMap(it => pairs(it)) : [])),
  )
  const found = extentOf(strokesOf(content).flatMap(it => it.points)).map(it => (it / 72) * 25.4)
  return Math.max(...drawn.map((it, axis) => Math.abs((found[axis] ?? 0) / it - 1)))
}

const pairs = (flat: readonly number[]): [number, number][] =>
  Array.from({ length: flat.length / 2 }, (_, at) => [flat[2 * at] ?? 0, flat[2 * at + 1] ?? 0])

describe('a PDF sheet', () => {
  it('is in its true size, sound, with its fonts and its words', async () => {
    const bytes = await write(sheetsOf(first))
    expect(judged(bytes, 'qpdf', '--check', 'FILE')).toMatchObject({ code: 0 })
    expect(fontsOf(bytes)).toEqual(['yes yes yes', 'yes yes yes'])
    expect(scaleError(contentsOf(unpacked(bytes))[0] ?? '', first)).toBeLessThan(0.001)
    expect(lettersIn(bytes)).toBe(lettersOf(first))
  })

  it('prints its ruler 100 mm long', async () => {
    const [content = ''] = contentsOf(unpacked(await write(sheetsOf(first))))
    const lengths = strokesOf(content).flatMap(({ points: [a, b] }) =>
      a && b ? [(Math.hypot(a[0] - b[0], a[1] - b[1]) / 72) * 25.4] : [],
    )
    expect(Math.min(...lengths.map(it => Math.abs(it - 100)))).toBeLessThan(0.1)
  })

  it('would be seen to be 0.2 % too large', async () => {
    const [content = ''] = contentsOf(unpacked(await write(sheetsOf(first))))
    const spoiled = content.replaceAll(/2\.83464\d* 0 0 2\.83464\d*/g, '2.840315 0 0 2.840315')
    expect(spoiled).not.toBe(content)
    expect(scaleError(spoiled, first)).toBeGreaterThan(0.001)
  })

  it('would be seen to be damaged', async () => {
    const bytes = await write(sheetsOf(first))
    const spoiled = bytes.slice()
    // The first stream after a page's fonts are named is what the page shows.
    const stream = latin1(bytes).indexOf('stream\n', latin1(bytes).indexOf('/Font <<'))
    spoiled.fill(0x37, stream + 60, stream + 100)
    expect(judged(spoiled, 'qpdf', '--check', 'FILE').code).not.toBe(0)
  })

  it('prints every letter that joints need, and gives it back', async () => {
    const words = 'ä ß λ Ψ ≤ ² Ø € „Maß“ − ± ° · …'
    const drawing = worded(words)
    const bytes = await write(sheetsOf(drawing))
    expect(lettersIn(bytes)).toBe(words.replaceAll(' ', ''))
    expect(lettersIn(await write(sheetsOf(worded(words.replace('ß', 'ss')))))).not.toBe(
      words.replaceAll(' ', ''),
    )
  })

  it('has the layers of the drawing, all of them on, each part of it in its own', async () => {
    const text = unpacked(await write(sheetsOf(first)))
    const layers = [...new Set(inkOf(first).map(it => it.layer))]
    expect(text.match(/\/Type \/OCG/g)).toHaveLength(layers.length)
    expect(text).toContain('/BaseState /ON')
    const [content = ''] = contentsOf(text)
    expect([...content.matchAll(/\/OC \/(\S+) BDC/g)].map(it => it[1])).toEqual(layers)
    expect(content.match(/BDC/g)?.length).toBe(content.match(/EMC/g)?.length)
  })

  it('says what it is: information, bookmarks, page labels, language, words for who cannot see it', async () => {
    const bytes = await write(sheetsOf(first, aHatchSheet('en', 'colour')))
    const { said } = judged(bytes, 'pdfinfo', 'FILE')
    expect(said).toMatch(/Title: +Leibung links, Maßstab 1:2\n/)
    expect(said).toMatch(/Author: +Zeichenbüro Neun\n/)
    expect(said).toMatch(/Keywords: +Leibung, W-07\n/)
    expect(said).toMatch(/Tagged: +yes\n/)
    expect(said).toMatch(/Pages: +2\n/)
    const text = unpacked(bytes)
    expect(text).toContain('/Lang (de)')
    expect(text).toContain('/PrintScaling /None')
    expect(text).toContain('/PickTrayByPDFSize true')
    expect(text).toMatch(/\/PageLabels <<\s+\/Nums \[\s+0\s+<<\s+\/S \/D/)
    expect(text).toContain('/Alt (A field of every hatch with its name)')
    expect(text).toMatch(/\/Alt <feff/)
    expect(text.match(/\/S \/Figure/g)).toHaveLength(2)
    expect(text).toContain('/Title (Hatches)')
  })

  it('gives the headings and tables of a report to who cannot see it', async () => {
    const [page, ...rest] = checkReport(project, check(project), { language: 'de', palette: 'black' })
    const more = rest.slice(0, 1)
    const { said } = judged(await write(sheetsOf(page, ...more)), 'pdfinfo', '-struct-text', 'FILE')
    const wanted = [page, ...more].flatMap(it => readOn(it))
    expect(readIn(said)).toEqual(wanted)
    expect(wanted.filter(it => it.startsWith('H1'))).toEqual(['H1 Prüfbericht'])
    expect(wanted.filter(it => it.startsWith('H2'))).not.toEqual([])
    expect(said.match(/^ +TR$/gm)?.length).toBe(rowsOn([page, ...more]))
    // a heading that is only drawn would be missed
    const unread: Drawing = {
      ...page,
      marks: page.marks.map(it => {
        if (it.kind !== 'text' || it.read?.as !== 'H2') return it
        const { read: _, ...drawn } = it
        return drawn
      }),
    }
    const { said: less } = judged(await write(sheetsOf(unread)), 'pdfinfo', '-struct-text', 'FILE')
    expect(readIn(less)).not.toEqual(readOn(page))
    expect(readIn(less)).toEqual(readOn(unread))
  })

  it('keeps the project as it was saved', async () => {
    const sheets = sheetsOf(first)
    const bytes = await write(sheets)
    expect(judged(bytes, 'qpdf', '--show-attachment=model.jamb', 'FILE')).toEqual({
      code: 0,
      said: sheets.model,
    })
  })

  it('is the same bytes for the same model, and other bytes for another', async () => {
    const [one, two] = [await write(sheetsOf(first)), await write(sheetsOf(first))]
    expect(Buffer.compare(one, two)).toBe(0)
    const other = await write({ ...sheetsOf(first), model: '{}' })
    expect(Buffer.compare(one, other)).not.toBe(0)
  })

  it('has a day only where it is given one, never that of the clock', async () => {
    const { information, ...rest } = sheetsOf(first)
    const dated = await write({ information, ...rest })
    expect(judged(dated, 'pdfinfo', '-isodates', 'FILE').said).toContain('2026-03-14T00:00:00Z')
    const undated = await write({ ...rest, information: { ...information, dated: '' } })
    expect(judged(undated, 'qpdf', '--check', 'FILE').code).toBe(0)
    const text = unpacked(undated)
    expect(text).not.toMatch(/CreationDate|CreateDate|ModDate/)
    expect(unpacked(dated)).toMatch(/CreationDate/)
  })

  it('stays sound whatever its words are', async () => {
    const hostile = 'a\n)>> endobj\r<x>&amp;\u0000\u202Eb\\(\uD800 %%EOF 𝄞'
    const sheets = sheetsOf({ ...worded(hostile), title: hostile, says: hostile })
    const bytes = await write({
      ...sheets,
      information: { ...sheets.information, title: hostile, author: hostile, keywords: [hostile] },
    })
    expect(judged(bytes, 'qpdf', '--check', 'FILE').code).toBe(0)
    const { said } = judged(bytes, 'pdfinfo', '-meta', 'FILE')
    expect(said).toContain('&lt;x&gt;&amp;amp;')
    expect(said).not.toContain('\u202E')
  })
})

const fontsOf = (bytes: Uint8Array): readonly string[] =>
  judged(bytes, 'pdffonts', 'FILE')
    .said.split('\n')
    .slice(2)
    .filter(it => it.includes('RobotoCondensed'))
    .map(it => /(yes|no) +(yes|no) +(yes|no)/.exec(it)?.slice(1).join(' ') ?? it)

/** The letters of a file in the order in which they are painted. */
const lettersIn = (bytes: Uint8Array): string =>
  judged(bytes, 'pdftotext', '-raw', '-enc', 'UTF-8', 'FILE', '-').said.replaceAll(/\s/g, '')

const lettersOf = (drawing: Drawing): string =>
  inkOf(drawing)
    .flatMap(it => it.inks)
    .flatMap(it => (it.kind === 'letters' ? [it.words] : []))
    .join('')
    .replaceAll(/\s/g, '')

const worded = (words: string): Drawing => ({
  ...aHatchSheet('de', 'colour'),
  marks: [
    {
      kind: 'text',
      layer: 'words',
      pen: 'text',
      at: [20, 100],
      words,
      height_mm: 2.5,
      turn_deg: 0,
      anchor: 'start',
    },
  ],
})

/** Headings and cells of a drawing in their order, words of one together. */
const readOn = (drawing: Drawing): readonly string[] => {
  const found: { readonly key: string; words: string }[] = []
  for (const ink of inkOf(drawing).flatMap(it => it.inks)) {
    if (ink.kind !== 'letters' || !ink.read) continue
    const { as, row, column } = ink.read
    const last = found.at(-1)
    if (last?.key === `${as} ${row} ${column}`) last.words += ink.words
    else found.push({ key: `${as} ${row} ${column}`, words: ink.words })
  }
  return found.map(({ key, words }) => `${key.slice(0, 2)} ${words}`.replaceAll(/\s+/g, ' '))
}

/** Rows of tables on some pages: those of one height on one page are one. */
const rowsOn = (drawings: readonly Drawing[]): number =>
  drawings.reduce((sum, drawing) => {
    const letters = inkOf(drawing).flatMap(it => it.inks)
    const rows = letters.flatMap(it =>
      it.kind === 'letters' && it.read?.as.startsWith('T') ? [it.read.row] : [],
    )
    return sum + new Set(rows).size
  }, 0)

/** Headings and cells as a reader of structure gives them. */
const readIn = (said: string): readonly string[] => {
  const found: string[] = []
  for (const line of said.split('\n')) {
    const [, as] = /^ +(H[123]|TH|TD)\b/.exec(line) ?? []
    const [, words] = /^ +"(.*)"$/.exec(line) ?? []
    if (as) found.push(`${as} `)
    else if (words !== undefined && found.length > 0) found.push(`${found.pop() ?? ''}${words}`)
  }
  return found.map(it => it.replaceAll(/\s+/g, ' '))
}
