import { describe, expect, it } from 'vitest'
import { type Drawing, hatches, printable, type View } from '../../../core/drawing'
import { formats } from '../../../core/export'
import { aHatchSheet } from '../../given/a-hatch-sheet'
import { ofKind, secondExtent, worstArea } from '../../given/a-measure-of-dxf'
import { groupsOf, readAllByEzdxf, readByEzdxf } from '../../given/a-reader-of-dxf'
import { firstPlace, sheetFonts, sheetOf, sheetsOf } from '../../given/sample-sheets'

const write = (drawing: Drawing, id = 'dxf'): Promise<Uint8Array> => {
  const format = formats.find(it => it.id === id)
  if (format === undefined) throw new Error(`there is no ${id}`)
  return format.write(sheetsOf(drawing), sheetFonts)
}

const { project, place } = firstPlace()
const first = sheetOf(project, place, { language: 'de', palette: 'colour' })

const viewOf = ({ marks }: Drawing): View => {
  const view = marks.find(it => it.kind === 'view')
  if (view === undefined) throw new Error('no view')
  return view
}

const textOf = (bytes: Uint8Array): string => Buffer.from(bytes).toString('utf8')

describe('a DXF sheet', () => {
  it('is the same in the older version', async () => {
    const [read, older] = readAllByEzdxf([await write(first), await write(first, 'dxf-2000')])
    expect(older).toMatchObject({ version: 'AC1015', errors: [], fixes: [] })
    expect(older?.areas).toEqual(read?.areas)
    expect(older?.words).toEqual(read?.words)
    expect(older?.counts).toEqual(read?.counts)
  })

  it('stands at its true place: the corner of the reveal at the origin', async () => {
    const read = readByEzdxf(await write(first))
    const [low, high] = extentOf(viewOf(first))
    expect(read.lowest.map((it, axis) => it - (low[axis] ?? 0)).every(near)).toBe(true)
    expect(read.highest.map((it, axis) => it - (high[axis] ?? 0)).every(near)).toBe(true)
    expect(Object.values(read.counts).some(it => it['JW-SHEET-STROKE INSERT'] === 1)).toBe(true)
  })

  it('defines every straight hatch in itself, and draws the curved ones', async () => {
    const { patterns, errors, counts } = readByEzdxf(await write(aHatchSheet('de', 'colour')))
    expect(errors).toEqual([])
    const straight = hatches.filter(it => (it.families ?? []).length > 0)
    for (const { key, families = [] } of straight) {
      const sets = families.reduce((sum, it) => sum + (it.stagger_mm ? 2 : 1), 0)
      expect(patterns[`JW_${key.toUpperCase()}`], key).toBe(sets)
    }
    expect(patterns['JW_PLASTER_DOTS']).toBe(2)
    const drawn = Object.values(counts).reduce((sum, it) => sum + (it['JW-HATCH LWPOLYLINE'] ?? 0), 0)
    expect(drawn).toBeGreaterThan(50)
  })

  it('has a layer a use with the weight and the line type of its pen', async () => {
    const { layers, linetypes } = readByEzdxf(await write(first))
    expect(layers['JW-FABRIC-CUT']).toEqual([50, 'Continuous', true, 1])
    expect(layers['JW-HATCH']).toEqual([18, 'Continuous', true, 1])
    expect(layers['JW-SEEN-HIDDEN']?.slice(0, 2)).toEqual([25, 'JW-HIDDEN'])
    expect(layers['JW-REGIONS']).toEqual([13, 'Continuous', false, 0])
    expect(linetypes['JW-HIDDEN']).toEqual([3, -0.75])
  })

  it('carries the title block as attributes', async () => {
    const { attributes } = readByEzdxf(await write(first))
    const block = first.marks.find(it => it.kind === 'symbol')
    for (const [key, value] of Object.entries(block?.values ?? {}))
      if (value !== '') expect(attributes[key.toUpperCase()], key).toBe(value)
  })

  it('ends its lines as the format wants and numbers everything once', async () => {
    const text = textOf(await write(first))
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
    expect(text.endsWith('0\r\nEOF\r\n')).toBe(true)
    const groups = groupsOf(text)
    const own = groups.filter(([code]) => code === 5 || code === 105).map(([, value]) => value)
    const [seed = '', ...handles] = own
    expect(new Set(handles).size).toBe(handles.length)
    expect(parseInt(seed, 16)).toBeGreaterThan(Math.max(...handles.map(it => parseInt(it, 16))))
    expect(groups.filter(([code, value]) => 10 <= code && code < 60 && !/^-?\d+\.\d+$/.test(value))).toEqual(
      [],
    )
  })

  it('is the same bytes for the same drawing', async () => {
    expect(Buffer.compare(await write(first), await write(first))).toBe(0)
  })

  it('writes the older version in the letters of its time', async () => {
    const bytes = await write(worded('Maß λ ≤ €'), 'dxf-2000')
    const raw = Buffer.from(bytes).toString('latin1')
    expect(raw).toContain('Ma\u00DF \\U+03BB \\U+2264 \u0080')
    expect(readByEzdxf(bytes).words).toContain('Maß λ ≤ €')
    expect(textOf(await write(worded('Maß λ ≤ €')))).toContain('Maß λ ≤ €')
  })

  it('says words as they are, hostile ones too', async () => {
    for (const id of ['dxf', 'dxf-2000']) {
      const files = await Promise.all(
        ['plain', ...hostile.map(([, it]) => it)].map(it => write(worded(it), id)),
      )
      const [plain, ...read] = readAllByEzdxf(files)
      hostile.forEach(([name, words], at) => {
        expect(read[at], name).toMatchObject({ errors: [], fixes: [], counts: plain?.counts })
        expect(read[at]?.words, name).toEqual([printable(words).replaceAll(/%(?=%)/g, '% ')])
      })
    }
  })
})

const hostile = [
  ['a new line and a group', 'a\n0\nLINE\n8\nevil'],
  ['a return', 'a\r\n0\r\nENDSEC'],
  ['letters that turn', 'a\u202Eb\u2066c'],
  ['codes of signs', '%%d %%%d 50%%c 5%'],
  ['carets', '^J^M^I ^ x'],
  ['backslashes and braces', '\\P \\U+0041 {\\H9;big} \\'],
  ['half a letter', 'a\uD800b'],
] as const

describe('a spoiled DXF sheet is seen', () => {
  it('with a corner moved by a tenth of a millimetre', async () => {
    const text = textOf(await write(first))
    const at = text.indexOf('AcDbPolyline', text.indexOf('JW-REGIONS\r\n100'))
    const spoiled = text.slice(0, at) + text.slice(at).replace(/\r\n10\r\n(-?[\d.]+)/, (_, x: string) => `\r\n10\r\n${Number(x) + 0.1}`) // prettier-ignore
    expect(worstArea(readByEzdxf(Buffer.from(spoiled)).areas, first)).toBeGreaterThan(1e-9)
  })

  it('with an entity on a layer that is not there', async () => {
    const text = textOf(await write(first)).replace(
      'AcDbEntity\r\n8\r\nJW-FABRIC-CUT',
      'AcDbEntity\r\n8\r\nA*B',
    )
    const { errors, fixes } = readByEzdxf(Buffer.from(text))
    expect(errors.length + fixes.length).toBeGreaterThan(0)
  })

  it('with another extent', async () => {
    const text = textOf(await write(first))
    const { high } = secondExtent(text)
    const right = high[0]?.toFixed(1) ?? ''
    const spoiled = secondExtent(text.replaceAll(`\r\n10\r\n${right}`, `\r\n10\r\n${Number(right) + 5}.0`))
    expect((spoiled.high[0] ?? 0) - (high[0] ?? 0)).toBeGreaterThan(1)
  })
})

/** Figures of TEXT and polylines are written to a millionth; bows of dots reach a hair further than their corners. */
const near = (difference: number): boolean => Math.abs(difference) < 0.002

/** The box round all polylines of a view in true millimetres, its model's origin at 0: outlines, hatch lines, dots. */
const extentOf = (view: View): readonly [readonly number[], readonly number[]] => {
  const flip = view.mirrored ? -1 : 1
  const angle = (view.turn_deg * Math.PI) / 180
  const [cos, sin] = [Math.round(Math.cos(angle)), Math.round(Math.sin(angle))]
  const points = [
    ...ofKind(view.marks, 'path').map(it => it.points),
    ...ofKind(view.marks, 'area').map(it => it.outline),
  ]
    .flat()
    .map(([x, y]) => [flip * x * cos - y * sin, flip * x * sin + y * cos] as const)
  return [
    [Math.min(...points.map(it => it[0])), Math.min(...points.map(it => it[1]))],
    [Math.max(...points.map(it => it[0])), Math.max(...points.map(it => it[1]))],
  ]
}

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
