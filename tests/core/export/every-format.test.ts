import { build } from 'esbuild'
import { chromium } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import type { Drawing, Mark } from '../../../core/drawing'
import { formats } from '../../../core/export'
import { languages } from '../../../core/words'
import { aHatchSheet } from '../../given/a-hatch-sheet'
import { judged } from '../../given/a-reader-of-pdf'
import { firstPlace, sheetFonts, sheetOf, sheetsOf } from '../../given/sample-sheets'

/** A picture of one pixel, as small as a JPEG can be. */
const jpeg = Uint8Array.from(
  Buffer.from(
    '/9j/4AAQSkZJRgABAQEASABIAAD/2wBDAAMCAgICAgMCAgIDAwMDBAYEBAQEBAgGBgUGCQgKCgkICQkKDA8MCgsOCwkJDRENDg8QEBEQCgwSExIQEw8QEBD/yQALCAABAAEBAREA/8wABgAQEAX/2gAIAQEAAD8A0s8g/9k=',
    'base64',
  ),
)

/** One mark of every kind. */
const everyKind: readonly Mark[] = [
  { kind: 'path', layer: 'sheet', pen: 'axis', points: [[20, 20], [60, 20]], closed: false },
  { kind: 'area', layer: 'fabric', part: 'a', outline: [[20, 30], [60, 30], [60, 60], [20, 60]],
    holes: [[[30, 40], [30, 50], [40, 50], [40, 40]]], hatch: { key: 'concrete_rc', origin: [20, 30], turn_deg: 0 }, tint: '#D5D8DB' },
  { kind: 'text', layer: 'words', pen: 'text', at: [20, 70], words: 'Maß', height_mm: 2.5, turn_deg: 30, anchor: 'end', bold: true },
  { kind: 'dimension', layer: 'sizes', pen: 'size', from: [20, 80], to: [60, 80], line: [20, 90], words: '40', text: [40, 91] },
  { kind: 'leader', layer: 'numbers', pen: 'leader', path: [[40, 45], [70, 60]], end: 'arrow', number: '7' },
  { kind: 'symbol', layer: 'sheet', name: 'status-met', at: [80, 80], values: {} },
  { kind: 'picture', layer: 'sheet', at: [100, 100], size: [20, 15], jpeg, says: { en: 'a reveal', de: 'eine Leibung' } },
] // prettier-ignore

const kinds: Drawing = {
  ...aHatchSheet('de', 'colour'),
  marks: [
    ...everyKind,
    {
      kind: 'view',
      layer: 'fabric',
      window: [
        [0, 0],
        [150, 150],
      ],
      at: [20, 140],
      scale: 0.5,
      turn_deg: 90,
      mirrored: true,
      marks: everyKind.flatMap(it => (it.kind === 'view' ? [] : [it])),
    },
  ],
}

const { project, place } = firstPlace()
const sheets: readonly (readonly [string, Drawing])[] = [
  ['every kind of mark', kinds],
  ...languages.flatMap(language =>
    (['colour', 'black'] as const).map(
      palette =>
        [`a sheet, ${language}, ${palette}`, sheetOf(project, place, { language, palette })] as const,
    ),
  ),
]

describe.each(formats.map(it => [it.id, it] as const))('the format %s', (_, format) => {
  it.each(sheets)('writes %s, the same way each time', async (_name, drawing) => {
    const [one, two] = [
      await format.write(sheetsOf(drawing), sheetFonts),
      await format.write(sheetsOf(drawing), sheetFonts),
    ]
    expect(one.length).toBeGreaterThan(1000)
    expect(Buffer.compare(one, two)).toBe(0)
  })

  it('has a name in every language and one of its own', () => {
    for (const language of languages) expect(format.name[language]).not.toBe('')
    expect(formats.filter(it => it.id === format.id)).toHaveLength(1)
  })

  it('asks for the fonts that it needs, and says which one is missing', async () => {
    const writing = Promise.resolve().then(() => format.write(sheetsOf(kinds), new Map()))
    if (format.fonts.length === 0) expect((await writing).length).toBeGreaterThan(1000)
    else await expect(writing).rejects.toThrow(format.fonts[0])
  })
})

describe('a browser', () => {
  it('writes what this machine writes: the same words and the same sheet', async () => {
    const [, drawing = kinds] = sheets[0] ?? []
    const { outputFiles } = await build({
      stdin: { contents: `export { formats } from './core/export'`, resolveDir: process.cwd() },
      bundle: true,
      platform: 'browser',
      format: 'iife',
      globalName: 'jambwright',
      write: false,
      logLevel: 'silent',
      // A script without an address of its own; the library keeps a colour profile beside it that we do not use.
      define: { 'import.meta.url': '"https://jambwright.invalid/"' },
    })
    const script = outputFiles[0]?.text ?? ''
    const browser = await chromium.launch({
      executablePath: '/usr/bin/chromium',
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
      ],
    })
    try {
      const page = await browser.newPage()
      await page.addScriptTag({ content: script })
      const given = {
        drawing: {
          ...drawing,
          materials: [...drawing.materials],
          marks: drawing.marks.filter(it => it.kind !== 'picture'),
        },
        fonts: [...sheetFonts].map(([name, bytes]) => [name, Buffer.from(bytes).toString('base64')] as const),
        information: sheetsOf(drawing).information,
      }
      const written = await page.evaluate(inBrowser, given)
      const bytes = Uint8Array.from(Buffer.from(written, 'base64'))
      expect(judged(bytes, 'qpdf', '--check', 'FILE').code).toBe(0)
      const pdf = formats.find(it => it.id === 'pdf')
      const { model: _, ...bare } = sheetsOf({
        ...drawing,
        marks: drawing.marks.filter(it => it.kind !== 'picture'),
      })
      const own = (await pdf?.write(bare, sheetFonts)) ?? new Uint8Array()
      const words = (it: Uint8Array) => judged(it, 'pdftotext', '-layout', 'FILE', '-').said
      expect(words(bytes)).toBe(words(own))
      expect(words(bytes)).toContain('ß')
    } finally {
      await browser.close()
    }
  })
})

type Given = {
  readonly drawing: unknown
  readonly fonts: readonly (readonly [name: string, base64: string])[]
  readonly information: unknown
}

/** Runs in the page, where the bundle has put its formats. */
const inBrowser = async ({ drawing, fonts, information }: Given): Promise<string> => {
  // The page knows nothing of types: what the bundle exports is looked up by name.
  const { jambwright } = globalThis as unknown as {
    jambwright: { formats: { id: string; write: (sheets: unknown, fonts: unknown) => Promise<Uint8Array> }[] }
  }
  const plain = drawing as { materials: [string, string][] }
  const bytes = await jambwright.formats
    .find(it => it.id === 'pdf')
    ?.write(
      { drawings: [{ ...plain, materials: new Map(plain.materials) }], information },
      new Map(fonts.map(([name, it]) => [name, Uint8Array.from(atob(it), sign => sign.charCodeAt(0))])),
    )
  let text = ''
  for (const byte of bytes ?? []) text += String.fromCharCode(byte)
  return btoa(text)
}
