import { Helper } from 'dxf'
import { describe, expect, it } from 'vitest'
import { type Drawing, hatches, printable, type View, type ViewMark } from '../../../core/drawing'
import { formats } from '../../../core/export'
import { aHatchSheet } from '../../given/a-hatch-sheet'
import { groupsOf, readByEzdxf } from '../../given/a-reader-of-dxf'
import { sampleSheets, sheetFonts, sheetsOf } from '../../given/sample-sheets'

const write = (drawing: Drawing, id = 'dxf'): Promise<Uint8Array> => {
  const format = formats.find(it => it.id === id)
  if (format === undefined) throw new Error(`there is no ${id}`)
  return format.write(sheetsOf(drawing), sheetFonts)
}

const all = [
  ...sampleSheets({ language: 'de', palette: 'colour' }),
  ...sampleSheets({ language: 'en', palette: 'black' }),
]
const first = all[0]?.drawing ?? aHatchSheet('de', 'colour')

const viewOf = ({ marks }: Drawing): View => {
  const view = marks.find(it => it.kind === 'view')
  if (view === undefined) throw new Error('no view')
  return view
}

const ofKind = <K extends ViewMark['kind']>(
  marks: readonly ViewMark[],
  kind: K,
): readonly Extract<ViewMark, { kind: K }>[] =>
  marks.flatMap(it => (it.kind === kind ? [it as Extract<ViewMark, { kind: K }>] : [])) // the test just asked for its kind

const areaOf = (outline: readonly (readonly [number, number])[]): number =>
  Math.abs(
    outline.reduce((sum, [x, y], at) => {
      const [toX, toY] = outline[(at + 1) % outline.length] ?? [x, y]
      return sum + x * toY - toX * y
    }, 0),
  ) / 2

/** The area of each part of a view in true millimetres, from the marks. */
const areasOf = (drawing: Drawing): Readonly<Record<string, number>> => {
  const areas: Record<string, number> = {}
  for (const { part, outline, holes } of ofKind(viewOf(drawing).marks, 'area'))
    if (part !== undefined)
      areas[part] = (areas[part] ?? 0) + areaOf(outline) - holes.reduce((sum, it) => sum + areaOf(it), 0)
  return areas
}

const worstArea = (found: Readonly<Record<string, number>>, drawing: Drawing): number => {
  const expected = areasOf(drawing)
  expect(Object.keys(found).toSorted()).toEqual(Object.keys(expected).toSorted())
  return Math.max(...Object.entries(expected).map(([part, it]) => Math.abs((found[part] ?? 0) / it - 1)))
}

const textOf = (bytes: Uint8Array): string => Buffer.from(bytes).toString('utf8')

describe('a DXF sheet', () => {
  it.each(all)('of $name passes the audit of another library and keeps every area', async ({ drawing }) => {
    const read = readByEzdxf(await write(drawing))
    expect(read).toMatchObject({ version: 'AC1021', errors: [], fixes: [] })
    expect(worstArea(read.areas, drawing)).toBeLessThan(1e-9)
  })

  it.each(all.slice(0, 4))('of $name is the same in the older version', async ({ drawing }) => {
    const read = readByEzdxf(await write(drawing))
    const older = readByEzdxf(await write(drawing, 'dxf-2000'))
    expect(older).toMatchObject({ version: 'AC1015', errors: [], fixes: [] })
    expect(older.areas).toEqual(read.areas)
    expect(older.words).toEqual(read.words)
    expect(older.counts).toEqual(read.counts)
  })

  it.each(all.slice(0, 4))('of $name has as much of everything as its drawing', async ({ drawing }) => {
    const { counts, sizes, sizeWords, numbers } = readByEzdxf(await write(drawing))
    const view = viewOf(drawing)
    const model = counts['Model'] ?? {}
    const dimensions = ofKind(view.marks, 'dimension')
    expect(model['JW-SIZES DIMENSION']).toBe(dimensions.length)
    expect(sizeWords.flat()).toEqual(dimensions.map(it => it.words))
    dimensions.forEach((it, at) => {
      const length = Math.hypot(it.to[0] - it.from[0], it.to[1] - it.from[1])
      expect(sizes[at]?.measures).toBeCloseTo(length, 6)
    })
    const leaders = ofKind(view.marks, 'leader')
    expect(model['JW-NUMBERS-LEADER LEADER']).toBe(leaders.length)
    expect(numbers).toEqual(leaders.map(it => it.number))
    const areas = ofKind(view.marks, 'area')
    expect(model['JW-REGIONS LWPOLYLINE']).toBe(areas.reduce((sum, it) => sum + 1 + it.holes.length, 0))
    const cut = ofKind(view.marks, 'path').filter(it => it.layer === 'fabric' && it.pen === 'cut')
    expect(model['JW-FABRIC-CUT LWPOLYLINE']).toBe(cut.length)
    const words = ofKind(drawing.marks.filter(isOnSheet), 'text')
    const onSheet = Object.entries(counts).find(([name]) => name !== 'Model')?.[1] ?? {}
    expect((onSheet['JW-WORDS-TEXT TEXT'] ?? 0) + (onSheet['JW-WORDS-FAINT TEXT'] ?? 0)).toBe(words.length)
    expect(onSheet['JW-SHEET-STROKE INSERT']).toBe(1)
  })

  it('stands at its true place and scale, which a second reader sees too', async () => {
    for (const { drawing } of all.slice(0, 4)) {
      const bytes = await write(drawing)
      const read = readByEzdxf(bytes)
      const view = viewOf(drawing)
      const [width = 0, height = 0, seen = 1] = read.viewports[0] ?? []
      expect(height / seen).toBeCloseTo(view.scale, 6)
      expect(width).toBeGreaterThan(0)
      const [low, high] = extentOf(view)
      expect(read.lowest.map((it, axis) => it - (low[axis] ?? 0)).every(near)).toBe(true)
      expect(read.highest.map((it, axis) => it - (high[axis] ?? 0)).every(near)).toBe(true)
      const second = secondExtent(textOf(bytes))
      expect(second.low.map((it, axis) => it - (read.lowest[axis] ?? 0)).every(near)).toBe(true)
      expect(second.high.map((it, axis) => it - (read.highest[axis] ?? 0)).every(near)).toBe(true)
    }
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

  it.each([
    ['a new line and a group', 'a\n0\nLINE\n8\nevil'],
    ['a return', 'a\r\n0\r\nENDSEC'],
    ['letters that turn', 'a\u202Eb\u2066c'],
    ['codes of signs', '%%d %%%d 50%%c 5%'],
    ['carets', '^J^M^I ^ x'],
    ['backslashes and braces', '\\P \\U+0041 {\\H9;big} \\'],
    ['half a letter', 'a\uD800b'],
  ])('says words as they are: %s', async (_, hostile) => {
    for (const id of ['dxf', 'dxf-2000']) {
      const plain = readByEzdxf(await write(worded('plain'), id))
      const read = readByEzdxf(await write(worded(hostile), id))
      expect(read).toMatchObject({ errors: [], fixes: [], counts: plain.counts })
      expect(read.words).toEqual([printable(hostile).replaceAll(/%(?=%)/g, '% ')])
    }
  })
})

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

const isOnSheet = (mark: Drawing['marks'][number]): mark is ViewMark => mark.kind !== 'view'

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

/** The box round the polylines of model space as another program reads them. */
const secondExtent = (
  text: string,
): { readonly low: readonly number[]; readonly high: readonly number[] } => {
  const points = new Helper(text).parsed.entities
    .filter(it => it.type === 'LWPOLYLINE' && !it.paperSpace)
    .flatMap(it => it.vertices ?? [])
  return {
    low: [Math.min(...points.map(it => it.x)), Math.min(...points.map(it => it.y))],
    high: [Math.max(...points.map(it => it.x)), Math.max(...points.map(it => it.y))],
  }
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
