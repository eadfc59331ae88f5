import { type InkGroup, inkOfMarks, placeView, type View, type ViewMark } from '../../../core/drawing'
import type { Point } from '../../../core/geometry'
import type { Language } from '../../../core/words'
import { around, type Box, contains, grown, shifted } from './box'
import { changesBetween, extentOf } from './changes'
import { moveBetween } from './moved'

/** The ink of one part, and how far the part has moved since its ink was made, in paper mm. */
export type PartInk = {
  /** as they lie now */
  readonly marks: readonly ViewMark[]
  /** as they lay when they were inked */
  readonly inked: readonly ViewMark[]
  readonly shift: Point
  /** what its ink lies in before it is shifted, in paper mm; absent: nobody knows */
  readonly bounds: Box | undefined
  /** its ink before it is shifted, complete at least where it is seen */
  readonly inkIn: (seen: Box) => readonly InkGroup[]
}

/** The ink of a view by part, with what decides how it looks beyond the marks. */
export type ViewInk = {
  readonly view: View
  readonly language: Language
  readonly parts: ReadonlyMap<string, PartInk>
  /** the parts before, and the box in which something looks different since; absent: everything may */
  readonly since?: { readonly parts: ReadonlyMap<string, PartInk>; readonly changed: Box | undefined }
}

/** Ink reaches this far beyond the marks that it is made of: half of a pen, a sharp corner, a tick of a membrane, in paper mm. *Ours*. */
const penReach_mm = 4

/**
 * Inks a view part by part. What has not changed since the view before keeps its ink, and what has only moved keeps it
 * with a shift: while something is dragged, hatching is worked out anew for those parts only whose outline changes, and
 * of those only where something looks different.
 */
export const inkParts = (view: View, language: Language, before: ViewInk | undefined): ViewInk => {
  const old = before && before.language === language && isSameFrame(before.view, view) ? before.parts : undefined
  const { toPaper } = placeView(view)
  const onPaper = ([low, high]: Box): Box => grown(around([[toPaper(low), toPaper(low)], [toPaper(high), toPaper(high)]]) ?? [low, high], penReach_mm) // prettier-ignore
  const origin = toPaper([0, 0])
  const parts = new Map<string, PartInk>()
  const changed: (Box | undefined)[] = []
  for (const [part, marks] of marksByPart(view)) {
    const was = old?.get(part)
    if (was && areSame(was.marks, marks)) {
      parts.set(part, was)
      continue
    }
    const by = was && moveBetween(was.inked, marks)
    if (was && by) {
      const [x, y] = toPaper(by)
      const shift: Point = [x - origin[0], y - origin[1]]
      const isStill = Math.hypot(shift[0] - was.shift[0], shift[1] - was.shift[1]) < still_mm
      if (!isStill) changed.push(...[was.shift, shift].map(it => was.bounds && shifted(was.bounds, it)))
      parts.set(part, isStill ? { ...was, marks } : { ...was, marks, shift })
      continue
    }
    const ink = (seen?: Box) => inkOfMarks([{ ...view, marks }], { palette: 'colour', language, ...(seen && { seen }) })
    const extents = marks.map(extentOf)
    const extent = extents.every(it => it !== undefined) ? around(extents.flat()) : undefined
    parts.set(part, { marks, inked: marks, shift: [0, 0], bounds: extent && onPaper(extent), inkIn: inkedWhereSeen(ink) })
    const boxes = changesBetween(was?.marks ?? [], marks, view.scale)
    changed.push(...(boxes ? boxes.map(onPaper) : [undefined]))
  } // prettier-ignore
  for (const [part, { bounds, shift }] of old ?? [])
    if (!parts.has(part)) changed.push(bounds && shifted(bounds, shift))
  if (old === undefined || changed.some(it => it === undefined)) return { view, language, parts }
  return { view, language, parts, since: { parts: old, changed: around(changed.filter(it => it !== undefined)) } }
} // prettier-ignore

/** The very same marks: most of a full board is not touched by what moves, and costs nothing then. */
const areSame = (a: readonly ViewMark[], b: readonly ViewMark[]): boolean =>
  a.length === b.length && a.every((mark, at) => mark === b[at])

/** A part that moves by less has not moved, in paper mm. */
const still_mm = 1e-6

/** Inks first what is seen, and the whole only when more of it is asked for: in a drag most ink is soon worked out anew. */
const inkedWhereSeen = (ink: (seen?: Box) => readonly InkGroup[]): PartInk['inkIn'] => {
  let made: { readonly box: Box | undefined; readonly groups: readonly InkGroup[] } | undefined
  return seen => {
    const isEnough = made && (made.box === undefined || contains(made.box, seen))
    if (!made) made = { box: seen, groups: ink(seen) }
    else if (!isEnough) made = { box: undefined, groups: ink() }
    return made.groups
  }
}

/** The number of a part is drawn over all others and goes its own ways, so it is inked by itself. */
const marksByPart = (view: View): ReadonlyMap<string, readonly ViewMark[]> => {
  const by = new Map<string, ViewMark[]>()
  for (const mark of view.marks) {
    const name = mark.layer === 'numbers' ? `${mark.part ?? ''} number` : (mark.part ?? '')
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
