import type { Id, Point } from '../../geometry'
import type { Section } from '../../section'
import type { ViewMark } from '../mark'
import { clipLine, type Window } from './clip'
import { layerOfRole, type ListedPart } from './listed-part'

/** Membranes and foils: one line each, with the sign of its plane. The weather lies to the left of the path. */
export const membraneLines = (
  section: Section,
  window: Window,
  parts: ReadonlyMap<Id, ListedPart>,
): readonly ViewMark[] => {
  const bodies = new Set(section.regions.flatMap(it => (it.fill.kind === 'air' ? [] : [it.part])))
  return section.lines.flatMap(line => {
    const part = parts.get(line.part)
    // a strip beside a body of its own part, as a bond breaker behind its bead, closes no plane
    const strip = bodies.has(line.part) && part?.line !== undefined
    return clipLine(weatherLeft(line.path), window).map((points): ViewMark => ({
      kind: 'path',
      layer: part ? layerOfRole[part.role] : 'sealing',
      part: line.part,
      // a line that is no membrane is a sheet of metal: as strong as any cut
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

/** Parts behind the section: thin outlines, dashed where something hides them, and an axis through what is long. */
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
const axisOf = (outline: readonly Point[], beyond: number): readonly Point[] | undefined => {
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
