import type { Point } from '../../geometry'
import { callout } from '../style/spacing'
import { type Shape, stretchesAt } from './shape'

/**
 * What leaders run over: bodies, the words of sizes, which they must not strike through, and the lines of sizes, which they
 * had better not cross. Paper mm. `slope_deg` is that of all leaders on it; absent: the usual one.
 */
export type Picture = {
  readonly bodies: readonly Shape[]
  readonly words: readonly Box[]
  readonly lines?: readonly SizeLine[]
  readonly slope_deg?: number
}

/** Lower left and upper right corner. */
export type Box = readonly [Point, Point]

/** A line of a size, level or upright: one that carries words, or one that leads to it. Paper mm. */
export type SizeLine = { readonly from: Point; readonly to: Point; readonly carries: boolean }

/** A picture, ready to be looked at along many leaders. */
export type Scene = {
  readonly bodies: readonly Body[]
  /** edges and lines of sizes that run level: their height, and from where to where */
  readonly edges: readonly (readonly [y: number, from: number, to: number])[]
  readonly words: readonly Box[]
  readonly lines: readonly SizeLine[]
  /** slopes that leaders may have: the usual one of the picture first */
  readonly slopes: readonly [Slope, ...Slope[]]
}

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

/** A body and between which heights it lies. */
export type Body = { readonly shape: Shape; readonly low: number; readonly high: number }

/** The picture that leaders run over, looked at along one level line. */
export type Level = {
  readonly y: number
  /** stretches of any material */
  readonly bodies: readonly (readonly [number, number])[]
  /** stretches of edges that run level and close by */
  readonly edges: readonly (readonly [number, number])[]
  /** words that the line runs through */
  readonly words: readonly Box[]
  /** upright lines of sizes that it crosses */
  readonly lines: readonly SizeLine[]
  readonly scene: Scene
}

/** Edges nearer than this read as one line with the leader; kinks below this look like a slip. Ours. */
export const beside_mm = 1.3

/** Lines that are level to this count as level. Ours. */
const level_mm = 0.3

export const sceneOf = ({ bodies, words, lines = [], slope_deg = callout.slope_deg }: Picture): Scene => {
  const own = bodies.map(bodyOf)
  const cover = coverOf(own)
  const usual = slopeOf(slope_deg, 0, cover)
  const levels = lines.filter(it => !isUpright(it))
  return {
    words,
    lines,
    bodies: own,
    edges: [
      ...bodies.flatMap(shape => shape.loops.flatMap(levelEdges)),
      ...levels.map(({ from, to }) => [from[1], ...inOrder(from[0], to[0])] as const),
    ],
    slopes: slope_deg < steep.deg ? [usual, slopeOf(steep.deg, steep.price, cover)] : [usual],
  }
}

const levelEdges = (loop: readonly Point[]): [number, number, number][] =>
  loop.flatMap((from, at): [number, number, number][] => {
    const to = loop[(at + 1) % loop.length] ?? from
    return Math.abs(from[1] - to[1]) < level_mm ? [[from[1], ...inOrder(from[0], to[0])]] : []
  })

const inOrder = (a: number, b: number): [number, number] => (a < b ? [a, b] : [b, a])

export const isUpright = ({ from, to }: SizeLine): boolean => Math.abs(from[0] - to[0]) < level_mm

/** A body with its heights. */
export const bodyOf = (shape: Shape): Body => {
  let [low, high] = [Infinity, -Infinity]
  for (const loop of shape.loops)
    for (const [, y] of loop) {
      if (y < low) low = y
      if (y > high) high = y
    }
  return { shape, low, high }
}

/** What lies on the way of a leader at the level of a slot: stretches by their ends, the rightmost first. */
export const levelAt = (scene: Scene, y: number): Level => {
  const bodies: (readonly [number, number])[] = []
  for (const it of scene.bodies)
    if (it.low <= y && y <= it.high) for (const stretch of stretchesAt(it.shape, y)) bodies.push(stretch)
  const edges: (readonly [number, number])[] = []
  for (const it of scene.edges) if (Math.abs(it[0] - y) < beside_mm) edges.push([it[1], it[2]])
  return {
    y,
    bodies: bodies.sort(byEnd),
    edges: edges.sort(byEnd),
    words: scene.words.filter(([low, high]) => low[1] < y && y < high[1]),
    lines: scene.lines.filter(it => isUpright(it) && (it.from[1] - y) * (it.to[1] - y) <= 0),
    scene,
  }
}

const byEnd = (a: readonly [number, number], b: readonly [number, number]): number =>
  b[1] - a[1] || b[0] - a[0]

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
