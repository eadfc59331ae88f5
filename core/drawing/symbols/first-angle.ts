import type { Point } from '../../geometry'
import type { ViewMark } from '../mark'
import type { DrawnSymbol } from './symbol'

/** The sign of first-angle projection: a truncated cone from the side and from its end (ISO 5456-2, from memory). */
export const firstAngle: DrawnSymbol = {
  name: 'first-angle',
  marks: ({ at: [x, y], layer }) => {
    const path = (points: readonly Point[], closed: boolean, pen: 'stroke' | 'faint'): ViewMark => ({
      kind: 'path',
      layer,
      pen,
      closed,
      points: points.map(([dx, dy]) => [x + dx, y + dy]),
    })
    return [
      path(
        [
          [-7, 1.2],
          [-1, 2.4],
          [-1, -2.4],
          [-7, -1.2],
        ],
        true,
        'stroke',
      ),
      path(circle(2.4), true, 'stroke'),
      path(circle(1.2), true, 'stroke'),
      path(
        [
          [-8, 0],
          [0, 0],
        ],
        false,
        'faint',
      ),
      path(
        [
          [1, 0],
          [8, 0],
        ],
        false,
        'faint',
      ),
      path(
        [
          [4.5, -3.3],
          [4.5, 3.3],
        ],
        false,
        'faint',
      ),
    ]
  },
}

const circle = (radius: number): Point[] =>
  Array.from({ length: 36 }, (_, at): Point => {
    const angle = (at * Math.PI) / 18
    return [4.5 + radius * Math.cos(angle), radius * Math.sin(angle)]
  })
