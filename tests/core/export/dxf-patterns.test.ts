import { describe, expect, it } from 'vitest'
import { type Drawing, hatches, type Hatching, inkOfView, placeView, type View } from '../../../core/drawing'
import { formats } from '../../../core/export'
import type { Point } from '../../../core/geometry'
import { readByEzdxf, type ReadDxf } from '../../given/a-reader-of-dxf'
import { sheetsOf } from '../../given/sample-sheets'

type Row = ReadDxf['rows'][number]

/** Fields of hatches side by side in one view: turned, mirrored and closer, as neighbours have them. */
const fieldsOf = (keys: readonly string[], how: Partial<Hatching>, view: Partial<View>): View => ({
  kind: 'view',
  layer: 'fabric',
  window: [
    [0, 0],
    [120 * keys.length, 80],
  ],
  at: [30, 40],
  scale: 0.5,
  turn_deg: 0,
  mirrored: false,
  marks: keys.map((key, at) => {
    const x = 120 * at + 3
    return {
      kind: 'area',
      layer: 'fabric',
      part: key,
      outline: [
        [x, 5],
        [x + 94, 5],
        [x + 94, 71],
        [x, 71],
      ],
      holes: [],
      hatch: { key, origin: [x, 5], turn_deg: 0, size: [94, 66], ...how },
      tint: '#EEEEEE',
    }
  }),
  ...view,
})

const read = async (view: View): Promise<readonly Row[]> => {
  const drawing: Drawing = {
    size_mm: [210, 297],
    language: 'en',
    palette: 'colour',
    title: 'A hatch',
    says: 'A field of a hatch',
    materials: new Map(),
    marks: [view],
  }
  const dxf = formats.find(it => it.id === 'dxf')
  return readByEzdxf((await dxf?.write(sheetsOf(drawing), new Map())) ?? new Uint8Array()).rows
}

type Segment = readonly [from: Point, to: Point]

/** The straight lines of the hatch as all other formats draw them, in true millimetres from the model's origin. */
const drawnLines = (view: View, key: string): readonly Segment[] => {
  const [ox, oy] = placeView(view).toPaper([0, 0])
  return inkOfView(view, { palette: 'colour', language: 'en' })
    .flatMap(it => (it.part === key ? it.inks : []))
    .flatMap(ink => (ink.kind === 'stroke' && ink.pen === 'hatch' ? ink.lines : []))
    .map(([x0 = 0, y0 = 0, x1 = 0, y1 = 0]) => [
      [(x0 - ox) / view.scale, (y0 - oy) / view.scale],
      [(x1 - ox) / view.scale, (y1 - oy) / view.scale],
    ])
}

/** Whether a drawn line lies in a row of a pattern: on one of its lines, and inside one of its dashes. */
const isIn = ([from, to]: Segment, [, angle_deg, x, y, stepX, stepY, ...dashes]: Row): boolean => {
  const angle = (angle_deg * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const across = (at: Point) => (at[1] - y) * cos - (at[0] - x) * sin
  const along = (at: Point) => (at[0] - x) * cos + (at[1] - y) * sin
  const pitch = stepY * cos - stepX * sin
  const row = Math.round(across(from) / pitch)
  if (Math.abs(across(from) - row * pitch) > hair || Math.abs(across(to) - row * pitch) > hair) return false
  const shift = row * (stepX * cos + stepY * sin)
  return dashes.length === 0 || isInDash(along(from) - shift, along(to) - shift, dashes)
}

/** Figures in the file end at a millionth; far from its base a pattern adds that up. */
const hair = 1e-3

const isInDash = (a: number, b: number, dashes: readonly number[]): boolean => {
  const period = dashes.reduce((sum, it) => sum + Math.abs(it), 0)
  const start = Math.floor((Math.min(a, b) + hair) / period) * period
  const [low, high] = [Math.min(a, b) - start, Math.max(a, b) - start]
  let at = 0
  for (const dash of dashes) {
    if (dash > 0 && at - hair <= low && high <= at + dash + hair) return true
    at += Math.abs(dash)
  }
  return false
}

/** The length of all lines that a pattern lays over an area, from its pitches and dashes. */
const laidOver = (area: number, rows: readonly Row[]): number =>
  rows.reduce((sum, [, angle_deg, , , stepX, stepY, ...dashes]) => {
    const angle = (angle_deg * Math.PI) / 180
    const pitch = Math.abs(stepY * Math.cos(angle) - stepX * Math.sin(angle))
    const period = dashes.reduce((all, it) => all + Math.abs(it), 0)
    const on = dashes.reduce((all, it) => all + Math.max(0, it), 0)
    return sum + (area / pitch) * (period === 0 ? 1 : on / period)
  }, 0)

const straight = hatches.filter(it => (it.families ?? []).length > 0).map(it => it.key)

const ways: readonly (readonly [string, Partial<Hatching>, Partial<View>])[] = [
  ['as it is', {}, {}],
  ['turned, mirrored and closer', { turn_deg: 20, mirrored: true, closer: true }, {}],
  ['in a view that is turned and mirrored', { turn_deg: 90 }, { turn_deg: 270, mirrored: true, scale: 0.2 }],
]

describe.each(ways)('hatches that a DXF defines, %s, draw the lines of the other formats', (_, how, view) => {
  const fields = fieldsOf(straight, how, view)
  const reading = read(fields)

  it.each(straight)('%s', async key => {
    const own = (await reading).filter(it => it[0] === `JW_${key.toUpperCase()}`)
    const lines = drawnLines(fields, key)
    expect(lines.length).toBeGreaterThan(3)
    expect(lines.filter(line => !own.some(row => isIn(line, row)))).toEqual([])
    const drawn = lines.reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0)
    expect(laidOver(94 * 66, own) / drawn).toBeGreaterThan(0.85)
    expect(laidOver(94 * 66, own) / drawn).toBeLessThan(1.15)
  })
})

describe('a hatch that is spoiled is seen', () => {
  it('with its step turned, as some readers expect it', async () => {
    const field = fieldsOf(['masonry_dense'], {}, {})
    const rows = (await read(field)).map((it): Row => [
      it[0],
      it[1],
      it[2],
      it[3],
      0,
      Math.hypot(it[4], it[5]),
    ])
    expect(drawnLines(field, 'masonry_dense').every(line => rows.some(row => isIn(line, row)))).toBe(false)
  })

  it('with a dash that starts elsewhere', async () => {
    const field = fieldsOf(['concrete'], {}, {})
    const rows = (await read(field)).map(([name, angle, x, y, ...rest]): Row => [
      name,
      angle,
      x + 1,
      y + 1,
      ...rest,
    ])
    expect(drawnLines(field, 'concrete').every(line => rows.some(row => isIn(line, row)))).toBe(false)
  })
})
