import type { Project } from '../../../core/detail'
import { type Grip, type Measure, measuresOf, plannedLayout, type View } from '../../editor'
import type { Camera, Px } from './camera'

/** A size on the board in pixels: its line, where its extension lines start, and its number. */
export type Dim = {
  /** the field that states it: a double click goes there */
  readonly field?: string
  readonly from: Px
  readonly to: Px
  readonly feet: readonly [Px, Px]
  readonly isUpright: boolean
  readonly value_mm: number
  readonly kind: Measure['kind']
  readonly says: Measure['says']
}

/** Distance between sizes that lie beside each other, and from what they measure. *Ours*. */
const pitch_px = 26
const off_px = 26

/** The live sizes of a grip, laid beside the part where the air is free: those in the depth below it, those across it at the left. */
export const liveDims = (project: Project, view: View, grip: Grip, camera: Camera): readonly Dim[] => {
  const at = plannedLayout(project, view)
  const down = view.side === 'sill' ? -1 : 1
  const left = camera.toPx([0, Math.min(at.depths.outer_mm, at.position_mm)])[0]
  const below = (x_mm: number): number => camera.toPx([x_mm, 0])[1] + down * off_px
  const taken = new Map<string, (readonly [number, number])[][]>()
  /** The first row of a lane in which a stretch lies on no other. */
  const level = (lane: string, a: number, b: number): number => {
    const [from, to] = [Math.min(a, b), Math.max(a, b)]
    const rows = taken.get(lane) ?? []
    taken.set(lane, rows)
    const free = rows.findIndex(row => row.every(it => to <= it[0] + 0.5 || it[1] - 0.5 <= from))
    const at = free < 0 ? rows.length : free
    rows[at] = [...(rows[at] ?? []), [from, to]]
    return at
  }
  return measuresOf(project, view, grip).map((it): Dim => {
    const [a, b] = [camera.toPx(it.from), camera.toPx(it.to)]
    const common = { value_mm: it.value_mm, kind: it.kind, says: it.says }
    if (Math.abs(it.from[1] - it.to[1]) < 1e-9) {
      const x = left - off_px - pitch_px * level('across', a[1], b[1])
      return { ...common, isUpright: true, from: [x, a[1]], to: [x, b[1]], feet: [a, b] }
    }
    const isInside = Math.min(it.from[1], it.to[1]) >= at.position_mm + at.depth_mm - 1e-6
    const isWall = it.from[0] < 0
    const base = isWall ? a[1] : isInside ? below(at.lining_mm) : below(at.width_mm + at.cover_mm + 12)
    const y = base + down * pitch_px * level(isWall ? 'wall' : isInside ? 'inside' : 'outside', a[0], b[0])
    return { ...common, isUpright: false, from: [a[0], y], to: [b[0], y], feet: [a, b] }
  })
}

/** Between two sizes up the same side, and how far behind the profile the step over the floor stands. *Ours*. */
const lane_px = 44
const stepBehind_mm = 50

/**
 * The sizes that stand still: the joint, and what covers the frame, at the outer edge; at a threshold the steps over
 * surface and floor, one before the joint, one behind the profile.
 */
export const stillDims = (project: Project, view: View, width_mm: number, camera: Camera): readonly Dim[] => {
  const at = plannedLayout(project, view)
  const outer = Math.min(at.depths.outer_mm, at.position_mm)
  const foot = camera.toPx([0, outer])[0]
  const x = Math.max(22, foot - off_px)
  const dim = (field: string, from: number, to: number, stands: Upright = { x, foot }): Dim => {
    const [a, b] = [camera.toPx([from, outer])[1], camera.toPx([to, outer])[1]]
    return {
      field,
      kind: 'gap',
      says: { en: '', de: '' },
      value_mm: to - from,
      isUpright: true,
      from: [stands.x, a],
      to: [stands.x, b],
      feet: [[stands.foot, a], [stands.foot, b]], // prettier-ignore
    }
  }
  const isCovered = view.side !== 'sill' && at.depths.before.length > 0 && at.cover_mm > 0
  const { levels } = at.threshold ?? {}
  const step = (field: string, to_mm: number, stands: Upright): readonly Dim[] =>
    levels && Math.abs(levels.top_mm - to_mm) > 0.5 ? [dim(field, to_mm, levels.top_mm, stands)] : []
  const back = at.position_mm + at.depth_mm
  const behind: Upright = { x: camera.toPx([0, back + stepBehind_mm])[0], foot: camera.toPx([0, back])[0] }
  const before: Upright = {
    x: x >= 22 + lane_px ? x - lane_px : x + lane_px,
    foot: camera.toPx([0, at.position_mm])[0],
  }
  return [
    ...(levels ? step('opening.threshold-outside', levels.surface_mm, before) : []),
    ...(levels ? step('opening.threshold-top', levels.floor_mm, behind) : []),
    dim('joint.planned', 0, width_mm),
    ...(isCovered ? [dim('reveal.cover', width_mm, width_mm + at.cover_mm)] : []),
  ]
}

/** Where an upright size stands across the board, and where its extension lines start. */
type Upright = { readonly x: number; readonly foot: number }
