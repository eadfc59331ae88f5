import type { Palette, ViewMark } from '../mark'
import { type AlongLine, alongLine } from '../style/membranes'
import { strokeOf } from '../style/pens'
import type { Ink } from './ink'
import { flatOf } from './ink-area'

/** A path with its pen, and what its pen sets along it. */
export const inkPath = (
  mark: Extract<ViewMark, { kind: 'path' }>,
  scale: number,
  palette: Palette,
): readonly Ink[] => {
  const stroke = strokeOf(mark.pen, scale, palette)
  const line = flatOf(mark.points)
  const drawn: Ink = { kind: 'stroke', pen: mark.pen, ...stroke, lines: [line], closed: mark.closed }
  const along = alongLine[mark.pen]
  if (along === undefined) return [drawn]
  const places = placesAlong(line, along.every_mm)
  return [drawn, marksAlong(places, along, mark.pen, stroke)]
}

type OnLine = { readonly x: number; readonly y: number; readonly dx: number; readonly dy: number }

const marksAlong = (
  places: readonly OnLine[],
  along: AlongLine,
  pen: Extract<ViewMark, { kind: 'path' }>['pen'],
  stroke: { readonly width_mm: number; readonly colour: string },
): Ink =>
  along.kind === 'dots'
    ? {
        kind: 'discs',
        as: 'mark',
        pen,
        colour: stroke.colour,
        circles: places.flatMap(({ x, y }) => [x, y, along.diameter_mm / 2]),
      }
    : {
        kind: 'stroke',
        pen,
        width_mm: stroke.width_mm / 2,
        colour: stroke.colour,
        dash_mm: [],
        closed: false,
        lines: places.map(({ x, y, dx, dy }) => [x, y, x - dy * along.length_mm, y + dx * along.length_mm]),
      }

/** Places spread evenly over a line, about so far apart, at least one; each with the direction of the line. */
const placesAlong = (line: readonly number[], every_mm: number): OnLine[] => {
  const pieces = piecesOf(line)
  const length = pieces.reduce((sum, it) => sum + it.length, 0)
  const count = Math.max(1, Math.round(length / every_mm))
  return Array.from({ length: count }, (_, at) => placeAt(pieces, ((at + 0.5) * length) / count))
}

type Piece = OnLine & { readonly length: number }

const piecesOf = (line: readonly number[]): Piece[] => {
  const pieces: Piece[] = []
  for (let at = 0; at + 3 < line.length; at += 2) {
    const [x, y] = [line[at] ?? 0, line[at + 1] ?? 0]
    const [toX, toY] = [line[at + 2] ?? 0, line[at + 3] ?? 0]
    const length = Math.hypot(toX - x, toY - y)
    if (length > 0) pieces.push({ x, y, dx: (toX - x) / length, dy: (toY - y) / length, length })
  }
  return pieces
}

const placeAt = (pieces: readonly Piece[], along: number): OnLine => {
  let left = along
  for (const { x, y, dx, dy, length } of pieces) {
    if (left <= length) return { x: x + dx * left, y: y + dy * left, dx, dy }
    left -= length
  }
  const last = pieces[pieces.length - 1]
  return last ?? { x: 0, y: 0, dx: 1, dy: 0 }
}
