import fc from 'fast-check'
import { deflateSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { saveProject } from '../../../core/detail'
import { formats } from '../../../core/export'
import { openFile, projectText } from '../../../core/intake'
import { rewritten, unpacked } from '../../given/a-reader-of-pdf'
import { firstPlace, sheetFonts, sheetOf, sheetsOf } from '../../given/sample-sheets'

const { project, place } = firstPlace()
const drawing = sheetOf(project, place, { language: 'de', palette: 'colour' })

const written = async (id: 'pdf' | 'svg', model: string | undefined = saveProject(project)) => {
  const format = formats.find(it => it.id === id)
  if (format === undefined) throw new Error(`there is no ${id}`)
  const { model: _, ...sheets } = sheetsOf(drawing)
  return format.write({ ...sheets, ...(model !== '' && { model }) }, sheetFonts)
}

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text)

const said = (bytes: Uint8Array): string => {
  const opened = openFile(bytes)
  return opened.ok ? 'opened' : opened.problems[0].say.en
}

describe('a project opens', () => {
  it.each(['pdf', 'svg'] as const)('from a sheet as %s, and is what was saved', async id => {
    const opened = openFile(await written(id))
    expect(opened).toEqual({ ok: true, value: { project, readOnly: false, notes: [] } })
  })

  it('from its own file, with or without a mark at the start', () => {
    for (const text of [saveProject(project), `\uFEFF${saveProject(project)}`])
      expect(openFile(bytesOf(text))).toMatchObject({ ok: true, value: { project } })
  })

  it('from an SVG that was indented by another program', async () => {
    const text = new TextDecoder().decode(await written('svg'))
    const indented = text.replace(/(<metadata id="model">)([^<]{100})/, '$1\n    $2\n    ')
    expect(indented).not.toBe(text)
    expect(openFile(bytesOf(indented))).toMatchObject({ ok: true, value: { project } })
  })
})

describe('what holds no project says so', () => {
  it.each(['pdf', 'svg'] as const)('a sheet without one, as %s', async id => {
    expect(said(await written(id, ''))).toMatch(/no project is attached/)
  })

  it('a PDF that another program has saved in its own form', async () => {
    expect(said(rewritten(await written('pdf'), '--object-streams=generate'))).toMatch(
      /no project is attached/,
    )
  })

  it('a sheet that is cut off, and one whose attachment is damaged', async () => {
    const bytes = await written('pdf')
    expect(said(bytes.subarray(0, bytes.length - 100))).toMatch(/no project is attached/)
    const spoiled = bytes.slice()
    const at = Buffer.from(bytes).indexOf('stream\n', Buffer.from(bytes).indexOf('/EmbeddedFile\n'))
    spoiled.fill(0xff, at + 20, at + 60)
    expect(said(spoiled)).toMatch(/damaged/)
  })

  it('a project that would unpack into more than 64 MB', async () => {
    const bomb = deflateSync(Buffer.alloc(80 * 1024 * 1024, 0x20))
    const text = unpacked(await written('pdf'))
    expect(text).toContain('/EmbeddedFile')
    expect(said(withAttachment(bomb))).toMatch(/longer than 64 MB/)
    expect(said(withAttachment(deflateSync(bytesOf(saveProject(project)))))).toBe('opened')
  })

  it('an SVG that declares what could grow without end', async () => {
    const text = new TextDecoder().decode(await written('svg'))
    const declared = text.replace('?>\n', '?>\n<!DOCTYPE svg [<!ENTITY a "aaaa">]>\n')
    expect(said(bytesOf(declared))).toMatch(/no project is attached/)
  })

  it('bytes that are no text', () => {
    for (const bytes of [
      [0xff, 0xfe],
      [0xc0, 0x80],
      [0xed, 0xa0, 0x80],
      [0xf5, 0x80, 0x80, 0x80],
      [0xe2, 0x82],
    ])
      expect(said(Uint8Array.from(bytes))).toMatch(/no text/)
  })
})

describe('whatever the bytes are', () => {
  it('nothing is thrown', async () => {
    const sheets = [await written('pdf'), await written('svg')]
    fc.assert(
      fc.property(
        fc.constantFrom(...sheets),
        fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 0, max: 255 })), {
          maxLength: 8,
        }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (sheet, changes, share) => {
          const bytes = sheet.slice(0, share < 0.7 ? sheet.length : Math.floor(sheet.length * share))
          for (const [at, byte] of changes) bytes[Math.floor(at * (bytes.length - 1))] = byte
          expect(typeof openFile(bytes).ok).toBe('boolean')
        },
      ),
      { numRuns: 60, seed: 7 },
    )
  })

  it('text comes back as it was, letter by letter', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), text => {
        fc.pre(!/^\uFEFF?\s*</.test(text) && !text.startsWith('%PDF-'))
        expect(projectText(bytesOf(text))).toEqual({ ok: true, value: text })
      }),
      { seed: 7 },
    )
  })
})

/** A PDF of nothing but an attachment, written by hand. */
const withAttachment = (data: Uint8Array): Uint8Array => {
  const objects = [
    '<< /Type /Catalog /Names << /EmbeddedFiles << /Names [(model.jamb) 2 0 R] >> >> >>',
    '<< /Type /Filespec /F (model.jamb) /EF << /F 3 0 R >> >>',
    `<< /Type /EmbeddedFile /Filter /FlateDecode /Length ${data.length} >>\nstream\n${Buffer.from(data).toString('latin1')}\nendstream`,
  ]
  let text = '%PDF-1.7\n'
  const places = objects.map((object, at) => {
    const place = text.length
    text += `${at + 1} 0 obj\n${object}\nendobj\n`
    return `${String(place).padStart(10, '0')} 00000 n \n`
  })
  const table = text.length
  text += `xref\n0 4\n0000000000 65535 f \n${places.join('')}trailer\n<< /Size 4 /Root 1 0 R >>\nstartxref\n${table}\n%%EOF\n`
  return Uint8Array.from(Buffer.from(text, 'latin1'))
}
