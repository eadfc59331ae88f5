import { type Ink, type Letters, printable, textWidth_mm } from '../../drawing'
import type { Layer, Pen } from '../../drawing'
import type { Point } from '../../geometry'
import { add, type Own, type Place } from './draft'
import { fillLayer, type On, ownColour, penLayer, weightOf } from './layers'
import { plainWords } from './lettering'
import { flatPoint, point, type Tags } from './tags'

/** Draws ink in paper mm into a space. `pen` is what its words are written with. */
export const drawInk = (place: Place, ink: Ink, layer: Layer, pen: Pen): void => {
  const { draft, scale } = place
  switch (ink.kind) {
    case 'stroke': {
      const on = strokeLayer(place, ink, layer)
      for (const line of ink.lines) polyline(place, pointsOf(line, place), ink.closed, on)
      return
    }
    case 'rings': {
      const on = strokeLayer(place, ink, layer)
      for (const [at, radius] of circlesOf(ink.circles, place)) circle(place, at, radius, on)
      return
    }
    case 'discs': {
      const on = penLayer(draft, layer, ink.pen, scale)
      if (ink.as !== 'clear')
        for (const [at, radius] of circlesOf(ink.circles, place)) disc(place, at, radius, on)
      return
    }
    case 'fill':
      if (ink.as === 'clear') return
      solid(
        place,
        ink.loops.map(it => pointsOf(it, place)),
        ink.colour,
        fillLayer(draft, layer),
      )
      return
    case 'letters':
      text(place, ink, penLayer(draft, layer, pen, scale))
      return
    case 'picture':
      framed(place, ink, penLayer(draft, layer, 'seen', scale))
  }
}

/** Ink may be finer than its pen: ticks along a membrane are half as wide as it, and not dashed. */
const strokeLayer = (place: Place, ink: Extract<Ink, { kind: 'stroke' | 'rings' }>, layer: Layer): On => {
  const on = penLayer(place.draft, layer, ink.pen, place.scale)
  const row = place.draft.layers.get(on.layer)
  const weight = weightOf(ink.width_mm)
  const full = ink.dash_mm.length === 0 && row?.linetype !== 'Continuous'
  return {
    ...on,
    own: { ...on.own, ...(weight !== row?.weight && { weight }), ...(full && { linetype: 'Continuous' }) },
  }
}

/** Flat coordinates as points of a space. */
export const pointsOf = (flat: readonly number[], place: Place): Point[] => {
  const points: Point[] = []
  for (let at = 0; at + 1 < flat.length; at += 2) points.push(place.at([flat[at] ?? 0, flat[at + 1] ?? 0]))
  return points
}

const circlesOf = (flat: readonly number[], place: Place): (readonly [Point, number])[] => {
  const circles: (readonly [Point, number])[] = []
  for (let at = 0; at + 2 < flat.length; at += 3)
    circles.push([place.at([flat[at] ?? 0, flat[at + 1] ?? 0]), (flat[at + 2] ?? 0) / place.scale])
  return circles
}

/** A polyline of straight pieces. */
export const polyline = (
  place: Place,
  points: readonly Point[],
  closed: boolean,
  on: { readonly layer: string; readonly rank: number; readonly own?: Own },
): void => {
  add(place, 'LWPOLYLINE', on, [
    [100, 'AcDbPolyline'],
    [90, points.length],
    [70, closed ? 1 : 0],
    [43, 0],
    ...points.flatMap(it => flatPoint(10, it)),
  ])
}

export const circle = (place: Place, at: Point, radius: number, on: On): void => {
  add(place, 'CIRCLE', on, [[100, 'AcDbCircle'], ...point(10, at), [40, radius]])
}

/** A filled circle: a ring as wide as its radius. */
export const disc = (place: Place, [x, y]: Point, radius: number, on: On): void => {
  const half = radius / 2
  add(place, 'LWPOLYLINE', on, [
    [100, 'AcDbPolyline'],
    [90, 2],
    [70, 1],
    [43, radius],
    ...flatPoint(10, [x - half, y]),
    [42, 1],
    ...flatPoint(10, [x + half, y]),
    [42, 1],
  ])
}

/** The loops of a hatch: the outline runs counter-clockwise and holes clockwise, whichever way they came. */
export const loopTags = (loops: readonly (readonly Point[])[]): Tags => [
  [91, loops.length],
  ...loops.flatMap((loop, at): Tags => {
    const points = turned(loop, at === 0)
    return [
      [92, at === 0 ? 1 | 2 : 16 | 2],
      [72, 0],
      [73, 1],
      [93, points.length],
      ...points.flatMap(it => flatPoint(10, it)),
      [97, 0],
    ]
  }),
]

/** A loop in the wanted direction. */
export const turned = (loop: readonly Point[], counterClockwise: boolean): readonly Point[] =>
  twiceArea(loop) > 0 === counterClockwise ? loop : loop.toReversed()

/** Twice the area, positive when counter-clockwise. */
export const twiceArea = (loop: readonly Point[]): number =>
  loop.reduce((sum, [x, y], at) => {
    const [nextX, nextY] = loop[(at + 1) % loop.length] ?? [x, y]
    return sum + x * nextY - nextX * y
  }, 0)

/** An area filled with a colour. */
export const solid = (place: Place, loops: readonly (readonly Point[])[], colour: string, on: On): void => {
  const drawn = loops.filter(it => it.length > 2)
  if (drawn.length === 0) return
  add(place, 'HATCH', { ...on, own: { ...on.own, colour: ownColour(place.draft, colour) } }, [
    [100, 'AcDbHatch'],
    ...point(10, [0, 0]),
    ...upwards,
    [2, 'SOLID'],
    [70, 1],
    [71, 0],
    ...loopTags(drawn),
    [75, 0],
    [76, 1],
    [98, 0],
  ])
}

/** The direction from which a drawing is looked at. */
export const upwards: Tags = [
  [210, 0],
  [220, 0],
  [230, 1],
]

/** Substitutes are wider than the lettering of the sheet: this brings them to its width. Ours, by Arial's figures. */
export const letterWidth = 0.85

/** Names of the styles of words. */
export const styles = { regular: 'JW-WORDS', bold: 'JW-WORDS-BOLD' } as const

/** A line of words. */
export const text = (place: Place, letters: Letters, on: On): void => {
  if (printable(letters.words).trim() === '') return
  add(place, 'TEXT', on, [...textTags(place, letters), [100, 'AcDbText'], [73, 0]])
}

/** What words and attributes share; `AcDbText` begins it. */
export const textTags = (place: Place, letters: Letters): Tags => {
  const { anchor, height_mm, turn_deg, bold } = letters
  const words = printable(letters.words)
  const share = anchor === 'start' ? 0 : anchor === 'middle' ? 0.5 : 1
  const back = textWidth_mm(words, height_mm, bold) * share
  const angle = (turn_deg * Math.PI) / 180
  const start: Point = [letters.at[0] - back * Math.cos(angle), letters.at[1] - back * Math.sin(angle)]
  return [
    [100, 'AcDbText'],
    ...point(10, place.at(start)),
    [40, height_mm / place.scale],
    [1, plainWords(words)],
    [50, turn_deg],
    [41, letterWidth],
    [7, bold ? styles.bold : styles.regular],
    [72, anchor === 'start' ? 0 : anchor === 'middle' ? 1 : 2],
    ...(anchor === 'start' ? [] : point(11, place.at(letters.at))),
  ]
}

/** A picture cannot be kept in the file: its frame stands for it, with what it shows in words. */
const framed = (place: Place, ink: Extract<Ink, { kind: 'picture' }>, on: On): void => {
  const [[x, y], [width, height]] = [ink.at, ink.size]
  const corners: readonly Point[] = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ]
  polyline(place, corners.map(place.at), true, on)
  text(
    place,
    {
      kind: 'letters',
      at: [x + width / 2, y + height / 2],
      words: ink.says[place.draft.look.language],
      height_mm: 2.5,
      turn_deg: 0,
      anchor: 'middle',
      bold: false,
      colour: '#111111',
    },
    on,
  )
}
