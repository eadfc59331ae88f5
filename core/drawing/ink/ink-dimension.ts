import type { Point } from '../../geometry'
import type { Palette, ViewMark } from '../mark'
import { strokeOf } from '../style/pens'
import { sizing } from '../style/spacing'
import { heights } from '../text/lettering'
import type { Ink } from './ink'

/** A dimension: two extension lines, the dimension line, oblique strokes at its ends, and words that stay readable. */
export const inkDimension = (
  mark: Extract<ViewMark, { kind: 'dimension' }>,
  scale: number,
  palette: Palette,
): readonly Ink[] => {
  const { from, to, line } = mark
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
  const [a, b] = [footOn(from, line, along), footOn(to, line, along)]
  const reading = readingAngle_deg(along)
  const words: Ink = {
    kind: 'letters',
    at: mark.text,
    words: mark.words,
    height_mm: heights.size_mm,
    turn_deg: reading,
    anchor: 'middle',
    bold: false,
    colour: strokeOf('text', scale, palette).colour,
  }
  const thin = { pen: 'size', ...strokeOf('size', scale, palette) } as const
  const oblique = { pen: 'stroke', ...strokeOf('stroke', scale, palette) } as const
  return [
    {
      kind: 'stroke',
      ...thin,
      closed: false,
      lines: [...extension(from, a), ...extension(to, b), stretched(a, b, along)],
    },
    { kind: 'stroke', ...oblique, closed: false, lines: [slash(a, reading), slash(b, reading)] },
    words,
  ]
}

/** The direction of words along a line, read from below or from the right. */
export const readingAngle_deg = ([dx, dy]: Point): number => {
  const angle = (Math.atan2(dy, dx) * 180) / Math.PI
  const turned = angle > 90 + 1e-6 ? angle - 180 : angle <= -90 + 1e-6 ? angle + 180 : angle
  return Math.round(turned * 1e6) / 1e6
}

const footOn = (at: Point, line: Point, [dx, dy]: Point): Point => {
  const along = (at[0] - line[0]) * dx + (at[1] - line[1]) * dy
  return [line[0] + along * dx, line[1] + along * dy]
}

const extension = (from: Point, foot: Point): number[][] => {
  const length = Math.hypot(foot[0] - from[0], foot[1] - from[1])
  if (length <= sizing.extensionGap_mm) return []
  const [dx, dy] = [(foot[0] - from[0]) / length, (foot[1] - from[1]) / length]
  const end = length + sizing.extensionOver_mm
  return [
    [
      from[0] + dx * sizing.extensionGap_mm,
      from[1] + dy * sizing.extensionGap_mm,
      from[0] + dx * end,
      from[1] + dy * end,
    ],
  ]
}

const stretched = (a: Point, b: Point, [dx, dy]: Point): number[] => {
  const over = sizing.lineOver_mm
  return [a[0] - dx * over, a[1] - dy * over, b[0] + dx * over, b[1] + dy * over]
}

const slash = ([x, y]: Point, reading_deg: number): number[] => {
  const angle = ((reading_deg + 45) * Math.PI) / 180
  const [dx, dy] = [(sizing.stroke_mm / 2) * Math.cos(angle), (sizing.stroke_mm / 2) * Math.sin(angle)]
  return [x - dx, y - dy, x + dx, y + dy]
}
