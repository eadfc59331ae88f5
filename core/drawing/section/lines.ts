import type { Point } from '../../geometry'
import type { Section } from '../../section'
import type { ViewMark } from '../mark'
import { clipLine, type Window } from './clip'

/**
 * Parts behind the section: thin outlines, dashed where something hides them, an axis through what is long, and the root
 * of a thread as a thin line on both sides of it (the simplified thread of ISO 6410-1, from memory).
 */
export const seenParts = (section: Section, window: Window, scale: number): readonly ViewMark[] =>
  section.seen.flatMap(seen => {
    const on = { layer: 'seen', part: seen.part } as const
    const [first] = seen.outline
    if (first === undefined) return []
    const outline = clipLine([...seen.outline, first], window).map((points): ViewMark => ({
      kind: 'path',
      ...on,
      pen: seen.hidden ? 'hidden' : 'seen',
      points,
      closed: false,
    }))
    const axis = axisOf(seen.outline, axisBeyond_mm / scale)
    if (axis === undefined) return outline
    return [
      ...outline,
      ...(seen.threaded ? threadLines(seen.outline, axis, scale) : []).flatMap(root =>
        clipLine(root, window).map((points): ViewMark => ({
          kind: 'path',
          ...on,
          pen: seen.hidden ? 'hidden' : 'seen',
          points,
          closed: false,
        })),
      ),
      ...clipLine(axis, window).map((points): ViewMark => ({
        kind: 'path',
        ...on,
        pen: 'axis',
        points,
        closed: false,
      })),
    ]
  })

/** How far an axis passes its part on paper; what is this many times longer than wide has one. Ours. */
const axisBeyond_mm = 3
const slender = 4

/** The axis of a slender outline along its longest edge. */
const axisOf = (outline: readonly Point[], beyond: number): readonly [Point, Point] | undefined => {
  let along: Point = [1, 0]
  let longest = 0
  outline.forEach((from, at) => {
    const to = outline[(at + 1) % outline.length] ?? from
    const length = Math.hypot(to[0] - from[0], to[1] - from[1])
    if (length > longest) {
      longest = length
      along = [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
    }
  })
  const [dx, dy] = along
  const s = outline.map(([x, y]) => x * dx + y * dy)
  const t = outline.map(([x, y]) => y * dx - x * dy)
  const [s0, s1, t0, t1] = [Math.min(...s), Math.max(...s), Math.min(...t), Math.max(...t)]
  if (s1 - s0 < slender * (t1 - t0)) return undefined
  const middle = (t0 + t1) / 2
  const place = (at: number): Point => [at * dx - middle * dy, at * dy + middle * dx]
  return [place(s0 - beyond), place(s1 + beyond)]
}

/** The root of a thread off its crest: a fifth of the radius, but clear of the crest and of the axis on paper. Ours. */
const rootShare = 0.8
const offCrest_mm = 0.9
const offAxis_mm = 0.85

/** Both lines of the root of a thread, as far as the shank reaches; none where they would close up on paper. */
const threadLines = (
  outline: readonly Point[],
  [[x0, y0], [x1, y1]]: readonly [Point, Point],
  scale: number,
): readonly (readonly Point[])[] => {
  const long = Math.hypot(x1 - x0, y1 - y0)
  const [dx, dy] = [(x1 - x0) / long, (y1 - y0) / long]
  // along the axis and off it
  const own = outline.map(([x, y]): Point => [(x - x0) * dx + (y - y0) * dy, (y - y0) * dx - (x - x0) * dy])
  const half = Math.max(...own.map(it => it[1]))
  const root = Math.min(rootShare * half, half - offCrest_mm / scale)
  if (root * scale < offAxis_mm) return []
  return [root, -root].flatMap(t => {
    const crossings = own.flatMap(([s, u], at) => {
      const [toS, toU] = own[(at + 1) % own.length] ?? [s, u]
      return u < t === toU < t ? [] : [s + ((t - u) / (toU - u)) * (toS - s)]
    })
    if (crossings.length < 2) return []
    const place = (s: number): Point => [x0 + s * dx - t * dy, y0 + s * dy + t * dx]
    return [[place(Math.min(...crossings)), place(Math.max(...crossings))]]
  })
}
