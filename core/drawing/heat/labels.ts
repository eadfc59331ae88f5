import type { Point } from '../../geometry'
import { writeNumber } from '../../units'
import type { Language, Words } from '../../words'
import type { View, ViewMark } from '../mark'
import type { Placement } from '../place-view'
import type { Window } from '../section/clip'
import { paper } from '../style/pens'
import { heights } from '../text/lettering'
import type { Box } from './box'
import { type Cover, coverOf } from './cover'
import { levelWords, roomFor_mm } from './level-words'
import type { Coldest } from './picture'
import { isStrong } from './scale'

/** A piece of a line in model mm and on the paper; `name` where it has one. */
export type LabelledLine = {
  readonly level_C: number
  readonly points: readonly Point[]
  readonly paper: readonly Point[]
  readonly name?: Words
}

export type LabelLook = Pick<View, 'window' | 'scale' | 'turn_deg'> & {
  readonly language: Language
  readonly seen?: Window
  readonly coldest: Coldest | undefined
  readonly placement: Placement
}

/** Numbers of lines, and the boxes that lines leave free for them. */
export type Labels = { readonly marks: readonly ViewMark[]; readonly gaps: readonly Box[] }

/** Room round the letters, and what a plate keeps off the next one. Paper mm. Ours. */
const pad_mm = { across: 0.7, up: 0.6, apart: 0.8 } as const
/** How far a name stands off its line, and how far rows and the first of them stand apart. Ours. */
const offLine_mm = 1.1
const rows_mm = { lying: { pitch: 5, first: 7 }, standing: { pitch: 11, first: 9 } } as const
/** A thin line has a number of its own only where nothing else is this near. Ours. */
const alone_mm = 5
/** Less than this of a line is not worth a number. Ours. */
const shortest_mm = 7
/** What covering other lines costs against standing a row further on. Ours. */
const coverWeight = 12
const offJoint = 9

/**
 * Places the numbers: on rows across the wall from its cut end on, so that they stand in a ladder, each where it covers
 * the least of other lines; names beside their line. No two labels overlap, and none leaves what is seen.
 */
export const labelsOf = (lines: readonly LabelledLine[], look: LabelLook): Labels => {
  const { placement, language } = look
  const seen = boxOf((look.seen ?? look.window).map(placement.toPaper))
  const long = lines.filter(it => lengthOf(it.paper) >= shortest_mm)
  const cover = coverOf(seen, lines.map(it => ({ paper: it.paper, level_C: it.level_C, weight: weightOf(it) }))) // prettier-ignore
  const taken: Box[] = look.coldest ? [around(placement.toPaper(look.coldest.at_mm), 2.4, 2.4)] : []
  const marks: ViewMark[] = []
  const gaps: Box[] = []
  const put = (words: string, candidates: readonly Candidate[], isBold: boolean): void => {
    const free = candidates.filter(
      it => isWithin(it.box, seen) && !taken.some(other => overlap(it.box, other)),
    )
    const best = free.reduce<Candidate | undefined>((a, b) => (a && a.cost <= b.cost ? a : b), undefined)
    if (!best || best.cost === Infinity) return
    taken.push(grown(best.box, pad_mm.apart, pad_mm.apart))
    gaps.push(best.box)
    marks.push(...plateOf(words, best.box, placement.toModel, isBold))
  }
  const levels = [...new Set(long.map(it => it.level_C))].toSorted((a, b) => a - b)
  const of = (level_C: number) => long.filter(it => it.level_C === level_C)
  const candidatesFor = (level_C: number, words: string, how: 'named' | 'strong' | 'thin') =>
    of(level_C).flatMap(line => candidatesOn(line, sizeOf(words, how !== 'thin'), { look, seen, cover, how }))
  for (const level_C of levels) {
    const name = of(level_C).find(it => it.name)?.name
    if (!name) continue
    const words = levelWords({ level_C, name }, language)
    put(words, candidatesFor(level_C, words, 'named'), true)
  }
  for (const how of ['strong', 'thin'] as const)
    for (const level_C of levels) {
      if (isStrong(level_C) !== (how === 'strong') || of(level_C).some(it => it.name)) continue
      const words = writeNumber(level_C, language)
      put(words, candidatesFor(level_C, words, how), how === 'strong')
    }
  return { marks, gaps }
}

type Candidate = { readonly box: Box; readonly cost: number }

const weightOf = (it: LabelledLine): number => (it.name ? 3 : isStrong(it.level_C) ? 1 : 0.25)

const sizeOf = (words: string, isBold: boolean): Point => [
  roomFor_mm(words, isBold) + 2 * pad_mm.across,
  heights.label_mm + 2 * pad_mm.up,
]

/** Where a line crosses the rows, and what a label would cover there. Nearer to the cut end is better. */
const candidatesOn = (
  line: LabelledLine,
  [width, height]: Point,
  on: {
    readonly look: LabelLook
    readonly seen: Box
    readonly cover: Cover
    readonly how: 'named' | 'strong' | 'thin'
  },
): readonly Candidate[] => {
  const { look, cover, how } = on
  const isLying = look.turn_deg === 90 || look.turn_deg === 270
  const { pitch, first } = isLying ? rows_mm.lying : rows_mm.standing
  const start = (look.seen ?? look.window)[0][0] + first / look.scale
  const step = pitch / look.scale
  const side = width / 2 + offLine_mm
  const places = how === 'named' && isLying ? [side, -side] : [0]
  return line.points.slice(1).flatMap((to, i) => {
    const from = line.points[i] ?? to
    const [low, high] = [Math.min(from[0], to[0]), Math.max(from[0], to[0])]
    const rows: Candidate[] = []
    for (let row = Math.max(0, Math.ceil((low - start) / step)); start + row * step < high; row++) {
      const share = (start + row * step - from[0]) / (to[0] - from[0])
      const [x, y] = look.placement.toPaper([start + row * step, from[1] + share * (to[1] - from[1])])
      for (const off of places) {
        const box = around([x + off, y], width / 2, height / 2)
        const covered =
          how === 'thin'
            ? cover.over(grown(box, alone_mm, 1.5), line.level_C) > 0
              ? Infinity
              : 0
            : (coverWeight * cover.over(box, line.level_C)) / (width * height)
        // The rows of the ladder come first; the name of a line leaves the first row to numbers.
        // Numbers keep off the joint: what lies beyond the reveal wants to be seen.
        const beyond = start + row * step > 0 ? offJoint : 0
        const cost = covered + beyond + 0.35 * (how === 'named' ? Math.abs(row - 1.5) : row)
        rows.push({ box, cost: off < 0 ? cost + 0.01 : cost })
      }
    }
    return rows
  })
}

/** The letters on a plate that hides what lies below. */
const plateOf = (
  words: string,
  [low, high]: Box,
  toModel: Placement['toModel'],
  isBold: boolean,
): readonly ViewMark[] => {
  const corner = 0.5
  const plate: readonly Point[] = [
    [low[0] + corner, low[1]], [high[0] - corner, low[1]], [high[0], low[1] + corner], [high[0], high[1] - corner],
    [high[0] - corner, high[1]], [low[0] + corner, high[1]], [low[0], high[1] - corner], [low[0], low[1] + corner],
  ] // prettier-ignore
  return [
    { kind: 'area', layer: 'isotherms', outline: plate.map(toModel), holes: [], tint: paper },
    {
      kind: 'text',
      layer: 'isotherms',
      pen: 'text',
      at: toModel([(low[0] + high[0]) / 2, low[1] + pad_mm.up]),
      words,
      height_mm: heights.label_mm,
      turn_deg: 0,
      anchor: 'middle',
      ...(isBold && { bold: true }),
    },
  ]
}

const lengthOf = (points: readonly Point[]): number =>
  points.reduce((sum, [x, y], i) => {
    const [px, py] = points[i - 1] ?? [x, y]
    return sum + Math.hypot(x - px, y - py)
  }, 0)

const around = ([x, y]: Point, across: number, up: number): Box => [
  [x - across, y - up],
  [x + across, y + up],
]

const grown = ([low, high]: Box, across: number, up: number): Box => [
  [low[0] - across, low[1] - up],
  [high[0] + across, high[1] + up],
]

const overlap = (a: Box, b: Box): boolean =>
  a[0][0] < b[1][0] && b[0][0] < a[1][0] && a[0][1] < b[1][1] && b[0][1] < a[1][1]

const isWithin = (a: Box, b: Box): boolean =>
  b[0][0] <= a[0][0] && b[0][1] <= a[0][1] && a[1][0] <= b[1][0] && a[1][1] <= b[1][1]

const boxOf = (corners: readonly Point[]): Box => {
  const [xs, ys] = [corners.map(it => it[0]), corners.map(it => it[1])]
  return [
    [Math.min(...xs), Math.min(...ys)],
    [Math.max(...xs), Math.max(...ys)],
  ]
}
