import type { Point } from '../../geometry'

/** A body on paper: outline and holes as flat coordinates, inside is what an odd number surrounds. */
export type Shape = { readonly loops: readonly (readonly Point[])[] }

/** A body and between which heights it lies. */
export type Body = { readonly shape: Shape; readonly low: number; readonly high: number }

/** A body with its heights. */
export const bodyOf = (shape: Shape): Body => {
  let [low, high] = [Infinity, -Infinity]
  for (const loop of shape.loops)
    for (const [, y] of loop) {
      if (y < low) low = y
      if (y > high) high = y
    }
  return { shape, low, high }
}

/** The stretches of a horizontal line inside a shape, left to right. */
export const stretchesAt = (shape: Shape, y: number): readonly (readonly [number, number])[] => {
  const crossings: number[] = []
  for (const loop of shape.loops) {
    let from = loop[loop.length - 1]
    for (const to of loop) {
      if (from && from[1] <= y !== to[1] <= y)
        crossings.push(from[0] + ((y - from[1]) / (to[1] - from[1])) * (to[0] - from[0]))
      from = to
    }
  }
  if (crossings.length === 0) return none
  crossings.sort((a, b) => a - b)
  const stretches: [number, number][] = []
  for (let at = 0; at + 1 < crossings.length; at += 2)
    stretches.push([crossings[at] ?? 0, crossings[at + 1] ?? 0])
  return stretches
}

const none: readonly (readonly [number, number])[] = []

/** A place well inside a shape: the middle of the widest free square on a grid of lines. */
export const poleOf = (shape: Shape): Point | undefined => {
  const ys = shape.loops.flatMap(loop => loop.map(it => it[1]))
  const [low, high] = [Math.min(...ys), Math.max(...ys)]
  let best: Point | undefined
  let room = 0
  for (let line = 1; line < lines; line++) {
    const y = low + ((high - low) * line) / lines
    for (const [from, to] of stretchesAt(shape, y)) {
      for (const share of [0.25, 0.5, 0.75]) {
        const x = from + share * (to - from)
        const free = offShape_mm(shape, [x, y])
        if (free > room + 1e-9) {
          room = free
          best = [x, y]
        }
      }
    }
  }
  return best
}

const lines = 8

/** How far a place lies from the edge of a shape. */
export const offShape_mm = (shape: Shape, at: Point): number => {
  let least = Infinity
  for (const loop of shape.loops) {
    let from = loop[loop.length - 1]
    for (const to of loop) {
      if (from) least = Math.min(least, offStretch_mm2(at, from, to))
      from = to
    }
  }
  return Math.sqrt(least)
}

/** How far a place lies from a stretch between two points. */
export const offStretch_mm = (at: Point, from: Point, to: Point): number =>
  Math.sqrt(offStretch_mm2(at, from, to))

// Asked some hundred thousand times for a sheet: points are read by index, and roots are taken at the end.
const offStretch_mm2 = (at: Point, from: Point, to: Point): number => {
  const dx = to[0] - from[0]
  const dy = to[1] - from[1]
  const length2 = dx * dx + dy * dy
  const along = length2 === 0 ? 0 : ((at[0] - from[0]) * dx + (at[1] - from[1]) * dy) / length2
  const share = along < 0 ? 0 : along > 1 ? 1 : along
  const x = from[0] + share * dx - at[0]
  const y = from[1] + share * dy - at[1]
  return x * x + y * y
}

/** How near two stretches come to each other that do not cross. */
export const betweenStretches_mm = (a: Point, b: Point, c: Point, d: Point): number =>
  Math.sqrt(
    Math.min(
      offStretch_mm2(a, c, d),
      offStretch_mm2(b, c, d),
      offStretch_mm2(c, a, b),
      offStretch_mm2(d, a, b),
    ),
  )

/** Whether two stretches cross; such as only touch do not. */
export const doCross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  sideOf(a, b, c) * sideOf(a, b, d) < 0 && sideOf(c, d, a) * sideOf(c, d, b) < 0

const sideOf = (a: Point, b: Point, at: Point): number =>
  (b[0] - a[0]) * (at[1] - a[1]) - (b[1] - a[1]) * (at[0] - a[0])
