import type { Id, Point } from '../../geometry'
import { type Body, bodyOf, offShape_mm, poleOf, type Shape, stretchesAt } from './shape'

/** What wants a number: its visible bodies, or places along it where it is a line. Paper mm. */
export type Site = { readonly id: Id; readonly shapes: readonly Shape[]; readonly places: readonly Point[] }

/** Where the dot of a part may stand: at places whatever the slot, and in its bodies at the level of the slot. */
export type Places = { readonly anchors: readonly Point[]; readonly floating: readonly Body[] }

export const placesOf = (site: Site): Places => ({
  anchors: anchorsOf(site),
  floating: site.shapes.map(bodyOf),
})

/** How far from the column side of a body a floating dot stands, and how much room it needs. Ours. */
const inset_mm = 3
const room_mm = 0.5

/** Levels at which the near side of a body is offered. Ours. */
const sideLevels = 5

/**
 * Where dots may stand whatever the slot, the lowest first: well inside each body, near its side towards the column, and
 * spread over it.
 */
const anchorsOf = (site: Site): readonly Point[] => {
  const bodies = site.shapes.flatMap((shape, at) => {
    const pole = poleOf(shape)
    if (pole === undefined) return []
    return [pole, ...sidesOf(shape, pole[1]), ...spreadOver(shape, pole, at === 0 ? 3 : 1)]
  })
  return apart([...bodies, ...site.places]).toSorted((a, b) => a[1] - b[1] || a[0] - b[0])
}

/** Places nearer to each other than this are one. Ours. */
const same_mm = 1.5

/** The first of places that are one. */
const apart = (places: readonly Point[]): readonly Point[] => {
  const kept: Point[] = []
  for (const [x, y] of places)
    if (kept.every(it => Math.max(Math.abs(it[0] - x), Math.abs(it[1] - y)) >= same_mm)) kept.push([x, y])
  return kept
}

/** Places near the column side of a body: at the level of its pole, and at levels spread over its height. */
const sidesOf = (shape: Shape, level: number): readonly Point[] => {
  const ys = shape.loops.flatMap(loop => loop.map(it => it[1]))
  const [low, high] = [Math.min(...ys), Math.max(...ys)]
  const levels = Array.from(
    { length: sideLevels },
    (_, at) => low + ((at + 1) * (high - low)) / (sideLevels + 1),
  )
  return [level, ...levels].flatMap((y): readonly Point[] => {
    const place = floatAt(shape, y)
    return place ? [place] : []
  })
}

/** Dots spread over a body keep so far off its edges where it is as thick as that: a dot shows that it lies inside. Ours. */
const offEdge_mm = 0.6

/** Places spread over a body along level lines and upright ones: a thin leg of it is met by one of the two. */
const spreadOver = (shape: Shape, pole: Point, lines: number): readonly Point[] => {
  const least_mm = Math.min(offEdge_mm, 0.7 * offShape_mm(shape, pole))
  const turned: Shape = { loops: shape.loops.map(loop => loop.map(([x, y]): Point => [y, x])) }
  return [...alongLines(shape, lines), ...alongLines(turned, lines).map(([y, x]): Point => [x, y])].filter(
    it => offShape_mm(shape, it) >= least_mm,
  )
}

const alongLines = (shape: Shape, lines: number): readonly Point[] => {
  const { low, high } = bodyOf(shape)
  const count = Math.max(1, Math.min(lines, Math.round((high - low) / 3)))
  return Array.from({ length: count }, (_, at) => low + ((at + 0.5) * (high - low)) / count).flatMap(y =>
    stretchesAt(shape, y).flatMap(([from, to]) =>
      sharesOf(to - from).map((share): Point => [from + share * (to - from), y]),
    ),
  )
}

const sharesOf = (length: number): readonly number[] =>
  length < 1.2 ? [] : length < 4 ? [0.5] : length < 12 ? [0.25, 0.75] : [0.15, 0.5, 0.85]

/** Where a dot may stand at the level of a slot, so that the leader needs no bend. */
export const floatsAt = (floating: readonly Body[], y: number): readonly Point[] => {
  let places: Point[] | undefined
  for (const { shape, low, high } of floating) {
    if (y < low || high < y) continue
    const place = floatAt(shape, y)
    if (place && isRoomy(shape, y, place[0])) (places ??= []).push(place)
  }
  return places ?? none
}

const none: readonly Point[] = []

const floatAt = (shape: Shape, y: number): Point | undefined => {
  const last = stretchesAt(shape, y).at(-1)
  if (last === undefined || last[1] - last[0] < 2 * room_mm) return undefined
  return [last[1] - Math.min(inset_mm, (last[1] - last[0]) / 2), y]
}

const isRoomy = (shape: Shape, y: number, x: number): boolean =>
  [y - room_mm, y + room_mm].every(level =>
    stretchesAt(shape, level).some(([from, to]) => from <= x && x <= to),
  )
