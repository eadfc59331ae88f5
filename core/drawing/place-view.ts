import type { Point } from '../geometry'
import type { View } from './mark'

/** How model places and paper places of a view belong together. */
export type Placement = {
  readonly toPaper: (at: Point) => Point
  readonly toModel: (at: Point) => Point
}

type Placed = Pick<View, 'window' | 'at' | 'scale' | 'turn_deg' | 'mirrored'>

/** Mirrors (left to right), turns and scales a view's window so that its lower left corner on paper is `at`. */
export const placeView = (view: Placed): Placement => {
  const flip = view.mirrored ? -1 : 1
  const [cos, sin] = quarter[view.turn_deg]
  const turned = ([x, y]: Point): Point => [
    (flip * x * cos - y * sin) * view.scale,
    (flip * x * sin + y * cos) * view.scale,
  ]
  const [a, b] = [turned(view.window[0]), turned(view.window[1])]
  const [left, low] = [Math.min(a[0], b[0]), Math.min(a[1], b[1])]
  return {
    toPaper: at => {
      const [x, y] = turned(at)
      return [x - left + view.at[0], y - low + view.at[1]]
    },
    toModel: ([x, y]) => {
      const u = (x - view.at[0] + left) / view.scale
      const v = (y - view.at[1] + low) / view.scale
      return [flip * (u * cos + v * sin), v * cos - u * sin]
    },
  }
}

/** Cosine and sine of the quarter turns, exact. */
const quarter = { 0: [1, 0], 90: [0, 1], 180: [-1, 0], 270: [0, -1] } as const

/** Width and height of a view's window on paper. */
export const sizeOnPaper_mm = (view: Pick<View, 'window' | 'scale' | 'turn_deg'>): Point => {
  const [[x0, y0], [x1, y1]] = view.window
  const across: Point = [(x1 - x0) * view.scale, (y1 - y0) * view.scale]
  return view.turn_deg === 90 || view.turn_deg === 270 ? [across[1], across[0]] : across
}
