import type { Outline, Point } from '../../geometry'

/** Lower left and upper right corner. */
export type Window = readonly [Point, Point]

/** The pieces of a line inside a window. What runs along the window's edge counts as outside. */
export const clipLine = (line: readonly Point[], [low, high]: Window): Point[][] => {
  const pieces: Point[][] = []
  let piece: Point[] = []
  const close = () => {
    if (piece.length > 1) pieces.push(piece)
    piece = []
  }
  for (let at = 0; at + 1 < line.length; at++) {
    const [from, to] = [line[at], line[at + 1]]
    if (from === undefined || to === undefined) continue
    const span = spanInside(from, to, low, high)
    if (span === undefined) {
      close()
      continue
    }
    const [start, end] = span
    if (start > 0 || piece.length === 0) {
      close()
      piece = [between(from, to, start)]
    }
    piece.push(between(from, to, end))
    if (end < 1) close()
  }
  close()
  return pieces
}

/** A place on a stretch, its ends exactly. */
export const between = (from: Point, to: Point, share: number): Point =>
  share === 0
    ? from
    : share === 1
      ? to
      : [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]

/** The share of a stretch that lies inside, by Liang and Barsky. */
export const spanInside = (from: Point, to: Point, low: Point, high: Point): [number, number] | undefined => {
  let [start, end] = [0, 1]
  for (const axis of [0, 1] as const) {
    const step = to[axis] - from[axis]
    if (step === 0) {
      if (from[axis] <= low[axis] || high[axis] <= from[axis]) return undefined
      continue
    }
    const [a, b] = [(low[axis] - from[axis]) / step, (high[axis] - from[axis]) / step]
    start = Math.max(start, Math.min(a, b))
    end = Math.min(end, Math.max(a, b))
  }
  return start < end ? [start, end] : undefined
}

/**
 * An outline cut to a window, by Sutherland and Hodgman. Where the cut parts it, the pieces stay joined by edges of no
 * width along the window: harmless for filling and hatching, never to be stroked.
 */
export const clipOutline = (outline: Outline, [low, high]: Window): Outline => {
  const left = cut(outline, 0, low[0], 1)
  const right = cut(left, 0, high[0], -1)
  return cut(cut(right, 1, low[1], 1), 1, high[1], -1)
}

const cut = (outline: Outline, axis: 0 | 1, at: number, side: 1 | -1): Outline => {
  const kept: Point[] = []
  outline.forEach((to, index) => {
    const from = outline[(index + outline.length - 1) % outline.length] ?? to
    const [a, b] = [(from[axis] - at) * side, (to[axis] - at) * side]
    if (a >= 0 !== b >= 0) kept.push(between(from, to, a / (a - b)))
    if (b >= 0) kept.push(to)
  })
  return kept
}
