import type { Point } from '../../geometry'
import type { SurfacePlace, SurfaceStretch } from '../../heat'
import type { Face } from '../../section'
import { writeNumber } from '../../units'
import { type Language, type Words, words } from '../../words'
import type { ViewMark } from '../mark'
import { heights } from '../text/lettering'
import { line, text } from '../sheet/marks'
import type { Box } from './box'
import { thinned } from './contours/thin'
import { levelWords, roomFor_mm } from './level-words'
import type { Place } from './scale-marks'
import type { HeatPicture } from './picture'

/** What a stretch of the inside is called. */
export const surfaceName: Readonly<Record<Face['of'], Words>> = {
  wall: words('wall face', 'Wandfläche'),
  reveal: words('reveal', 'Leibung'),
  frame: words('frame', 'Rahmen'),
  glass: words('glass', 'Glas'),
  sill: words('sill', 'Fensterbank'),
  floor: words('floor', 'Fußboden'),
}

/** How much of the undisturbed wall and of the glass is shown at most, and the room for numbers and names. Ours. */
const shown_mm = { wall: 110, glass: 45 } as const
const room_mm = { left: 7, right: 2, foot: 5.2, head: 1.5 } as const

/** The temperature along the inside as a chart: stretches, the named lines, the coldest place of the reveal. */
export const profileMarks = (
  it: Pick<HeatPicture, 'profile' | 'named' | 'coldest' | 'scale'>,
  { at, size }: Place,
  language: Language,
): readonly ViewMark[] => {
  const stretches = shownOf(it.profile)
  const places = stretches.flatMap(stretch => stretch.places)
  const [first, last] = [places[0], places.at(-1)]
  if (!first || !last) return []
  const [x0, x1] = [at[0] + room_mm.left, at[0] + size[0] - room_mm.right]
  const [y0, y1] = [at[1] + room_mm.foot, at[1] + size[1] - room_mm.head]
  const values = [...places.map(place => place.temperature_C), ...it.named.map(({ level_C }) => level_C)]
  const { from_C, to_C, step_K } = axisOf(Math.min(...values), Math.max(it.scale.high_C, ...values), y1 - y0)
  const px = (along_mm: number): number =>
    x0 + ((along_mm - first.along_mm) / (last.along_mm - first.along_mm || 1)) * (x1 - x0)
  const py = (value_C: number): number => y0 + ((value_C - from_C) / (to_C - from_C)) * (y1 - y0)
  const grid = Array.from({ length: Math.round((to_C - from_C) / step_K) + 1 }, (_, i) => from_C + i * step_K)
  const curve = thinned(
    places.map((place): Point => [px(place.along_mm), py(place.temperature_C)]),
    0.05,
  )
  const edges = stretches.slice(1).flatMap(({ places: [start] }) => (start ? [px(start.along_mm)] : []))
  const on: On = {
    px,
    py,
    x0,
    x1,
    edges,
    language,
    isClear: box =>
      x0 <= box[0][0] &&
      box[1][0] <= x1 &&
      y0 <= box[0][1] &&
      box[1][1] <= y1 + 1 &&
      !touches(curve, box) &&
      !it.named.some(({ level_C }) => box[0][1] - 0.7 < py(level_C) && py(level_C) < box[1][1] + 0.7),
  }
  const named = namedLines(it, on)
  const coldest = coldestOn(it, places, {
    ...on,
    isClear: box => on.isClear(box) && !named.some(other => overlap(box, other.box)),
  })
  const standing = [...named, coldest].flatMap(({ box }) => (box ? [box] : []))
  return [
    ...grid.flatMap(value_C => [
      ...across([x0, x1], py(value_C), standing),
      text(writeNumber(value_C, language), [x0 - 1.5, py(value_C) - heights.note_mm / 2], { anchor: 'end' }),
    ]),
    ...edges.flatMap(x => upright(x, [y0, y1], standing)),
    ...namesUnder(stretches, px, at[1] + 0.6, language),
    ...named.flatMap(({ marks }) => marks),
    { kind: 'path', layer: 'isotherms', pen: 'curve', points: curve, closed: false },
    ...coldest.marks,
  ]
}

/** The stretches with what is undisturbed at both ends cut short. */
const shownOf = (profile: readonly SurfaceStretch[]): readonly SurfaceStretch[] => {
  const corner = profile.find(({ of }) => of !== 'wall')?.places[0]?.along_mm ?? 0
  const last = profile.at(-1)
  const end = last?.of === 'glass' ? (last.places[0]?.along_mm ?? 0) + shown_mm.glass : Infinity
  return profile.flatMap(({ of, places }) => {
    const kept = places.filter(({ along_mm }) => corner - shown_mm.wall <= along_mm && along_mm <= end)
    return kept.length > 1 ? [{ of, places: kept }] : []
  })
}

/** An axis in steps of 1, 2, 4 or 5 degrees that leaves its numbers room. */
const axisOf = (low_C: number, high_C: number, height_mm: number) => {
  const most = Math.max(2, Math.floor(height_mm / 5))
  const step_K =
    [1, 2, 4, 5, 10, 20].find(step => Math.ceil(high_C / step) - Math.floor((low_C - 0.5) / step) <= most) ??
    50
  const from_C = Math.floor((low_C - 0.5) / step_K) * step_K
  return { from_C, to_C: Math.max(from_C + step_K, Math.ceil(high_C / step_K) * step_K), step_K }
}

const namesUnder = (
  stretches: readonly SurfaceStretch[],
  px: (along_mm: number) => number,
  foot: number,
  language: Language,
): readonly ViewMark[] =>
  stretches.flatMap(({ of, places }) => {
    const [from, to] = [px(places[0]?.along_mm ?? 0), px(places.at(-1)?.along_mm ?? 0)]
    const said = surfaceName[of][language]
    return roomFor_mm(said) + 1 <= to - from
      ? [text(said, [(from + to) / 2, foot], { anchor: 'middle' })]
      : []
  })

type On = {
  readonly px: (along_mm: number) => number
  readonly py: (value_C: number) => number
  readonly x0: number
  readonly x1: number
  /** where one surface ends and the next begins, ascending */
  readonly edges: readonly number[]
  readonly language: Language
  /** whether words in a box cover neither curve nor named line, and stay in the chart */
  readonly isClear: (box: Box) => boolean
}

/** Named lines across the chart, each with its name over it or below it: where neither the curve is nor an edge of a surface. */
const namedLines = (
  { named }: Pick<HeatPicture, 'named'>,
  { x0, x1, edges, py, language, isClear }: On,
): readonly { readonly marks: readonly ViewMark[]; readonly box: Box }[] =>
  named.map(it => {
    const said = levelWords(it, language)
    const y = py(it.level_C)
    const width = roomFor_mm(said, true)
    const tried = [x0, ...edges, x1 - 3 - width].flatMap(left =>
      [y + 1.1, y - heights.note_mm - 1.1].map(low => boxAt([left + 1.5, low], width)),
    )
    const isBetween = ([[left], [right]]: Box): boolean => !edges.some(x => left - 0.7 < x && x < right + 0.7)
    const box =
      tried.find(one => isBetween(one) && isClear(one)) ??
      tried.find(isClear) ??
      boxAt([x0 + 1.5, y + 1.1], width)
    return { box, marks: [line('isotherm-named', [x0, y], [x1, y]), text(said, box[0], { bold: true })] }
  })

/** A line of the grid, and an edge of a surface: broken where words stand. */
const across = ([from, to]: Span, y: number, boxes: readonly Box[]): readonly ViewMark[] =>
  pieces([from, to], boxes.flatMap(([[left, low], [right, high]]) => (low - 0.4 < y && y < high + 0.4 ? [[left - 0.6, right + 0.6] as const] : []))).map(([start, end]) =>
    line('faint', [start, y], [end, y]),
  ) // prettier-ignore

const upright = (x: number, [from, to]: Span, boxes: readonly Box[]): readonly ViewMark[] =>
  pieces([from, to], boxes.flatMap(([[left, low], [right, high]]) => (left - 0.4 < x && x < right + 0.4 ? [[low - 0.6, high + 0.6] as const] : []))).map(([start, end]) =>
    line('hidden', [x, start], [x, end]),
  ) // prettier-ignore

type Span = readonly [from: number, to: number]

/** What is left of a stretch without some gaps. */
const pieces = (whole: Span, gaps: readonly Span[]): readonly Span[] =>
  gaps
    .reduce<readonly Span[]>(
      (left, [from, to]) =>
        left.flatMap(([a, b]): readonly Span[] => [
          [a, Math.min(b, from)],
          [Math.max(a, to), b],
        ]),
      [whole],
    )
    .filter(([a, b]) => b > a)

/** The coldest place on the curve, with its number beside it where nothing else stands. */
const coldestOn = (
  { coldest }: Pick<HeatPicture, 'coldest'>,
  places: readonly SurfacePlace[],
  { px, py, language, isClear }: On,
): { readonly marks: readonly ViewMark[]; readonly box?: Box } => {
  if (!coldest) return { marks: [] }
  const off = ({ at_mm: [x, y] }: SurfacePlace) => Math.hypot(x - coldest.at_mm[0], y - coldest.at_mm[1])
  const at = places.reduce<SurfacePlace | undefined>((best, it) => (best && off(best) <= off(it) ? best : it), undefined) // prettier-ignore
  if (!at || off(at) > 1) return { marks: [] }
  const [x, y]: Point = [px(at.along_mm), py(coldest.temperature_C)]
  const said = writeNumber(Number(coldest.temperature_C.toFixed(1)), language, 1)
  const width = roomFor_mm(said, true)
  const half = heights.note_mm / 2
  const tried = [
    boxAt([x - 2.6 - width, y - half - 2.2], width),
    boxAt([x + 2.6, y - half - 2.2], width),
    boxAt([x - width / 2, y - heights.note_mm - 2.6], width),
    boxAt([x - width / 2, y + 2.6], width),
    boxAt([x + 2.6, y + 1], width),
    boxAt([x - 2.6 - width, y + 1], width),
  ]
  const box = tried.find(isClear)
  return {
    marks: [
      { kind: 'symbol', layer: 'isotherms', name: 'coldest-place', at: [x, y], values: {} },
      ...(box ? [text(said, box[0], { bold: true })] : []),
    ],
    ...(box && { box }),
  }
}

const boxAt = ([left, low]: Point, width: number): Box => [
  [left, low],
  [left + width, low + heights.note_mm],
]

const overlap = (a: Box, b: Box): boolean =>
  a[0][0] < b[1][0] + 1 && b[0][0] < a[1][0] + 1 && a[0][1] < b[1][1] + 0.8 && b[0][1] < a[1][1] + 0.8

/** Whether a curve passes through a box or close by. */
const touches = (curve: readonly Point[], [[left, low], [right, high]]: Box): boolean =>
  curve.some(([x, y], i) => {
    const [px, py] = curve[i - 1] ?? [x, y]
    return (
      Math.min(x, px) < right + 1 &&
      left - 1 < Math.max(x, px) &&
      Math.min(y, py) < high + 0.8 &&
      low - 0.8 < Math.max(y, py)
    )
  })
