import type { Point } from '../../geometry'
import { type Language, words } from '../../words'
import { flatten } from '../flatten'
import type { Mark, View, ViewMark } from '../mark'
import { placeView, sizeOnPaper_mm } from '../place-view'
import { callout } from '../style/spacing'
import { heights, textWidth_mm } from '../text/lettering'
import { text } from './marks'

const inside = words('INSIDE', 'INNEN')
const outside = words('OUTSIDE', 'AUSSEN')

/** Lower left and upper right corner of what stands on the sheet. */
export type Box = readonly [Point, Point]

/**
 * The words inside and outside, off the drawing on their sides of it: at the end towards the opening, or where they
 * meet neither sizes nor leaders nor labels nor what is `kept` from them, within a room if there is one.
 */
export const sideWords = (
  view: View,
  labels: readonly Mark[],
  language: Language,
  { room, kept = [] }: { readonly room?: Box; readonly kept?: readonly Box[] } = {},
): readonly Mark[] => {
  const drawn = [...flatten(view), ...labels.flatMap(it => (it.kind === 'view' ? [] : [it]))]
  const taken = [...kept, ...drawn.flatMap(boxesOf)]
  const words = [
    [inside[language], 1],
    [outside[language], 0],
  ] as const
  return words.map(([word, side]) => {
    const isOnItsSide = sideTest(word, view, side)
    const usual = placesFor(word, view, side).filter(isOnItsSide)
    const isFree = (it: Stand) => {
      const box = boxAt(it, word)
      return !taken.some(other => meet(box, other)) && (!room || isWithin(box, room))
    }
    const stand =
      usual.find(isFree) ??
      nearestPlace(
        usual[0] ?? { at: view.at, anchor: 'start' },
        room ?? roundView(view),
        it => isOnItsSide(it) && isFree(it),
      ) ??
      usual[0]
    const { at, anchor } = stand ?? { at: [0, 0], anchor: 'start' }
    taken.push(boxAt({ at, anchor }, word))
    return text(word, at, { height_mm: heights.subtitle_mm, faint: true, anchor })
  })
}

/** The place on a grid over a room that is nearest to a place, of those that are good. */
const nearestPlace = (
  { at: [x, y], anchor }: Stand,
  [[x0, y0], [x1, y1]]: Box,
  isGood: (it: Stand) => boolean,
): Stand | undefined => {
  let nearest: Stand | undefined
  let least = Infinity
  for (let column = x0; column <= x1; column += grid_mm)
    for (let row = y0; row <= y1; row += grid_mm) {
      const away = Math.hypot(column - x, row - y)
      if (away >= least) continue
      const stand: Stand = { at: [column, row], anchor }
      if (isGood(stand)) [nearest, least] = [stand, away]
    }
  return nearest
}

const grid_mm = 1.5

const isWithin = ([a, b]: Box, [c, d]: Box): boolean =>
  c[0] <= a[0] && c[1] <= a[1] && b[0] <= d[0] && b[1] <= d[1]

/** The view with some room round it. */
const roundView = (view: View): Box => {
  const [width, height] = sizeOnPaper_mm(view)
  return [
    [view.at[0] - 40, view.at[1] - 30],
    [view.at[0] + width + 40, view.at[1] + height + 30],
  ]
}

type Stand = { readonly at: Point; readonly anchor: 'start' | 'end' }

/** Whether words stand on their own half of a view: the wrong word there would be worse than none. */
const sideTest = (word: string, view: View, side: 0 | 1): ((it: Stand) => boolean) => {
  const { toPaper } = placeView(view)
  const [low, high] = view.window
  const [across, through] = parting(view)
  const middle = toPaper([across, through])
  const end = toPaper([low[0], side === 1 ? high[1] : low[1]])
  if (view.turn_deg === 0)
    return ({ at: [, y] }) => (end[1] > middle[1] ? y > middle[1] : y + heights.subtitle_mm < middle[1])
  const width = textWidth_mm(word, heights.subtitle_mm)
  return ({ at: [x], anchor }) => {
    const left = anchor === 'end' ? x - width : x
    return end[0] > middle[0] ? left > middle[0] : left + width < middle[0]
  }
}

/** What parts inside from outside: the middle of the element in the wall, else of the view. Model mm. */
const parting = ({ marks, window: [low, high] }: View): Point => {
  const depths = marks.flatMap(it =>
    it.kind === 'area' && it.layer === 'parts' ? it.outline.map(([, y]) => y) : [],
  )
  const across = (low[0] + high[0]) / 2
  return depths.length === 0
    ? [across, (low[1] + high[1]) / 2]
    : [across, (Math.min(...depths) + Math.max(...depths)) / 2]
}

/** Places along the side of a view that looks inside (1) or outside (0), the end towards the opening first. */
const placesFor = (word: string, view: View, side: 0 | 1): readonly Stand[] => {
  const { toPaper } = placeView(view)
  const [low, high] = view.window
  const [open, wall] = view.turn_deg === 0 && view.mirrored ? [low[0], high[0]] : [high[0], low[0]]
  const [from, to] = [
    toPaper([open, side === 1 ? high[1] : low[1]]),
    toPaper([wall, side === 1 ? high[1] : low[1]]),
  ]
  const middle = toPaper([(low[0] + high[0]) / 2, (low[1] + high[1]) / 2])
  const width = textWidth_mm(word, heights.subtitle_mm)
  if (view.turn_deg === 0) {
    const up = from[1] > middle[1]
    const y = up ? from[1] + off_mm : from[1] - off_mm - heights.subtitle_mm
    const [left, right] = [Math.min(from[0], to[0]) + 3, Math.max(from[0], to[0]) - 3]
    const shifts = [0, 3, 6, 9, 12, 15].flatMap(off =>
      [0, 4, 8, 12, 16, 20, 24].map((shift): Stand => ({
        at: [right + shift, up ? y + off : y - off],
        anchor: 'end',
      })),
    )
    // beside the end of the wall, where glass and sash leave room
    const within = Array.from({ length: 100 }, (_, at) => at / 4).flatMap(down =>
      [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((aside): Stand => ({
        at: [right - 4 * aside, up ? y - 8 - 3 * down : y + 8 + 3 * down],
        anchor: 'end',
      })),
    )
    const beyond: readonly Stand[] = [
      { at: [left, y], anchor: 'start' },
      { at: [left - width - 6, y], anchor: 'start' },
    ]
    return [...shifts, ...within, ...beyond]
  }
  const up = from[1] > middle[1]
  const x = from[0] > middle[0] ? from[0] - 3 : from[0] + 3
  const anchor = from[0] > middle[0] ? 'end' : 'start'
  const turn = anchor === 'end' ? -1 : 1
  const asides = [0, 1, 2, 3, 4, 5, 6, 7, 8].flatMap(aside =>
    [0, 3, 6, 9, 12, 15, 18].map(shift => [aside, shift] as const),
  )
  return [
    ...[0, 3, 6, 9].map(shift => [0, shift] as const),
    ...asides,
    ...asides.map(([aside, shift]) => [-aside, shift] as const),
  ].map(([aside, shift]) => ({
    at: [
      x + turn * 3 * aside,
      up ? from[1] + off_mm + shift : from[1] - off_mm - shift - heights.subtitle_mm,
    ],
    anchor,
  }))
}

/** From the drawing to the words. */
const off_mm = 2

const boxAt = ({ at: [x, y], anchor }: Stand, word: string): Box => {
  const width = textWidth_mm(word, heights.subtitle_mm)
  const left = anchor === 'end' ? x - width : x
  return [
    [left - 1, y - 0.6],
    [left + width + 1, y + heights.subtitle_mm + 0.6],
  ]
}

/** Whether two boxes have a place in common. */
export const meet = ([a, b]: Box, [c, d]: Box): boolean =>
  a[0] < d[0] && c[0] < b[0] && a[1] < d[1] && c[1] < b[1]

/** Boxes round what words must keep off: words, chains with their extension lines, leaders, break lines. */
export const boxesOf = (mark: ViewMark): readonly Box[] => {
  if (mark.kind === 'text') return [textBox(mark)]
  if (mark.kind === 'area' && mark.hatch) return [extentBox(mark.outline)]
  if (mark.kind === 'leader')
    return [
      ...mark.path.slice(1).flatMap((to, at) => stepsAlong(mark.path[at] ?? to, to)),
      ...mark.path.slice(-1).map(end => boxRound(end, end, callout.balloon_mm + 0.5)),
    ]
  if (mark.kind === 'path' && (mark.pen === 'break' || mark.pen === 'size'))
    return mark.points.slice(1).map((to, at) => boxRound(mark.points[at] ?? to, to))
  if (mark.kind !== 'dimension') return []
  const level = Math.abs(mark.from[1] - mark.to[1]) < 1e-6
  const feet: readonly Point[] = [mark.from, mark.to].map(([x, y]) =>
    level ? [x, mark.line[1]] : [mark.line[0], y],
  )
  const [a, b] = [feet[0] ?? mark.from, feet[1] ?? mark.to]
  const half = textWidth_mm(mark.words, heights.size_mm) / 2
  const [x, y] = mark.text
  const words: Box = level
    ? [[x - half, y], [x + half, y + heights.size_mm]] // prettier-ignore
    : [[x - heights.size_mm, y - half], [x, y + half]] // prettier-ignore
  return [words, boxRound(a, b), boxRound(mark.from, a), boxRound(mark.to, b)]
}

/** Words keep off other words, so that they never stand in a gap of a note. Ours. */
const offText_mm = 1.2

const textBox = (mark: Extract<ViewMark, { kind: 'text' }>): Box => {
  const width = textWidth_mm(mark.words, mark.height_mm, mark.bold === true)
  const left = mark.anchor === 'start' ? 0 : mark.anchor === 'end' ? -width : -width / 2
  const [x, y] = mark.at
  return [
    [x + left - offText_mm, y - offText_mm],
    [x + left + width + offText_mm, y + mark.height_mm + offText_mm],
  ]
}

const extentBox = (points: readonly Point[]): Box => [
  [Math.min(...points.map(it => it[0])) - 1, Math.min(...points.map(it => it[1])) - 1],
  [Math.max(...points.map(it => it[0])) + 1, Math.max(...points.map(it => it[1])) + 1],
]

const boxRound = ([ax, ay]: Point, [bx, by]: Point, off_mm = 1): Box => [
  [Math.min(ax, bx) - off_mm, Math.min(ay, by) - off_mm],
  [Math.max(ax, bx) + off_mm, Math.max(ay, by) + off_mm],
]

/** A slope as a row of small boxes: one box round it would take room that it does not use. */
export const stepsAlong = ([ax, ay]: Point, [bx, by]: Point): readonly Box[] => {
  const steps = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / 2))
  const place = (at: number): Point => [ax + ((bx - ax) * at) / steps, ay + ((by - ay) * at) / steps]
  return Array.from({ length: steps }, (_, at) => boxRound(place(at), place(at + 1), 0.6))
}
