import { type Ink, textWidth_mm } from '../../drawing'
import type { Point } from '../../geometry'

/** Lower left and upper right corner. */
export type Box = readonly [Point, Point]

/** The box round ink, in paper mm: centres of lines, whole words and circles. Nothing has no box. */
export const boxOf = (inks: readonly Ink[]): Box | undefined => {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity]
  const take = ([x, y]: Point) => {
    left = Math.min(left, x)
    low = Math.min(low, y)
    right = Math.max(right, x)
    high = Math.max(high, y)
  }
  for (const ink of inks) for (const corner of cornersOf(ink)) take(corner)
  return left > right ? undefined : [[left, low], [right, high]] // prettier-ignore
}

const cornersOf = (ink: Ink): readonly Point[] => {
  switch (ink.kind) {
    case 'fill':
      return ink.loops.flatMap(pairs)
    case 'stroke':
      return ink.lines.flatMap(pairs)
    case 'rings':
    case 'discs':
      return circleCorners(ink.circles)
    case 'letters':
      return lettersCorners(ink)
    case 'picture':
      return [ink.at, [ink.at[0] + ink.size[0], ink.at[1] + ink.size[1]]]
  }
}

const pairs = (flat: readonly number[]): Point[] => {
  const points: Point[] = []
  for (let at = 0; at + 1 < flat.length; at += 2) points.push([flat[at] ?? 0, flat[at + 1] ?? 0])
  return points
}

const circleCorners = (flat: readonly number[]): Point[] => {
  const points: Point[] = []
  for (let at = 0; at + 2 < flat.length; at += 3) {
    const [x, y, radius] = [flat[at] ?? 0, flat[at + 1] ?? 0, flat[at + 2] ?? 0]
    points.push([x - radius, y - radius], [x + radius, y + radius])
  }
  return points
}

const lettersCorners = (ink: Extract<Ink, { kind: 'letters' }>): Point[] => {
  const width = textWidth_mm(ink.words, ink.height_mm, ink.bold)
  const start = ink.anchor === 'start' ? 0 : ink.anchor === 'middle' ? -width / 2 : -width
  const angle = (ink.turn_deg * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  return [
    [start, 0],
    [start + width, 0],
    [start, ink.height_mm],
    [start + width, ink.height_mm],
  ].map(([u = 0, v = 0]): Point => [ink.at[0] + u * cos - v * sin, ink.at[1] + u * sin + v * cos])
}
