import type { Point } from '../../../geometry'
import { crossing, type Lattice } from './lattice'

/**
 * A stretch of the border of the solved domain between two crossings of band edges, the domain at its left. `band` is
 * the number of band edges at or below its temperature. A whole ring that no edge crosses has no ends.
 */
export type BorderStretch = {
  readonly band: number
  readonly points: readonly Point[]
  /** keys of the crossings at its ends, and whether the temperature rises there */
  readonly from?: { readonly key: number }
  readonly to?: { readonly key: number; readonly rises: boolean }
}

/** A crossing of a rung of the border with the band edge of a number. */
export const crossingKey = (lattice: Lattice, rung: number, edge: number): number =>
  edge * lattice.rungs + rung

/** The border in stretches, ring by ring. Corners of outlines are kept, places along straight edges are not. */
export const borderStretches = (lattice: Lattice, edges_C: readonly number[]): readonly BorderStretch[] =>
  ringsOf(lattice).flatMap(ring => stretchesOf(lattice, ring, edges_C))

/** A half edge of the border: its rung, its first and last node, and whether it runs as the rung does. */
type Half = { readonly rung: number; readonly from: number; readonly to: number }

const ringsOf = ({ it: { mesh } }: Lattice): readonly (readonly Half[])[] => {
  const { corner, edgeOf, edgeFrom, vertices } = mesh
  const uses = new Uint8Array(mesh.edges)
  for (let i = 0; i < 3 * mesh.triangles; i++) uses[edgeOf[i]!]!++
  const after = new Map<number, number[]>()
  const all: { e: number; a: number; b: number }[] = []
  for (let i = 0; i < 3 * mesh.triangles; i++) {
    const e = edgeOf[i]!
    if (uses[e] !== 1) continue
    const t3 = i - (i % 3)
    const [a, b] = [corner[t3 + ((i + 1) % 3)]!, corner[t3 + ((i + 2) % 3)]!]
    const at = after.get(a)
    if (at) at.push(all.length)
    else after.set(a, [all.length])
    all.push({ e, a, b })
  }
  const isTaken = new Uint8Array(all.length)
  const rings: Half[][] = []
  for (let start = 0; start < all.length; start++) {
    const ring: Half[] = []
    for (let at = start; at >= 0 && !isTaken[at];) {
      isTaken[at] = 1
      const { e, a, b } = all[at]!
      const isForward = edgeFrom[e] === a
      ring.push({ rung: 2 * e + (isForward ? 0 : 1), from: a, to: vertices + e })
      ring.push({ rung: 2 * e + (isForward ? 1 : 0), from: vertices + e, to: b })
      at = after.get(b)?.find(it => !isTaken[it]) ?? -1
    }
    if (ring.length > 0) rings.push(ring)
  }
  return rings
}

const stretchesOf = (
  lattice: Lattice,
  ring: readonly Half[],
  edges_C: readonly number[],
): readonly BorderStretch[] => {
  const { it, node_C } = lattice
  const { mesh } = it
  const at = { x: 0, y: 0 }
  const stretches: {
    band: number
    points: Point[]
    from?: { key: number }
    to?: NonNullable<BorderStretch['to']>
  }[] = []
  let points: Point[] = []
  let from: { key: number } | undefined
  for (const { rung, from: a, to: b } of ring) {
    const [ta, tb] = [node_C[a]!, node_C[b]!]
    const [bandA, bandB] = [bandOf(edges_C, ta), bandOf(edges_C, tb)]
    const rises = bandB > bandA
    for (let band = bandA; band !== bandB; band += rises ? 1 : -1) {
      const edge = rises ? band : band - 1
      crossing(lattice, rung, edges_C[edge]!, at)
      const key = crossingKey(lattice, rung, edge)
      points.push([at.x, at.y])
      stretches.push({ band, points, ...(from && { from }), to: { key, rises } })
      from = { key }
      points = [[at.x, at.y]]
    }
    if (b < mesh.vertices && mesh.inSegment[b]! < 0) points.push([mesh.x[b]!, mesh.y[b]!])
  }
  const [first] = stretches
  if (!first || !from) return [{ band: bandOf(edges_C, node_C[ring[0]?.from ?? 0]!), points }]
  // The ring began in the middle of its first stretch.
  first.points.unshift(...points)
  first.from = from
  return stretches
}

/** How many band edges lie at or below a temperature. */
export const bandOf = (edges_C: readonly number[], value_C: number): number => {
  let band = 0
  while (band < edges_C.length && edges_C[band]! <= value_C) band++
  return band
}
