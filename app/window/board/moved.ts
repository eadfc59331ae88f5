import type { ViewMark } from '../../../core/drawing'
import type { Point } from '../../../core/geometry'

/** Lengths that differ by less than this are the same on any screen, in mm. */
const same_mm = 1e-6

/** How far marks have moved as one, or nothing where they have changed otherwise. */
export const moveBetween = (old: readonly ViewMark[], now: readonly ViewMark[]): Point | undefined => {
  if (old.length === now.length && old.every((mark, at) => mark === now[at])) return [0, 0]
  const [from, to] = [firstPoint(old[0]), firstPoint(now[0])]
  if (from === undefined || to === undefined || old.length !== now.length) return undefined
  const by: Point = [to[0] - from[0], to[1] - from[1]]
  return old.every((mark, at) => isMoved(mark, now[at], by)) ? by : undefined
}

const firstPoint = (mark: ViewMark | undefined): Point | undefined =>
  mark?.kind === 'area' ? cornersOf(mark.outline)[0] : mark?.kind === 'path' ? pathOf(mark)[0] : undefined

const isMoved = (a: ViewMark, b: ViewMark | undefined, by: Point): boolean => {
  if (a === b) return by[0] === 0 && by[1] === 0
  if (a.kind === 'path' && b?.kind === 'path')
    return (
      a.pen === b.pen &&
      a.layer === b.layer &&
      a.closed === b.closed &&
      (areMoved(a.points, b.points, by) || areMoved(pathOf(a), pathOf(b), by))
    )
  if (a.kind !== 'area' || b?.kind !== 'area') return false
  return (
    a.tint === b.tint &&
    a.layer === b.layer &&
    a.holes.length === b.holes.length &&
    isOutlineMoved(a.outline, b.outline, by) &&
    a.holes.every((hole, at) => isOutlineMoved(hole, b.holes[at] ?? [], by)) &&
    isHatchMoved(a.hatch, b.hatch, by)
  )
}

/** Mostly the very vertices have moved; only else are the straight sides looked through for those that mean nothing. */
const isOutlineMoved = (a: readonly Point[], b: readonly Point[], by: Point): boolean =>
  areMoved(a, b, by) || areMoved(cornersOf(a), cornersOf(b), by)

type Hatch = Extract<ViewMark, { kind: 'area' }>['hatch']

const isHatchMoved = (a: Hatch, b: Hatch, by: Point): boolean => {
  if (a === undefined || b === undefined) return a === b
  return (
    a.key === b.key &&
    a.turn_deg === b.turn_deg &&
    a.mirrored === b.mirrored &&
    a.closer === b.closer &&
    areMoved([a.origin], [b.origin], by) &&
    areMoved([a.size ?? [0, 0]], [b.size ?? [0, 0]], [0, 0])
  )
}

/**
 * The corners of an outline, from its lowest one on. Neighbours share their vertices, so a part that slides along
 * another gets and loses vertices on its straight edges without changing its shape.
 */
const cornersOf = (outline: readonly Point[]): readonly Point[] => {
  const corners = outline.filter((at, i) => {
    const [a, b] = [
      outline[(i + outline.length - 1) % outline.length] ?? at,
      outline[(i + 1) % outline.length] ?? at,
    ]
    return Math.abs((at[0] - a[0]) * (b[1] - at[1]) - (at[1] - a[1]) * (b[0] - at[0])) > straight_mm2
  })
  const first = corners.reduce((best, [x, y], i) => {
    const [bx, by] = corners[best] ?? [x, y]
    return y < by - same_mm || (y < by + same_mm && x < bx - same_mm) ? i : best
  }, 0)
  return [...corners.slice(first), ...corners.slice(0, first)]
}

/** Three vertices span less than this where they lie on one line: a step of the grid over 20 mm. */
const straight_mm2 = 2e-3

const pathOf = ({ points, closed }: Extract<ViewMark, { kind: 'path' }>): readonly Point[] =>
  closed ? cornersOf(points) : points

const areMoved = (a: readonly Point[], b: readonly Point[], [dx, dy]: Point): boolean =>
  a.length === b.length &&
  a.every(([x, y], at) => {
    const to = b[at]
    return to !== undefined && Math.abs(x + dx - to[0]) < same_mm && Math.abs(y + dy - to[1]) < same_mm
  })
