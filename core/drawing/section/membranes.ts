import type { Id, Line, Point } from '../../geometry'
import type { Section } from '../../section'
import type { Pen, ViewMark } from '../mark'
import { strokeOf } from '../style/pens'
import { clipLine, type Window } from './clip'
import { layerOfRole, type ListedPart } from './listed-part'

type Parts = ReadonlyMap<Id, ListedPart>

/**
 * Membranes and foils: one line each, with the sign of its plane. The weather lies to the left of the path. A membrane
 * stands off what it is bonded to, or it would read as a thicker outline of that.
 */
export const membraneLines = (
  section: Section,
  window: Window,
  parts: Parts,
  scale: number,
): readonly ViewMark[] => {
  const bodies = new Set(section.regions.flatMap(it => (it.fill.kind === 'air' ? [] : [it.part])))
  return section.lines.flatMap(line => {
    const part = parts.get(line.part)
    // a strip beside a body of its own part, as a bond breaker behind its bead, closes no plane
    const strip = bodies.has(line.part) && part?.line !== undefined
    const path = strip ? line.path : drawnPath(section, line, parts, scale)
    return clipLine(weatherLeft(path), window).map((points): ViewMark => ({
      kind: 'path',
      layer: part ? layerOfRole[part.role] : 'sealing',
      part: line.part,
      // a line that is no membrane is a sheet of metal: drawn as what is cut
      pen: strip ? 'cut-small' : (part?.line ?? 'cut'),
      points,
      closed: false,
    }))
  })
}

/** Outside is where y is small: walking with x falling keeps it on the left, and so does walking from the reveal in. */
const weatherLeft = (path: readonly Point[]): readonly Point[] => {
  const [first, last] = [path[0], path[path.length - 1]]
  if (first === undefined || last === undefined) return path
  return last[0] - first[0] > 0 ? path.toReversed() : path
}

/** Paper that is seen between a membrane and the outline that it lies on (the rule for narrow cuts; the figure is ours). */
const light_mm = 0.35
/** Both sides of a joint leave at least this share of it between them. Ours. */
const mostOfJoint = 0.3

/** A line as it is drawn: a membrane off frame and wall, its fold between them following; anything else as it lies. */
export const drawnPath = (section: Section, line: Line, parts: Parts, scale: number): readonly Point[] => {
  const pen = parts.get(line.part)?.line
  if (pen === undefined || line.path.length < 2) return line.path
  const sides = sidesOf(section, line.path, parts)
  const away = sides.map((it, at) => awayFrom(it, line.path, at, pen))
  const across = Math.max(0, ...line.path.map(it => it[0])) - Math.min(...foldEnds(line.path, away))
  const wanted = (widthOf('cut', scale) + widthOf(pen, scale)) / 2 + light_mm
  const off = Math.min(wanted / scale, mostOfJoint * across)
  const moves = followed(line.path, movesOf(away))
  return line.path.map(([x, y], at): Point => {
    const [dx, dy] = moves[at] ?? [0, 0]
    return [x + off * dx, y + off * dy]
  })
}

const widthOf = (pen: Pen, scale: number): number => strokeOf(pen, scale, 'black').width_mm

/** Where the stretches that hang free end, across the joint; the path's own ends where none does. */
const foldEnds = (path: readonly Point[], away: readonly (Point | undefined)[]): readonly number[] => {
  const free = away.flatMap((it, at) =>
    it === undefined ? [path[at]?.[0] ?? 0, path[at + 1]?.[0] ?? 0] : [],
  )
  return free.length > 0 ? free : path.map(it => it[0])
}

type Role = ListedPart['role']
/** What lies to the left and to the right of a stretch, walking along it. */
type Sides = { left?: Role; right?: Role }

const sidesOf = (section: Section, path: readonly Point[], parts: Parts): readonly Sides[] => {
  const numbers = new Map(path.map((it, at) => [placeOf(it), at]))
  const sides: Sides[] = path.slice(1).map(() => ({}))
  for (const { part, fill, outline, holes } of section.regions) {
    const role = parts.get(part)?.role
    if (role === undefined || fill.kind === 'air') continue
    const turned = isClockwise(outline)
    for (const loop of [outline, ...holes])
      loop.forEach((from, at) => {
        const a = numbers.get(placeOf(from))
        const b = a === undefined ? undefined : numbers.get(placeOf(loop[(at + 1) % loop.length] ?? from))
        if (a === undefined || b === undefined || Math.abs(a - b) !== 1) return
        // a body lies to the left of its own outline, holes wound the other way
        const side = b > a !== turned ? 'left' : 'right'
        const there = sides[Math.min(a, b)]
        if (there) there[side] = role
      })
  }
  return sides
}

/** A place on the grid as one number. */
const placeOf = ([x, y]: Point): number => Math.round(x * 1e4) * 2 ** 26 + Math.round(y * 1e4)

const isClockwise = (outline: readonly Point[]): boolean =>
  outline.reduce((sum, [x, y], at) => {
    const [toX, toY] = outline[(at + 1) % outline.length] ?? [x, y]
    return sum + x * toY - toX * y
  }, 0) < 0

/**
 * Which way a stretch stands off what it lies on: off the frame, else off the wall; into the joint where it is drawn taut
 * over what fills that; nothing where it hangs in the air of its fold.
 */
const awayFrom = (
  { left, right }: Sides,
  path: readonly Point[],
  at: number,
  pen: NonNullable<ListedPart['line']>,
): Point | undefined => {
  const [[x0, y0], [x1, y1]] = [path[at] ?? [0, 0], path[at + 1] ?? [0, 0]]
  const long = Math.hypot(x1 - x0, y1 - y0)
  if (long === 0) return undefined
  const [dx, dy] = [(x1 - x0) / long, (y1 - y0) / long]
  const [toLeft, toRight]: readonly [Point, Point] = [[-dy, dx], [dy, -dx]] // prettier-ignore
  if (left === 'frame') return toRight
  if (right === 'frame') return toLeft
  // the wall lies where x is small, and behind a membrane that laps round its edge: inside an inner one, outside an outer one
  const outward = (it: Point): number =>
    Math.abs(it[0]) > Math.abs(it[1]) ? it[0] : pen === 'membrane-outer' ? -it[1] : it[1]
  const isLeft = outward(toLeft) > 0
  const before = isLeft ? right : left
  if (before === 'layer') return isLeft ? toLeft : toRight
  return before === 'seal' ? (isLeft ? toRight : toLeft) : undefined
}

/** How far each vertex moves for a move of 1 of the stretches beside it: corners are mitred. */
const movesOf = (away: readonly (Point | undefined)[]): readonly (Point | undefined)[] =>
  [...away, undefined].map((after, at): Point | undefined => {
    const before = at === 0 ? undefined : away[at - 1]
    if (before === undefined || after === undefined) return before ?? after
    const along = 1 + before[0] * after[0] + before[1] * after[1]
    return along < 0.3 ? before : [(before[0] + after[0]) / along, (before[1] + after[1]) / along]
  })

/** What hangs free goes from one move to the other along its length; before the first and behind the last it keeps them. */
const followed = (path: readonly Point[], moves: readonly (Point | undefined)[]): readonly Point[] => {
  const lengths = path.reduce<number[]>((sums, [x, y], at) => {
    const [x0, y0] = path[at - 1] ?? [x, y]
    return [...sums, (sums.at(-1) ?? 0) + Math.hypot(x - x0, y - y0)]
  }, [])
  return moves.map((move, at): Point => {
    if (move !== undefined) return move
    const before = moves.slice(0, at).findLastIndex(it => it !== undefined)
    const after = moves.findIndex((it, index) => index > at && it !== undefined)
    const [from, to] = [moves[before] ?? moves[after] ?? [0, 0], moves[after] ?? moves[before] ?? [0, 0]]
    const [s0, s1] = [lengths[before] ?? 0, lengths[after] ?? 0]
    const share = s1 > s0 ? ((lengths[at] ?? 0) - s0) / (s1 - s0) : 0
    return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]
  })
}
