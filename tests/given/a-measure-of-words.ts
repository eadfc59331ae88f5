import type { Point } from '../../core/geometry'
import type { Painted } from './a-painted-page'

/** The box round the ink of some words. */
export type Box = { readonly words: string; readonly low: Point; readonly high: Point }

/** Parts of the size of a font, from the file of the font: line above and below the foot, capitals, tails. */
const font = {
  above: 1900 / 2048,
  below: 500 / 2048,
  capital: 1456 / 2048,
  tail: 430 / 2048,
  mark: 300 / 2048,
}

/** Sizes of capitals on our sheets: a line as high as one of them is level, any other stands upright. */
const heights_mm = [1.8, 2.5, 3.5, 5]

/**
 * The box of the ink of words whose line a reader has found: from the tails of letters that have one to the capitals, and
 * the marks over them.
 */
export const letterBox = (words: string, line: Pick<Box, 'low' | 'high'>): Box => {
  const [[x0, y0], [x1, y1]] = [line.low, line.high]
  const of = font.above + font.below
  const isLevel = heights_mm.some(it => Math.abs((y1 - y0) / ((it / font.capital) * of) - 1) < 0.003)
  const size = (isLevel ? y1 - y0 : x1 - x0) / of
  const up = size * (font.capital + (/[ÄÖÜÉÂ]/.test(words) ? font.mark : 0))
  // the comma of a number hangs between figures: a stroke at the end of the number does not meet it
  const down = size * (/[gjpqyQ,;()[\]/|µ]/.test(words.replaceAll(/(?<=\d),(?=\d)/g, '')) ? font.tail : 0)
  if (isLevel) {
    const foot = y0 + size * font.below
    return { words, low: [x0, foot - down], high: [x1, foot + up] }
  }
  // read from the right: the foot of upright words is at their right
  const foot = x1 - size * font.below
  return { words, low: [foot - up, y0], high: [foot + down, y1] }
}

/** Pairs of words whose ink overlaps. */
export const overlapping = (boxes: readonly Box[]): readonly string[] => {
  const sorted = boxes.toSorted((a, b) => a.low[0] - b.low[0])
  return sorted.flatMap((a, at) => {
    const met: string[] = []
    for (let to = at + 1; to < sorted.length; to++) {
      const b = sorted[to]
      if (b === undefined || b.low[0] >= a.high[0] - hair_mm) break
      if (a.low[1] < b.high[1] - hair_mm && b.low[1] < a.high[1] - hair_mm)
        met.push(`${a.words} | ${b.words}`)
    }
    return met
  })
}

/** What rounds off in a file. */
const hair_mm = 0.02

/** Words that a line runs through or an area lies under. White is paper: it hides and is not seen. */
export const struckThrough = (boxes: readonly Box[], painted: readonly Painted[]): readonly string[] => {
  const cells = new Map<number, Box[]>()
  for (const box of boxes)
    for (const cell of cellsOf(box.low, box.high)) cells.set(cell, [...(cells.get(cell) ?? []), box])
  const struck = new Set<string>()
  for (const { kind, layer, colour, width_mm, paths } of painted) {
    if (colour === '1 1 1') continue
    const half = kind === 'stroke' ? width_mm / 2 : 0
    for (const path of paths)
      for (let at = 1; at < path.length; at++) {
        const [a, b] = [path[at - 1], path[at]]
        if (a === undefined || b === undefined) continue
        const low: Point = [Math.min(a[0], b[0]) - half, Math.min(a[1], b[1]) - half]
        const high: Point = [Math.max(a[0], b[0]) + half, Math.max(a[1], b[1]) + half]
        for (const cell of cellsOf(low, high))
          for (const box of cells.get(cell) ?? [])
            if (runsThrough(a, b, box, half)) struck.add(`${box.words} by ${layer}`)
      }
    if (kind === 'fill')
      for (const box of boxes) {
        const middle: Point = [(box.low[0] + box.high[0]) / 2, (box.low[1] + box.high[1]) / 2]
        if (surrounds(paths, middle)) struck.add(`${box.words} on ${layer}`)
      }
  }
  return [...struck]
}

const cell_mm = 12

function* cellsOf(low: Point, high: Point): Generator<number> {
  for (let x = Math.floor(low[0] / cell_mm); x <= Math.floor(high[0] / cell_mm); x++)
    for (let y = Math.floor(low[1] / cell_mm); y <= Math.floor(high[1] / cell_mm); y++) yield x * 1000 + y
}

/** Whether a line with its width enters a box: the line is cut to the box by its four sides in turn. */
const runsThrough = (a: Point, b: Point, { low, high }: Box, half: number): boolean => {
  let [from, to] = [0, 1]
  for (const axis of [0, 1] as const) {
    const [start, way] = [a[axis], b[axis] - a[axis]]
    const [near, far] = [low[axis] - half + hair_mm, high[axis] + half - hair_mm]
    if (Math.abs(way) < 1e-9) {
      if (start <= near || far <= start) return false
      continue
    }
    const [one, two] = [(near - start) / way, (far - start) / way]
    from = Math.max(from, Math.min(one, two))
    to = Math.min(to, Math.max(one, two))
  }
  return from < to
}

const surrounds = (loops: readonly (readonly Point[])[], [x, y]: Point): boolean => {
  let inside = false
  for (const loop of loops)
    for (let at = 0; at < loop.length; at++) {
      const [a, b] = [loop[(at + loop.length - 1) % loop.length], loop[at]]
      if (a && b && a[1] > y !== b[1] > y && x < ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]) + a[0])
        inside = !inside
    }
  return inside
}

/** How many pairs of open lines cross each other. */
export const crossings = (lines: readonly (readonly Point[])[]): number => {
  const segments = lines.map(path => path.slice(1).map((to, at) => [path[at] ?? to, to] as const))
  return segments.reduce(
    (sum, a, at) =>
      sum +
      segments.slice(at + 1).filter(b => a.some(one => b.some(other => doCross(...one, ...other)))).length,
    0,
  )
}

const side = ([ax, ay]: Point, [bx, by]: Point, [x, y]: Point): number =>
  Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax))
const doCross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
