import {
  type InkGroup,
  inkOfMarks,
  paintOrder,
  placeView,
  type View,
  type ViewMark,
} from '../../../core/drawing'
import type { Point } from '../../../core/geometry'
import type { Language } from '../../../core/words'

/** The ink of one part, and how far the part has moved since its ink was made, in paper mm. */
export type PartInk = {
  readonly marks: readonly ViewMark[]
  readonly groups: readonly InkGroup[]
  readonly shift: Point
}

/** The ink of a view by part, with what decides how it looks beyond the marks. */
export type ViewInk = {
  readonly view: View
  readonly language: Language
  readonly parts: ReadonlyMap<string, PartInk>
}

/** A group in its place. */
export type Placed = { readonly group: InkGroup; readonly shift: Point }

/**
 * Inks a view part by part. What has not changed since the view before keeps its ink, and what has only moved keeps it
 * with a shift: while something is dragged, hatching is worked out anew for those parts only whose outline changes.
 */
export const inkParts = (view: View, language: Language, before: ViewInk | undefined): ViewInk => {
  const isAlike = before !== undefined && before.language === language && isSameFrame(before.view, view)
  const origin = placeView(view).toPaper([0, 0])
  const parts = new Map<string, PartInk>()
  for (const [part, marks] of marksByPart(view)) {
    const old = isAlike ? before.parts.get(part) : undefined
    const by = old && moveBetween(old.marks, marks)
    if (old && by) {
      const [x, y] = placeView(view).toPaper(by)
      parts.set(part, { ...old, shift: [x - origin[0], y - origin[1]] })
    } else {
      const groups = inkOfMarks([{ ...view, marks }], { palette: 'colour', language })
      parts.set(part, { marks, groups, shift: [0, 0] })
    }
  }
  return { view, language, parts }
}

/** All groups from the bottom of the paper to the top. */
export const inOrder = ({ parts }: ViewInk): readonly Placed[] => {
  const all = [...parts.values()].flatMap(({ groups, shift }) => groups.map(group => ({ group, shift })))
  return all.toSorted((a, b) => paintOrder.indexOf(a.group.layer) - paintOrder.indexOf(b.group.layer))
}

const marksByPart = (view: View): ReadonlyMap<string, readonly ViewMark[]> => {
  const by = new Map<string, ViewMark[]>()
  for (const mark of view.marks) {
    const name = mark.part ?? ''
    const found = by.get(name)
    if (found) found.push(mark)
    else by.set(name, [mark])
  }
  return by
}

const isSameFrame = (a: View, b: View): boolean =>
  a.scale === b.scale &&
  a.turn_deg === b.turn_deg &&
  a.mirrored === b.mirrored &&
  a.window.every((corner, at) => corner[0] === b.window[at]?.[0] && corner[1] === b.window[at]?.[1])

/** Lengths that differ by less than this are the same on any screen, in mm. */
const same_mm = 1e-6

/** How far marks have moved as one, or nothing where they have changed otherwise. */
const moveBetween = (old: readonly ViewMark[], now: readonly ViewMark[]): Point | undefined => {
  const [from, to] = [firstPoint(old[0]), firstPoint(now[0])]
  if (from === undefined || to === undefined || old.length !== now.length) return undefined
  const by: Point = [to[0] - from[0], to[1] - from[1]]
  return old.every((mark, at) => isMoved(mark, now[at], by)) ? by : undefined
}

const firstPoint = (mark: ViewMark | undefined): Point | undefined =>
  mark?.kind === 'area' ? cornersOf(mark.outline)[0] : mark?.kind === 'path' ? pathOf(mark)[0] : undefined

const isMoved = (a: ViewMark, b: ViewMark | undefined, by: Point): boolean => {
  if (a.kind === 'path' && b?.kind === 'path')
    return (
      a.pen === b.pen && a.layer === b.layer && a.closed === b.closed && areMoved(pathOf(a), pathOf(b), by)
    )
  if (a.kind !== 'area' || b?.kind !== 'area') return false
  return (
    a.tint === b.tint &&
    a.layer === b.layer &&
    a.holes.length === b.holes.length &&
    areMoved(cornersOf(a.outline), cornersOf(b.outline), by) &&
    a.holes.every((hole, at) => areMoved(cornersOf(hole), cornersOf(b.holes[at] ?? []), by)) &&
    isHatchMoved(a.hatch, b.hatch, by)
  )
}

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
