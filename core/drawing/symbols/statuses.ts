import type { Point } from '../../geometry'
import type { ViewMark } from '../mark'
import { type Status, statusColours, statuses } from '../style/verdicts'
import type { DrawnSymbol } from './symbol'

/** Half the width of a status mark: 5 mm stand well beside letters of 2.5 mm. Ours. */
const half = 2.5
const rim = 0.35

/** The marks of the verdicts: a shape of its own for each, a sign in it, and a colour. */
export const statusSymbols: readonly DrawnSymbol[] = statuses.map(status => ({
  name: `status-${status}`,
  marks: mark => {
    const { line, fill } = statusColours[status]
    const at = (points: readonly Point[]): Point[] => points.map(([x, y]) => [mark.at[0] + x, mark.at[1] + y])
    const area = (
      points: readonly Point[],
      tint: string,
      holes: readonly (readonly Point[])[] = [],
    ): ViewMark => ({
      kind: 'area',
      layer: mark.layer,
      ...(mark.part !== undefined && { part: mark.part }),
      outline: at(points),
      holes: holes.map(at),
      tint,
    })
    const { shape, sign } = figures[status]
    const body = shape.map(outline => area(outline, line))
    const inner = status === 'unknown' ? [] : shape.map(outline => area(shrunk(outline), fill))
    return [...body, ...inner, ...sign.map(stroke => area(stroke, line))]
  },
}))

const circle = (radius: number, from = 0, to = 360): Point[] => {
  const pieces = Math.max(2, Math.round(Math.abs(to - from) / 10))
  return Array.from({ length: to - from === 360 ? pieces : pieces + 1 }, (_, at): Point => {
    const angle = ((from + ((to - from) * at) / pieces) * Math.PI) / 180
    return [radius * Math.cos(angle), radius * Math.sin(angle)]
  })
}

const square: Point[] = [
  [-2.2, -2.2],
  [2.2, -2.2],
  [2.2, 2.2],
  [-2.2, 2.2],
]
const diamond: Point[] = [
  [0, -half],
  [half, 0],
  [0, half],
  [-half, 0],
]
const triangle: Point[] = [
  [-half, -2.1],
  [half, -2.1],
  [0, 2.4],
]

/** Shrinks an outline towards its middle so that a rim stays. */
const shrunk = (outline: readonly Point[]): Point[] => {
  const middle = outline.reduce<Point>(
    ([x, y], point) => [x + point[0] / outline.length, y + point[1] / outline.length],
    [0, 0],
  )
  const least = Math.min(
    ...outline.map((from, at) => edgeDistance(from, outline[(at + 1) % outline.length], middle)),
  )
  const share = 1 - rim / least
  return outline.map(([x, y]) => [middle[0] + (x - middle[0]) * share, middle[1] + (y - middle[1]) * share])
}

const edgeDistance = (from: Point, to: Point | undefined, at: Point): number => {
  if (to === undefined) return Infinity
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  return Math.abs((to[0] - from[0]) * (from[1] - at[1]) - (from[0] - at[0]) * (to[1] - from[1])) / length
}

/** A line of a width as an outline. */
const bar = ([x0, y0]: Point, [x1, y1]: Point, width = 0.5): Point[] => {
  const length = Math.hypot(x1 - x0, y1 - y0)
  const [nx, ny] = [((y0 - y1) / length) * (width / 2), ((x1 - x0) / length) * (width / 2)]
  return [
    [x0 - nx, y0 - ny],
    [x1 - nx, y1 - ny],
    [x1 + nx, y1 + ny],
    [x0 + nx, y0 + ny],
  ]
}

const disc = ([x, y]: Point, radius: number): Point[] =>
  circle(radius).map(([dx, dy]): Point => [x + dx, y + dy])

/** A ring of six dashes. */
const dashedRing: Point[][] = Array.from({ length: 6 }, (_, dash) => [
  ...circle(half, dash * 60, dash * 60 + 38),
  ...circle(half - rim - 0.1, dash * 60 + 38, dash * 60),
])

/** A question mark: its bow as pieces of a ring, its stem, its dot. */
const question: Point[][] = [
  [...circle(1, 170, -60), ...circle(0.5, -60, 170)].map(([x, y]): Point => [x, y + 0.6]),
  bar([0.35, 0.1], [0, -0.75], 0.5),
  disc([0, -1.35], 0.32),
]

const figures: Readonly<
  Record<Status, { readonly shape: readonly Point[][]; readonly sign: readonly Point[][] }>
> = {
  met: { shape: [circle(half)], sign: [bar([-1.2, 0], [-0.3, -1]), bar([-0.45, -1.05], [1.3, 0.95])] },
  advice: {
    shape: [triangle],
    sign: [
      [
        [-0.3, 1.1],
        [-0.2, -0.55],
        [0.2, -0.55],
        [0.3, 1.1],
      ],
      disc([0, -1.2], 0.32),
    ],
  },
  'not-met': { shape: [square], sign: [bar([-1.1, -1.1], [1.1, 1.1]), bar([-1.1, 1.1], [1.1, -1.1])] },
  refer: {
    shape: [diamond],
    sign: [
      bar([-1.2, 0], [0.6, 0]),
      [
        [1.4, 0],
        [0.4, 0.75],
        [0.4, -0.75],
      ],
    ],
  },
  unknown: { shape: dashedRing, sign: question },
  'not-applicable': { shape: [], sign: [bar([-1.6, 0], [1.6, 0], 0.6)] },
}
