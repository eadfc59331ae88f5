import { jointOf, type Opening, openingOf, type Project } from '../../detail'
import type { Id, Point } from '../../geometry'
import { type Plane, type Side, sides } from '../../kinds'
import { serves } from '../../seals'
import { type Language, words } from '../../words'
import type { Pen, ViewMark } from '../mark'
import { heights, textWidth_mm } from '../text/lettering'
import { photoEntry, photoFields } from './key-photos'
import { line, rectangle, text } from './marks'
import type { Box } from './side-words'

/** A cut as the elevation shows it: a letter at both ends of its line. */
export type CutMark = { readonly letter: string; readonly upright: boolean }

/** The lines of the planes from the outside in: the outermost is the one that keeps out rain. */
const lanes: readonly { readonly plane: Plane; readonly pen: Pen }[] = [
  { plane: 'outer', pen: 'membrane-outer' },
  { plane: 'middle', pen: 'stroke' },
  { plane: 'inner', pen: 'membrane-inner' },
]

/** From one line to the next, and from the last to the frame. Ours. */
const lane_mm = 2.6
/** How far lines of cuts pass the picture, and how long their heavy ends are. */
const beyond_mm = 7
const end_mm = 3

/** How large an elevation is in all, with the letters of its cuts and the words below it. */
export const keySize_mm: Point = [62, 66]

/**
 * The opening seen from outside, with a line for each plane of the joint all round. A line is left out where nothing
 * closes its plane, and a cross says so. Chain lines with letters show where the cuts are.
 */
export const keyElevation = (
  project: Project,
  opening: Id,
  cuts: readonly CutMark[],
  [left, low]: Point,
  language: Language,
): readonly ViewMark[] => {
  const of = openingOf(project, opening)
  const [width, height] = fitted(of)
  const x = left + (keySize_mm[0] - width) / 2
  const y = low + words_mm + beyond_mm + 5 + (most_mm - height) / 2
  const inner = 3 * lane_mm
  const frame: readonly [Point, Point] = [
    [x + inner, y + inner],
    [width - 2 * inner, height - 2 * inner],
  ]
  return [
    rectangle('cut', ...frame),
    rectangle('seen', [frame[0][0] + 1.2, frame[0][1] + 1.2], [frame[1][0] - 2.4, frame[1][1] - 2.4]),
    ...of.mullions.map(it => {
      const at = frame[0][0] + (it.at_mm.value / of.width_mm.value) * frame[1][0]
      return line('seen', [at, frame[0][1] + 1.2], [at, frame[0][1] + frame[1][1] - 1.2])
    }),
    ...lanes.flatMap((lane, at) =>
      sides.flatMap(side => laneMarks(project, of, side, lane, laneEnds(side, [x, y], [width, height], at))),
    ),
    ...cuts.flatMap(it => cutMarks(it, [x, y], [width, height])),
    ...photoFields(of, lightOf(frame), [
      ...of.mullions.map(it => {
        const at = frame[0][0] + (it.at_mm.value / of.width_mm.value) * frame[1][0]
        return [[at, y], [at, y + height]] as const // prettier-ignore
      }),
      ...cuts.map(({ upright }): Box =>
        upright
          ? [[x + width / 2, y], [x + width / 2, y + height]]
          : [[x, y + height / 2], [x + width, y + height / 2]],
      ), // prettier-ignore
    ]),
    ...laneNames(language, [left, low], (of.photos ?? []).length > 0),
  ]
}

/** What is inside the frame of the picture. */
const lightOf = ([[x, y], [width, height]]: readonly [Point, Point]): Box => [
  [x + 1.2, y + 1.2],
  [x + width - 1.2, y + height - 1.2],
]

/** Height of the picture itself at the most. */
const most_mm = 38
const words_mm = 5

const fitted = ({ width_mm, height_mm }: Opening): Point => {
  const share = Math.min(most_mm / width_mm.value, most_mm / height_mm.value)
  // very long openings keep a picture that can hold its lines
  return [Math.max(22, width_mm.value * share), Math.max(22, height_mm.value * share)]
}

/** The ends of the line of a plane along a side, seen from outside: left is left. */
const laneEnds = (side: Side, [x, y]: Point, [width, height]: Point, at: number): readonly [Point, Point] => {
  const off = lane_mm * (at + 0.35)
  const [x0, y0, x1, y1] = [x + off, y + off, x + width - off, y + height - off]
  switch (side) {
    case 'head':
      return [[x0, y1], [x1, y1]] // prettier-ignore
    case 'sill':
      return [[x0, y0], [x1, y0]] // prettier-ignore
    case 'left':
      return [[x0, y0], [x0, y1]] // prettier-ignore
    case 'right':
      return [[x1, y0], [x1, y1]] // prettier-ignore
  }
}

/** The line of a plane along a side, zone by zone: drawn where something closes the plane there. */
const laneMarks = (
  project: Project,
  opening: Opening,
  side: Side,
  { plane, pen }: (typeof lanes)[number],
  [from, to]: readonly [Point, Point],
): readonly ViewMark[] => {
  const zones = opening.sides[side]
  const length_mm = zones.at(-1)?.to_mm ?? 1
  const at = (share: number): Point => [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
  ]
  return zones.flatMap((zone, index): ViewMark[] => {
    const [start, end] = [(zones[index - 1]?.to_mm ?? 0) / length_mm, zone.to_mm / length_mm]
    if (jointOf(project, zone).seals.some(it => serves(it, plane)))
      return [{ kind: 'path', layer: 'sealing', pen, points: [at(start), at(end)], closed: false }]
    const [cx, cy] = at((start + end) / 2)
    return [
      line('stroke', [cx - cross_mm, cy - cross_mm], [cx + cross_mm, cy + cross_mm]),
      line('stroke', [cx - cross_mm, cy + cross_mm], [cx + cross_mm, cy - cross_mm]),
    ]
  })
}

const cross_mm = 0.8

/** The line of a cut with heavy ends and its letter at both. */
const cutMarks = (
  { letter, upright }: CutMark,
  [x, y]: Point,
  [width, height]: Point,
): readonly ViewMark[] => {
  const [a, b]: readonly [Point, Point] = upright
    ? [[x + width / 2, y - beyond_mm], [x + width / 2, y + height + beyond_mm]] // prettier-ignore
    : [[x - beyond_mm, y + height / 2], [x + width + beyond_mm, y + height / 2]] // prettier-ignore
  const along = (from: Point, to: Point, off: number): Point => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1])
    return [from[0] + ((to[0] - from[0]) * off) / length, from[1] + ((to[1] - from[1]) * off) / length]
  }
  return [
    line('axis', a, b),
    line('sheet', a, along(a, b, end_mm)),
    line('sheet', b, along(b, a, end_mm)),
    ...(upright
      ? [letterAt(letter, [a[0], a[1] - heights.subtitle_mm - 0.9]), letterAt(letter, [b[0], b[1] + 0.9])]
      : [
          letterAt(letter, [a[0] - 2, a[1] - heights.subtitle_mm / 2]),
          letterAt(letter, [b[0] + 2, b[1] - heights.subtitle_mm / 2]),
        ]),
  ]
}

const letterAt = (letter: string, at: Point): ViewMark =>
  text(letter, at, { height_mm: heights.subtitle_mm, bold: true, anchor: 'middle' })

const names = {
  view: words('seen from outside', 'Ansicht von außen'),
  outer: words('outer', 'außen'),
  middle: words('middle', 'Mitte'),
  inner: words('inner', 'innen'),
}

/** What the lines are, below the picture: a stretch of each with its name. */
const laneNames = (language: Language, [left, low]: Point, hasPhotos: boolean): readonly ViewMark[] => {
  const photo = hasPhotos ? photoEntry(language) : undefined
  const stretch_mm = photo ? 4 : 5
  const widths = lanes.map(it => stretch_mm + 1.2 + textWidth_mm(names[it.plane][language], heights.note_mm))
  const gap = photo ? 2 : 3
  const all =
    widths.reduce((sum, it) => sum + it, 0) + gap * (lanes.length - 1) + (photo ? gap + photo.width_mm : 0)
  let x = left + (keySize_mm[0] - all) / 2
  const named = lanes.flatMap(({ plane, pen }, at): ViewMark[] => {
    const start = x
    x += (widths[at] ?? 0) + gap
    return [
      { kind: 'path', layer: 'sheet', pen, points: [[start, low + heights.note_mm / 2], [start + stretch_mm, low + heights.note_mm / 2]], closed: false },
      text(names[plane][language], [start + stretch_mm + 1.2, low]),
    ]
  }) // prettier-ignore
  return [...named, ...(photo ? photo.draw([x, low]) : [])]
}
