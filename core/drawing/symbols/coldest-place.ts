import type { Point } from '../../geometry'
import type { ViewMark } from '../mark'
import { black, paper } from '../style/pens'
import type { DrawnSymbol } from './symbol'

/** Radii of the sign of the coldest place of a surface: a ring with a dot, on white, seen on any band. Ours. */
const radii_mm = { rim: 1.75, white: 1.2, dot: 0.6 } as const

/** A ringed dot. */
export const coldestPlace: DrawnSymbol = {
  name: 'coldest-place',
  marks: ({ at, layer }) => {
    const area = (radius: number, tint: string, hole?: number): ViewMark => ({
      kind: 'area',
      layer,
      outline: circle(at, radius),
      holes: hole === undefined ? [] : [circle(at, hole).toReversed()],
      tint,
    })
    return [area(radii_mm.rim, paper), area(radii_mm.rim, black, radii_mm.white), area(radii_mm.dot, black)]
  },
}

const corners = 32

const circle = ([x, y]: Point, radius: number): readonly Point[] =>
  Array.from({ length: corners }, (_, i): Point => {
    const turn = (2 * Math.PI * i) / corners
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)]
  })
