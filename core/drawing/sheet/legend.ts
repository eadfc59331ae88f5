import type { Point } from '../../geometry'
import { type Language, words, type Words } from '../../words'
import { hatches, hatchOf } from '../hatches/all'
import { densityOf } from '../hatches/draw-hatch'
import type { Hatching, Pen, View, ViewMark } from '../mark'
import { heights, linePitch, linesOf } from '../text/lettering'
import { boxOf, text } from './marks'

/** What a view shows and a reader must know: a field of each hatch, a stretch of each membrane. */
export type LegendEntry =
  | { readonly kind: 'hatch'; readonly key: string; readonly name: Words }
  | { readonly kind: 'line'; readonly pen: Pen; readonly name: Words }

const membranes: readonly { readonly pen: Pen; readonly name: Words }[] = [
  { pen: 'membrane-inner', name: words('airtight layer', 'luftdichte Ebene') },
  { pen: 'membrane-outer', name: words('rain and wind layer', 'Wetterschutz') },
  { pen: 'membrane-water', name: words('water layer', 'Wasserebene') },
]

/**
 * The entries of a legend at a scale: only what is seen at it, in the order of the set. Air needs none, and neither does
 * what is so thin everywhere that it is solid whatever its hatch.
 */
export const legendOf = (view: View, scale: number): readonly LegendEntry[] => {
  const keys = new Set(
    view.marks.flatMap(it =>
      it.kind === 'area' && it.hatch && isSeen(it, it.hatch, scale) ? [it.hatch.key] : [],
    ),
  )
  const drawn = new Set(view.marks.flatMap(it => (it.kind === 'path' ? [it.pen] : [])))
  return [
    ...hatches
      .filter(it => keys.has(it.key) && it.key !== 'air_cavity')
      .map(({ key, name }): LegendEntry => ({ kind: 'hatch', key, name })),
    ...membranes
      .filter(it => drawn.has(it.pen))
      .map(({ pen, name }): LegendEntry => ({ kind: 'line', pen, name })),
  ]
}

const isSeen = (area: Pick<Area, 'outline' | 'holes'>, hatching: Hatching, scale: number): boolean =>
  hatchOf(hatching.key).solid !== undefined || densityOf(area, hatching, scale) !== 'solid'

type Area = Extract<ViewMark, { kind: 'area' }>

const swatch_mm: Point = [9, 6]
const row_mm = 8

/** How high a legend of a width is. */
export const legendHeight_mm = (count: number, width_mm: number): number =>
  Math.ceil(count / columnsOf(width_mm)) * row_mm - (row_mm - swatch_mm[1])

const columnsOf = (width_mm: number): number => Math.max(1, Math.floor(width_mm / 34.5))

/** Draws a legend from its upper left corner. */
export const drawLegend = (
  entries: readonly LegendEntry[],
  [x, top]: Point,
  width_mm: number,
  language: Language,
): readonly ViewMark[] => {
  const columns = columnsOf(width_mm)
  const cell = width_mm / columns
  return entries.flatMap((entry, at) =>
    drawEntry(
      entry,
      [x + (at % columns) * cell, top - Math.floor(at / columns) * row_mm - swatch_mm[1]],
      cell,
      language,
    ),
  )
}

const drawEntry = (
  entry: LegendEntry,
  [x, y]: Point,
  cell_mm: number,
  language: Language,
): readonly ViewMark[] => {
  const lines = linesOf(entry.name[language], cell_mm - swatch_mm[0] - 2.4, heights.note_mm)
  const pitch = heights.note_mm * 1.4
  const middle = y + swatch_mm[1] / 2
  const first = middle - heights.note_mm / 2 + ((lines.length - 1) * pitch) / 2
  return [
    ...(entry.kind === 'hatch' ? swatchOf(entry.key, [x, y]) : [stretchOf(entry.pen, [x, middle])]),
    ...lines.map((it, at) => text(it, [x + swatch_mm[0] + 1.8, first - at * pitch])),
  ]
}

const swatchOf = (key: string, at: Point): readonly ViewMark[] => {
  const outline = boxOf(at, swatch_mm)
  const tint = hatches.find(it => it.key === key)?.tint ?? '#FFFFFF'
  return [
    {
      kind: 'area',
      layer: 'sheet',
      outline,
      holes: [],
      hatch: { key, origin: at, turn_deg: 0, size: swatch_mm, always: true },
      tint,
    },
    { kind: 'path', layer: 'sheet', pen: 'stroke', points: outline, closed: true },
  ]
}

const stretchOf = (pen: Pen, [x, y]: Point): ViewMark => ({
  kind: 'path',
  layer: 'sheet',
  pen,
  points: [
    [x, y],
    [x + swatch_mm[0], y],
  ],
  closed: false,
})

/** The distance from one line of a note to the next. */
export const notePitch_mm = heights.note_mm * linePitch
