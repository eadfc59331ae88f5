import type { Point } from '../../geometry'
import { type Body, stretchesAt } from './shape'

/** A slope of leaders: its tangent and sine, what a leader that has it costs more than others, and what it runs over. */
export type Slope = {
  readonly tangent: number
  readonly sine: number
  readonly price: number
  readonly rising: () => Rays
  readonly falling: () => Rays
}

/** Leaders of a picture have one slope; a steeper one is worth its price where the usual one leads through sizes. Ours. */
const steep = { deg: 75, price: 12 }

/** The slopes that leaders over some bodies may have: the usual one first. */
export const slopesOver = (
  bodies: readonly Body[],
  slope_deg: number,
): readonly [usual: Slope, ...steeper: Slope[]] => {
  const cover = coverOf(bodies)
  const usual = slopeOf(slope_deg, 0, cover)
  return slope_deg < steep.deg ? [usual, slopeOf(steep.deg, steep.price, cover)] : [usual]
}

const slopeOf = (deg: number, price: number, cover: Cover): Slope => {
  const angle = (deg * Math.PI) / 180
  const tangent = Math.tan(angle)
  return {
    tangent,
    sine: Math.sin(angle),
    price,
    rising: once(() => raysOf(cover, tangent, true)),
    falling: once(() => raysOf(cover, tangent, false)),
  }
}

/** A value that is found when it is first asked for. */
const once = <T>(find: () => T): (() => T) => {
  let found: { readonly value: T } | undefined
  return () => (found ??= { value: find() }).value
}

/** Where any material lies, in cells of a grid: a slope is looked along far too often to be cut with every outline. */
type Cover = {
  readonly left: number
  readonly low: number
  readonly columns: number
  readonly rows: number
  readonly cells: Uint8Array
}

/** The side of a cell: finer ones cost more than they find. Ours. */
const cell_mm = 0.8

const coverOf = (bodies: readonly Body[]): Cover => {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity]
  for (const body of bodies) {
    low = Math.min(low, body.low)
    high = Math.max(high, body.high)
    for (const loop of body.shape.loops)
      for (const [x] of loop) {
        if (x < left) left = x
        if (x > right) right = x
      }
  }
  if (bodies.length === 0) return { left: 0, low: 0, columns: 0, rows: 0, cells: new Uint8Array() }
  const columns = Math.ceil((right - left) / cell_mm)
  const rows = Math.ceil((high - low) / cell_mm)
  const cells = new Uint8Array(columns * rows)
  for (const body of bodies) {
    const [first, last] = [(body.low - low) / cell_mm, (body.high - low) / cell_mm]
    for (let row = Math.floor(first); row < Math.min(rows, Math.ceil(last)); row++)
      for (const [from, to] of stretchesAt(body.shape, low + (row + 0.5) * cell_mm)) {
        const start = row * columns
        cells.fill(
          1,
          start + Math.max(0, Math.round((from - left) / cell_mm)),
          start + Math.min(columns, Math.round((to - left) / cell_mm)),
        )
      }
  }
  return { left, low, columns, rows, cells }
}

/** Sums of covered cells along the rays of a slope, from the lowest row upwards: `sums[row * rays + ray]`. */
type Rays = {
  readonly cover: Cover
  readonly shift: number
  readonly rays: number
  readonly sums: Uint16Array
}

const raysOf = (cover: Cover, tangent: number, rising: boolean): Rays => {
  const { columns, rows, cells } = cover
  const lean = 1 / tangent
  const shift = rising ? rows * lean : 0
  const rays = Math.ceil(columns + rows * lean) + 1
  const sums = new Uint16Array((rows + 1) * rays)
  for (let row = 0; row < rows; row++) {
    const aside = (rising ? row + 0.5 : -row - 0.5) * lean - shift + 0.5
    for (let ray = 0; ray < rays; ray++) {
      const column = Math.floor(ray + aside)
      const isCovered = column >= 0 && column < columns ? cells[row * columns + column]! : 0
      sums[(row + 1) * rays + ray] = sums[row * rays + ray]! + isCovered
    }
  }
  return { cover, shift, rays, sums }
}

/** How much of a slope to the right lies in any material, from a place up or down to a height. Paper mm. */
export const covered_mm = (slope: Slope, from: Point, to: number): number => {
  const y = from[1]
  const { cover, shift, rays, sums } = to > y ? slope.rising() : slope.falling()
  const row = (y - cover.low) / cell_mm
  const lean = (to > y ? -row : row) / slope.tangent
  const ray = Math.floor((from[0] - cover.left) / cell_mm + lean + shift)
  if (ray < 0 || rays <= ray) return 0
  const start = within(Math.round(row), cover.rows)
  const end = within(Math.round((to - cover.low) / cell_mm), cover.rows)
  return (Math.abs(sums[end * rays + ray]! - sums[start * rays + ray]!) * cell_mm) / slope.sine
}

const within = (row: number, most: number): number => (row < 0 ? 0 : row > most ? most : row)
