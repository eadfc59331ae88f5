import type { Id, Outline, Point, Region } from '../../geometry'
import type { Section } from '../../section'
import type { Hatching } from '../mark'
import { hatchOf } from '../hatches/all'

/** All regions of one part and one material: what is hatched alike and outlined as one. */
export type Piece = {
  readonly part: Id
  readonly material: Id
  readonly hatch: string
  readonly regions: readonly Region[]
  readonly low: Point
  readonly high: Point
}

/** The pieces of a section, air and gas left out of them only where they have no material. */
export const piecesOf = (section: Section, hatchKeyOf: (material: Id) => string): readonly Piece[] => {
  const byName = new Map<string, Region[]>()
  for (const region of section.regions) {
    if (region.fill.kind === 'air') continue
    const name = `${region.part}\n${region.fill.material}`
    const there = byName.get(name)
    if (there) there.push(region)
    else byName.set(name, [region])
  }
  return [...byName.values()].flatMap(regions => {
    const [first] = regions
    if (first === undefined || first.fill.kind === 'air') return []
    const { material } = first.fill
    return [
      {
        part: first.part,
        material,
        hatch: hatchKeyOf(material),
        regions,
        ...extentOf(regions.flatMap(it => it.outline)),
      },
    ]
  })
}

/** Lower left and upper right corner of some points. */
export const extentOf = (points: readonly Point[]): { low: Point; high: Point } => {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const [x, y] of points) {
    x0 = Math.min(x0, x)
    y0 = Math.min(y0, y)
    x1 = Math.max(x1, x)
    y1 = Math.max(y1, y)
  }
  return { low: [x0, y0], high: [x1, y1] }
}

/** The hatching of each piece: fixed to the piece, and told apart from neighbours with the same hatch. */
export const hatchingsOf = (pieces: readonly Piece[]): ReadonlyMap<Piece, Hatching> => {
  const domain = extentOf(pieces.flatMap(it => [it.low, it.high]))
  const variants = new Map<Piece, number>()
  for (const piece of pieces) {
    const taken = pieces.flatMap(it => (areNeighbours(piece, it) ? [variants.get(it)] : []))
    variants.set(piece, [0, 1, 2].find(it => !taken.includes(it)) ?? 0)
  }
  return new Map(pieces.map(it => [it, hatchingOf(it, domain, variants.get(it) ?? 0)]))
}

/** Pieces of one hatch that touch, or have no more than this between them, are neighbours. Ours. */
const near_mm = 6

const areNeighbours = (a: Piece, b: Piece): boolean =>
  a !== b &&
  a.hatch === b.hatch &&
  a.low[0] - near_mm <= b.high[0] &&
  b.low[0] - near_mm <= a.high[0] &&
  a.low[1] - near_mm <= b.high[1] &&
  b.low[1] - near_mm <= a.high[1]

/**
 * A piece that runs out of the section starts its hatch at its near end and has no length of its own, so the hatch
 * stands still however far the section reaches.
 */
const hatchingOf = (
  { hatch, low, high }: Piece,
  domain: { readonly low: Point; readonly high: Point },
  variant: number,
): Hatching => {
  const [runsLeft, runsRight] = [low[0] === domain.low[0], high[0] === domain.high[0]]
  const width = runsLeft || runsRight ? 0 : high[0] - low[0]
  const height = high[1] - low[1]
  const upright = hatchOf(hatch).along === true && width > 0 && height > width
  return {
    key: hatch,
    origin: [upright || runsLeft ? high[0] : low[0], low[1]],
    turn_deg: upright ? 90 : 0,
    size: upright ? [height, width] : [width, height],
    ...(variant === 1 && { mirrored: true }),
    ...(variant === 2 && { closer: true }),
  }
}

/** Edges between solid bodies of two pieces, and whether an edge is one of them. */
export type LightEdges = {
  readonly lines: readonly Outline[]
  readonly has: (from: Point, to: Point) => boolean
}

/** Where solid bodies of two pieces touch: without a light line between them black neighbours would read as one. */
export const lightEdges = (
  pieces: readonly Piece[],
  isSolid: (region: Region, piece: Piece) => boolean,
): LightEdges => {
  const numberOf = numbering()
  const owners = new Map<number, Piece>()
  const found = new Map<number, Edge>()
  for (const piece of pieces)
    for (const region of piece.regions) {
      if (!isSolid(region, piece)) continue
      for (const outline of [region.outline, ...region.holes]) {
        const numbers = outline.map(numberOf)
        outline.forEach((from, at) => {
          const after = (at + 1) % outline.length
          const [a, b] = [numbers[at] ?? 0, numbers[after] ?? 0]
          const other = owners.get(b * mostPlaces + a)
          if (other !== undefined && other !== piece)
            found.set(a * mostPlaces + b, { from, to: outline[after] ?? from, start: a, end: b })
          owners.set(a * mostPlaces + b, piece)
        })
      }
    }
  return {
    lines: chained([...found.values()]),
    has: (from, to) => {
      if (found.size === 0) return false
      const [a, b] = [numberOf(from), numberOf(to)]
      return found.has(a * mostPlaces + b) || found.has(b * mostPlaces + a)
    },
  }
}

/**
 * The edges round a piece, chained into lines: edges inside it, shared by two of its regions, are left out, and so are
 * those where a light line parts it from a neighbour.
 */
export const edgesOf = (piece: Piece, light?: LightEdges): Outline[] => {
  const numberOf = numbering()
  const free = new Map<number, Edge>()
  for (const region of piece.regions)
    for (const outline of [region.outline, ...region.holes]) {
      const numbers = outline.map(numberOf)
      outline.forEach((from, at) => {
        const after = (at + 1) % outline.length
        const [a, b] = [numbers[at] ?? 0, numbers[after] ?? 0]
        if (!free.delete(b * mostPlaces + a))
          free.set(a * mostPlaces + b, { from, to: outline[after] ?? from, start: a, end: b })
      })
    }
  return chained([...free.values()].filter(it => !light?.has(it.from, it.to)))
}

/** An edge, with the numbers of its ends. */
type Edge = { readonly from: Point; readonly to: Point; readonly start: number; readonly end: number }

/** More vertices than this no piece has: two numbers then make one that is exact. */
const mostPlaces = 2 ** 26

/** Numbers the places of the grid as they come: neighbours share their vertices to the grid. Asked at every vertex of a cut. */
const numbering = (): ((at: Point) => number) => {
  const columns = new Map<number, Map<number, number>>()
  let next = 0
  return ([x, y]) => {
    const [column, row] = [Math.round(x * 1e4), Math.round(y * 1e4)]
    const rows = columns.get(column) ?? new Map<number, number>()
    columns.set(column, rows)
    const known = rows.get(row) ?? next++
    rows.set(row, known)
    return known
  }
}

/** Closed lines of edges that follow each other; the first point is repeated at the end. */
const chained = (edges: readonly Edge[]): Outline[] => {
  const next = new Map<number, Edge[]>()
  for (const edge of edges) {
    const there = next.get(edge.start)
    if (there) there.push(edge)
    else next.set(edge.start, [edge])
  }
  const lines: Point[][] = []
  for (const { from, start } of edges) {
    const line: Point[] = [from]
    for (let at = start; ;) {
      const edge = next.get(at)?.pop()
      if (edge === undefined) break
      at = edge.end
      line.push(edge.to)
    }
    if (line.length > 1) lines.push(line)
  }
  return lines
}
