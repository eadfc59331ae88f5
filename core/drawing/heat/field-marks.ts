import type { Point } from '../../geometry'
import type { Language } from '../../words'
import { type Placement, placeView } from '../place-view'
import type { Pen, View, ViewMark } from '../mark'
import { between, clipLine, clipOutline, spanInside, type Window } from '../section/clip'
import type { Band } from './contours/bands'
import { contoursOf } from './contours/contours'
import type { Box } from './box'
import { type Labels, labelsOf, type LabelledLine } from './labels'
import type { HeatPicture } from './picture'
import { bandColour, isStrong } from './scale'

/** How a temperature field is drawn into a view. */
export type FieldLook = Pick<View, 'window' | 'scale' | 'turn_deg' | 'mirrored' | 'at'> & {
  readonly language: Language
  /** the part of the window that is seen, where numbers are to stand; absent: all of it */
  readonly seen?: Window
  /** small pictures do without numbers */
  readonly numbers?: 'none'
}

/** The marks of a field: bands below everything that is cut, lines with their numbers, the coldest place above. */
export type FieldMarks = {
  readonly bands: readonly ViewMark[]
  readonly lines: readonly ViewMark[]
}

/** How far a line may leave its temperature on paper: less than its width. Ours. */
const tolerance_mm = 0.06

/** Draws a field: bands of a degree, thin lines each degree, strong ones each five, named ones, the coldest place. */
export const fieldMarks = (it: HeatPicture, look: FieldLook): FieldMarks => {
  const { window, scale } = look
  const named = new Map(it.named.map(({ level_C, name }) => [level_C, name]))
  const { lines, bands } = contoursOf(it.solution, {
    edges_C: it.scale.edges_C,
    alone_C: [...named.keys()],
    tolerance_mm: tolerance_mm / scale,
  })
  const placement = placeView(look)
  const drawn = lines.flatMap(({ level_C, points }) =>
    clipLine(points, window).map((piece): LabelledLine => {
      const name = named.get(level_C)
      return { level_C, points: piece, paper: piece.map(placement.toPaper), ...(name && { name }) }
    }),
  )
  const labels =
    look.numbers === 'none' ? noLabels : labelsOf(drawn, { ...look, coldest: it.coldest, placement })
  return {
    bands: bands.flatMap(band => bandMarks(band, bandColour(it.scale, band.band), window)),
    lines: [
      ...drawn.flatMap(line => lineMarks(line, labels.gaps, placement)),
      ...labels.marks,
      ...(it.coldest ? [coldestMark(it.coldest.at_mm)] : []),
    ],
  }
}

const noLabels: Labels = { marks: [], gaps: [] }

const bandMarks = ({ pieces }: Band, tint: string, window: Window): readonly ViewMark[] =>
  pieces.flatMap(({ outline, holes }): readonly ViewMark[] => {
    const cut = clipOutline(outline, window)
    if (cut.length < 3) return []
    return [
      {
        kind: 'area',
        layer: 'heat',
        outline: cut,
        holes: holes.map(it => clipOutline(it, window)).filter(it => it.length > 2),
        tint,
      },
    ]
  })

const penOf = ({ level_C, name }: LabelledLine): Pen =>
  name ? 'isotherm-named' : isStrong(level_C) ? 'isotherm-strong' : 'isotherm'

/** A line is broken where a number stands, its own or another's. */
const lineMarks = (line: LabelledLine, gaps: readonly Box[], { toModel }: Placement): readonly ViewMark[] => {
  const pen = penOf(line)
  return outsideOf(line, gaps, toModel).map((points): ViewMark => {
    const [first, last] = [points[0], points.at(-1)]
    const closed = points.length > 3 && first?.[0] === last?.[0] && first?.[1] === last?.[1]
    return {
      kind: 'path',
      layer: 'isotherms',
      pen,
      points: closed ? points.slice(0, -1) : points,
      closed,
    }
  })
}

/** The pieces of a line that lie in none of some boxes of the paper. */
const outsideOf = (
  line: LabelledLine,
  gaps: readonly Box[],
  toModel: Placement['toModel'],
): readonly (readonly Point[])[] => {
  const near = gaps.filter(gap => line.paper.some((to, i) => meets(line.paper[i - 1] ?? to, to, gap)))
  if (near.length === 0) return [line.points]
  const pieces: Point[][] = []
  let piece: Point[] = []
  const close = (): void => {
    if (piece.length > 1) pieces.push(piece)
    piece = []
  }
  line.paper.forEach((to, i) => {
    const from = line.paper[i - 1]
    const model = line.points[i] ?? toModel(to)
    if (!from) {
      if (!near.some(gap => isIn(to, gap))) piece.push(model)
      return
    }
    let at = 0
    for (const [start, end] of hidden(from, to, near)) {
      if (start > at || piece.length > 0) {
        if (piece.length === 0) piece.push(toModel(between(from, to, at)))
        piece.push(toModel(between(from, to, start)))
        close()
      }
      at = Math.max(at, end)
    }
    if (at >= 1) return
    if (piece.length === 0)
      piece.push(at === 0 ? (line.points[i - 1] ?? model) : toModel(between(from, to, at)))
    piece.push(model)
  })
  close()
  return pieces
}

/** The shares of a stretch that boxes hide, ascending. */
const hidden = (from: Point, to: Point, boxes: readonly Box[]): readonly (readonly [number, number])[] =>
  boxes
    .flatMap(box => {
      const span = spanInside(from, to, box[0], box[1])
      return span ? [span] : []
    })
    .toSorted((a, b) => a[0] - b[0])

const meets = (from: Point, to: Point, box: Box): boolean =>
  Math.max(from[0], to[0]) >= box[0][0] &&
  Math.min(from[0], to[0]) <= box[1][0] &&
  Math.max(from[1], to[1]) >= box[0][1] &&
  Math.min(from[1], to[1]) <= box[1][1]

const isIn = ([x, y]: Point, [low, high]: Box): boolean =>
  low[0] < x && x < high[0] && low[1] < y && y < high[1]

/** The sign of the coldest place. */
const coldestMark = (at: Point): ViewMark => ({
  kind: 'symbol',
  layer: 'isotherms',
  name: 'coldest-place',
  at,
  values: {},
})
