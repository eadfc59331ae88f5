import type { Point } from '../../geometry'
import type { Mark, View, ViewMark } from '../mark'
import { flatten } from '../flatten'
import { sizeOnPaper_mm } from '../place-view'
import { type Box, boxesOf, stepsAlong } from './side-words'

/** A map of a sheet that says of any rectangle whether something stands in it. Paper mm. */
export type Taken = { readonly isFree: (box: Box) => boolean; readonly room: Box }

/** Fields of the map. Ours. */
const cell_mm = 1

/**
 * What stands in a room of a sheet: marks, and boxes that are kept free besides. Of a view its bodies count, and what is
 * drawn round them.
 */
export const takenIn = (room: Box, marks: readonly Mark[], kept: readonly Box[] = []): Taken => {
  const [[x0, y0], [x1, y1]] = room
  const [columns, rows] = [Math.ceil((x1 - x0) / cell_mm), Math.ceil((y1 - y0) / cell_mm)]
  const cells = new Uint8Array(columns * rows)
  const take = ([low, high]: Box) => {
    const from = Math.max(0, Math.floor((low[0] - x0) / cell_mm))
    const to = Math.min(columns, Math.ceil((high[0] - x0) / cell_mm))
    const last = Math.min(rows, Math.ceil((high[1] - y0) / cell_mm))
    for (let row = Math.max(0, Math.floor((low[1] - y0) / cell_mm)); row < last; row++)
      if (from < to) cells.fill(1, row * columns + from, row * columns + to)
  }
  kept.forEach(take)
  for (const mark of marks.flatMap(it => (it.kind === 'view' ? flatten(it) : [it]))) {
    if (mark.kind === 'area') for (const box of strips(mark.outline)) take(box)
    else boxesRound(mark).forEach(take)
  }
  const sums = summed(cells, columns, rows)
  const across = columns + 1
  return {
    room,
    isFree: ([low, high]) => {
      if (low[0] < x0 || low[1] < y0 || x1 < high[0] || y1 < high[1]) return false
      const [a, b] = [Math.floor((low[0] - x0) / cell_mm), Math.floor((low[1] - y0) / cell_mm)]
      const [c, d] = [Math.ceil((high[0] - x0) / cell_mm), Math.ceil((high[1] - y0) / cell_mm)]
      const at = (column: number, row: number) => sums[row * across + column] ?? 0
      return at(c, d) - at(a, d) - at(c, b) + at(a, b) === 0
    },
  }
}

/** Boxes round the words of some marks, those of sizes and the circles of numbers among them. */
export const wordsIn = (marks: readonly Mark[]): readonly Box[] =>
  marks
    .flatMap(it => (it.kind === 'view' ? flatten(it) : [it]))
    .flatMap(it => {
      if (it.kind === 'text') return boxesOf(it)
      if (it.kind === 'dimension') return boxesOf(it).slice(0, 1)
      return it.kind === 'leader' ? boxesOf(it).slice(-1) : []
    })

/** The window of a view on the sheet. */
export const windowOn = (view: View): Box => {
  const [width, height] = sizeOnPaper_mm(view)
  return [view.at, [view.at[0] + width, view.at[1] + height]]
}

/** An outline as boxes: its edges, and strips across what it surrounds. */
const strips = (outline: readonly Point[]): readonly Box[] => {
  const edges = outline.map((to, at) => [outline.at(at - 1) ?? to, to] as const)
  const heights = outline.map(it => it[1])
  const boxes: Box[] = edges.flatMap(([from, to]) => stepsAlong(from, to))
  for (let y = Math.min(...heights) + cell_mm / 2; y < Math.max(...heights); y += cell_mm) {
    const crossings = edges
      .flatMap(([a, b]) =>
        a[1] > y === b[1] > y ? [] : [a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])],
      )
      .toSorted((a, b) => a - b)
    for (let at = 0; at + 1 < crossings.length; at += 2)
      boxes.push([[crossings[at] ?? 0, y - cell_mm / 2], [crossings[at + 1] ?? 0, y + cell_mm / 2]]) // prettier-ignore
  }
  return boxes
}

/** How many fields below and to the left of each corner are taken. */
const summed = (cells: Uint8Array, columns: number, rows: number): Uint32Array => {
  const sums = new Uint32Array((columns + 1) * (rows + 1))
  for (let row = 0; row < rows; row++) {
    let own = 0
    for (let column = 0; column < columns; column++) {
      own += cells[row * columns + column] ?? 0
      const above = sums[row * (columns + 1) + column + 1] ?? 0
      sums[(row + 1) * (columns + 1) + column + 1] = above + own
    }
  }
  return sums
}

/** Lines of any pen, and all else as words keep off it. */
const boxesRound = (mark: ViewMark): readonly Box[] =>
  mark.kind === 'path'
    ? mark.points
        .slice(mark.closed ? 0 : 1)
        .flatMap((to, at) =>
          stepsAlong(mark.points[mark.closed ? (at || mark.points.length) - 1 : at] ?? to, to),
        )
    : boxesOf(mark)

/** The distances from everything else that a rectangle tries to keep, the widest first. Ours. */
const clear_mm = [9, 7, 5, 3.5, 2.5] as const
const step_mm = 2

/**
 * Where a rectangle has the most room round it in what is free, of several such places the nearest to a point: its lower
 * left corner; nothing where it fits nowhere.
 */
export const freePlace = (taken: Taken, [width, height]: Point, near: Point): Point | undefined => {
  const [[x0, y0], [x1, y1]] = taken.room
  for (const off of clear_mm) {
    let best: Point | undefined
    let least = Infinity
    for (let x = x0 + off; x + width + off <= x1; x += step_mm)
      for (let y = y0 + off; y + height + off <= y1; y += step_mm) {
        const away = Math.hypot(x + width / 2 - near[0], y + height / 2 - near[1])
        if (
          away < least &&
          taken.isFree([
            [x - off, y - off],
            [x + width + off, y + height + off],
          ])
        )
          // prettier-ignore
          [best, least] = [[x, y], away]
      }
    if (best) return best
  }
  return undefined
}
