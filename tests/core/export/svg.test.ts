import { execFileSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { type Drawing, paintOrder } from '../../../core/drawing'
import { formats, svgOf } from '../../../core/export'
import { aHatchSheet } from '../../given/a-hatch-sheet'
import { aSectionSheet } from '../../given/a-section-sheet'

const sheets: readonly (readonly [string, Drawing])[] = [
  ['hatches', aHatchSheet('de', 'colour')],
  ['a section', aSectionSheet()],
  [
    'a black section, turned and mirrored',
    aSectionSheet({ palette: 'black', turn_deg: 270, mirrored: true }),
  ],
]

/** A reader that knows nothing of this project accepts the text as XML, or throws. */
const readBy = (svg: string): void => {
  const path = join(mkdtempSync(join(tmpdir(), 'svg-')), 'in.svg')
  writeFileSync(path, svg)
  execFileSync('rsvg-convert', ['-w', '20', path, '-o', `${path}.png`])
}

describe.each(sheets)('an SVG of %s', (_, drawing) => {
  const svg = svgOf(drawing)

  it('is well-formed, in millimetres, and describes itself', () => {
    readBy(svg)
    const [width, height] = drawing.size_mm
    expect(svg).toContain(`width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"`)
    expect(svg).toContain('role="img"')
    expect(svg).toMatch(/<title id="title">[^<]+<\/title>\n<desc id="says">[^<]+<\/desc>/)
  })

  it('has nothing that readers drop', () => {
    for (const word of [
      '<pattern',
      'clip-path',
      'clipPath',
      'class=',
      '<style',
      'marker',
      'filter',
      'vector-effect',
    ])
      expect(svg, word).not.toContain(word)
    const numbers = [
      ...svg.matchAll(/ (?:d|x|y|width|height|stroke-width|font-size|stroke-dasharray)="([^"]*)"/g),
    ]
    for (const [, value = ''] of numbers) expect(value).toMatch(/^(?:[MLaZ ]|-?\d+(?:\.\d{1,3})?(?!\d)|mm)+$/)
    for (const [, value = ''] of numbers) expect(value).not.toMatch(/-0(?![.\d])/)
  })

  it('has a named group for each layer, in the order of painting', () => {
    const layers = [...svg.matchAll(/<g id="layer-([a-z]+)" inkscape:groupmode="layer" inkscape:label="[^"]+">\n<title>/g)] // prettier-ignore
    const names = layers.map(it => it[1])
    expect(names.length).toBeGreaterThan(2)
    expect(names).toEqual(paintOrder.filter(it => names.includes(it)))
  })

  it('keeps words as words, without kerning, and each letter where it is measured', () => {
    const texts = svg.match(/<text [^>]*>/g) ?? []
    expect(texts.length).toBeGreaterThan(10)
    expect(svg).toMatch(/<svg [^>]*style="font-kerning:none;font-variant-ligatures:none"/)
    // a browser else moves letters to whole pixels of its screen
    expect(svg).toMatch(/<svg [^>]*text-rendering="geometricPrecision"/)
  })

  it('is the same text when it is written again', () => expect(svgOf(drawing)).toBe(svg))
})

it('names parts and what they are made of', () => {
  expect(svgOf(aSectionSheet())).toContain('<g data-part="p2" data-material="mineral-wool">')
})

describe('hostile names', () => {
  const named = (words: string): Drawing => ({
    ...aSectionSheet(),
    title: words,
    says: words,
    materials: new Map([['p2', words]]),
    marks: [
      {
        kind: 'text',
        layer: 'words',
        part: words,
        pen: 'text',
        at: [10, 10],
        words,
        height_mm: 2.5,
        turn_deg: 0,
        anchor: 'start',
      },
    ],
  })

  it.each([
    ['markup', '</text><script>alert(1)</script>'],
    ['quotes', `" onload="alert(1)" x='`],
    ['an end of data', ']]>&amp;&#0;'],
    ['control characters', 'a\u0000b\u0008c\u001Bd\u007Fe\u0085f\ng'],
    ['half a letter', 'x\uD800y\uDC00z'],
    ['a turn of direction', 'Profil\u202Egvs.exe\u2066!\u200F'],
    ['code points that are no letters', 'a\uFFFEb\uFFFFc'],
  ])('with %s stay words', (_, words) => {
    const svg = svgOf(named(words))
    readBy(svg)
    expect(svg).not.toContain('<script')
    expect(svg).not.toContain('" onload="')
    // eslint would call this odd: these are the very characters that must be gone
    expect(svg).not.toMatch(
      /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069\uFFFE\uFFFF]|\p{Surrogate}/u,
    ) // oxlint-disable-line no-control-regex
  })
})

it('is written as bytes that hold the same text, and the project with it where it is given', async () => {
  const svg = formats.find(it => it.id === 'svg')
  const information = { title: '', author: '', subject: '', keywords: [], dated: '2026-01-01' }
  const write = async (model?: string) =>
    new TextDecoder('utf-8', { fatal: true }).decode(
      await svg?.write(
        { drawings: [aSectionSheet()], information, ...(model !== undefined && { model }) },
        new Map(),
      ),
    )
  expect(await write()).toBe(svgOf(aSectionSheet()))
  const held = /<metadata id="model">([^<]*)<\/metadata>/.exec(await write('{"name":"Stiegenhaus ½ </svg>"}'))
  expect(Buffer.from(held?.[1] ?? '', 'base64').toString('utf8')).toBe('{"name":"Stiegenhaus ½ </svg>"}')
})
