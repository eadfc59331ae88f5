import { areaOf, type Outline, type Point } from '../../../geometry'
import { bandOf, borderStretches, crossingKey } from './border'
import type { Lattice } from './lattice'
import type { Isotherm } from './trace'

/**
 * All places of one band of temperature: from one edge of a band up to the next. Outlines counter-clockwise, holes
 * clockwise; the bands of a field tile its domain and share the points of their edges.
 */
export type Band = {
  /** the number of band edges at or below it: 0 is colder than all */
  readonly band: number
  readonly pieces: readonly { readonly outline: Outline; readonly holes: readonly Outline[] }[]
}

/** The bands between levels (ascending), out of their lines and the border of the domain. */
export const bandsBetween = (
  lattice: Lattice,
  edges_C: readonly number[],
  lines: readonly Isotherm[],
): readonly Band[] => {
  const rings: Outline[][] = Array.from({ length: edges_C.length + 1 }, () => [])
  const starts = new Map<number, Isotherm>()
  const ends = new Map<number, Isotherm>()
  for (const line of lines) {
    const edge = bandOf(edges_C, line.level_C) - 1
    if (edges_C[edge] !== line.level_C) continue
    if (line.closed) {
      const ring = line.points.slice(0, -1)
      rings[edge + 1]?.push(ring)
      rings[edge]?.push(ring.toReversed())
    } else {
      starts.set(crossingKey(lattice, line.ends[0], edge), line)
      ends.set(crossingKey(lattice, line.ends[1], edge), line)
    }
  }
  const stretches = borderStretches(lattice, edges_C)
  const byStart = new Map(stretches.flatMap(it => (it.from ? [[it.from.key, it] as const] : [])))
  const taken = new Set<(typeof stretches)[number]>()
  for (const first of stretches) {
    if (taken.has(first)) continue
    const ring: Point[] = []
    for (let at: typeof first | undefined = first; at && !taken.has(at);) {
      taken.add(at)
      ring.push(...(at.to ? at.points.slice(0, -1) : at.points))
      if (!at.to) break
      // Up into the next band: back along its edge, the colder side at the left. Down: along it, the warmer side.
      const line: Isotherm | undefined = (at.to.rises ? ends : starts).get(at.to.key)
      if (!line) throw new Error(`no line begins at a border of band ${at.band}`)
      const points: readonly Point[] = at.to.rises ? line.points.toReversed() : line.points
      ring.push(...points.slice(0, -1))
      const edge: number = at.to.rises ? at.band : at.band - 1
      at = byStart.get(crossingKey(lattice, line.ends[at.to.rises ? 0 : 1], edge))
    }
    rings[first.band]?.push(ring)
  }
  return rings.flatMap((of, band) => (of.length > 0 ? [{ band, pieces: piecesOf(of) }] : []))
}

/** Rings as outlines with the holes that lie in them. Rings that enclose nothing are dropped. */
const piecesOf = (rings: readonly Outline[]): Band['pieces'] => {
  const sized = rings.map(ring => ({ ring, area: areaOf(ring) }))
  const outer = sized.filter(it => it.area > 0).toSorted((a, b) => a.area - b.area)
  const holes = new Map<Outline, Outline[]>()
  for (const { ring, area } of sized) {
    if (!(area < 0)) continue
    // The smallest outline that it lies in; one point of it decides, as rings do not cross.
    const around = outer.find(it => it.area > -area && ring.some(at => isInside(it.ring, at)))
    if (around) holes.set(around.ring, [...(holes.get(around.ring) ?? []), ring])
  }
  return outer.map(({ ring }) => ({ outline: ring, holes: holes.get(ring) ?? [] }))
}

const isInside = (ring: Outline, [x, y]: Point): boolean => {
  let inside = false
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [xi, yi] = ring[i]!
    const [xj, yj] = ring[j]!
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside
  }
  return inside
}
