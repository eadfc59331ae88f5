import type { Palette, ViewMark } from '../mark'
import { paper, strokeOf } from '../style/pens'
import { callout } from '../style/spacing'
import { heights } from '../text/lettering'
import type { Ink } from './ink'
import { flatOf } from './ink-area'

/**
 * A leader on a halo that parts it from hatches, its end, and its number in a circle beyond the last point.
 * A leader without a number ends where its path ends.
 */
export const inkLeader = (
  mark: Extract<ViewMark, { kind: 'leader' }>,
  scale: number,
  palette: Palette,
): readonly Ink[] => {
  const stroke = { pen: 'leader', ...strokeOf('leader', scale, palette) } as const
  const line = flatOf(mark.path)
  const halo: Ink = {
    kind: 'stroke',
    ...stroke,
    width_mm: stroke.width_mm + 2 * haloSide_mm,
    colour: paper,
    lines: [line],
    closed: false,
  }
  return [
    halo,
    { kind: 'stroke', ...stroke, lines: [line], closed: false },
    ...endOf(mark, stroke.colour),
    ...(mark.number === '' ? [] : balloonOf(mark, scale, palette)),
  ]
}

/** White on each side of a leader: 0.9 mm in all leaves it clear of any hatch. Ours. */
const haloSide_mm = callout.halo_mm / 2

const endOf = (mark: Extract<ViewMark, { kind: 'leader' }>, colour: string): readonly Ink[] => {
  const [[x, y], next] = mark.path
  if (mark.end === 'none' || next === undefined) return []
  if (mark.end === 'dot')
    return [{ kind: 'discs', as: 'mark', pen: 'leader', colour, circles: [x, y, callout.dot_mm / 2] }]
  const length = Math.hypot(next[0] - x, next[1] - y)
  const [dx, dy] = [(next[0] - x) / length, (next[1] - y) / length]
  const half = arrow_mm * Math.tan((7.5 * Math.PI) / 180)
  const [bx, by] = [x + dx * arrow_mm, y + dy * arrow_mm]
  return [
    {
      kind: 'fill',
      as: 'mark',
      colour,
      loops: [[x, y, bx - dy * half, by + dx * half, bx + dy * half, by - dx * half]],
    },
  ]
}

/** A filled arrow of 15°. Ours. */
const arrow_mm = 2.5

const balloonOf = (
  mark: Extract<ViewMark, { kind: 'leader' }>,
  scale: number,
  palette: Palette,
): readonly Ink[] => {
  const end = mark.path[mark.path.length - 1] ?? mark.path[0]
  const before = mark.path[mark.path.length - 2] ?? [end[0] - 1, end[1]]
  const length = Math.hypot(end[0] - before[0], end[1] - before[1]) || 1
  const radius = callout.balloon_mm / 2
  const x = end[0] + ((end[0] - before[0]) / length) * radius
  const y = end[1] + ((end[1] - before[1]) / length) * radius
  const stroke = strokeOf('stroke', scale, palette)
  return [
    { kind: 'discs', as: 'clear', pen: 'stroke', colour: paper, circles: [x, y, radius] },
    { kind: 'rings', pen: 'stroke', ...stroke, circles: [x, y, radius] },
    {
      kind: 'letters',
      at: [x, y - heights.label_mm / 2],
      words: mark.number,
      height_mm: heights.label_mm,
      turn_deg: 0,
      anchor: 'middle',
      bold: true,
      colour: strokeOf('text', scale, palette).colour,
    },
  ]
}
