import type { Outline, Point } from '../../geometry'
import type { VapourField } from './vapour-field'

/**
 * Outlines of the zone where water gathers: of each triangle what lies nearest to a wet corner, grown together. Outer
 * outlines run counter-clockwise, those of dry islands clockwise.
 */
export const wetZone = ({ domain, isWet, x_mm, y_mm }: VapourField): readonly Outline[] => {
  const { corner, triangles } = domain
  const edges = new Map<string, Edge>()
  const put = (from: Place, to: Place): void => {
    if (!edges.delete(`${to.id}>${from.id}`)) edges.set(`${from.id}>${to.id}`, { from, to })
  }
  const at = (...nodes: readonly number[]): Place => ({
    id: nodes.toSorted((a, b) => a - b).join(' '),
    point: [mean(nodes, x_mm), mean(nodes, y_mm)],
  })
  for (let t = 0; t < triangles; t++) {
    const nodes = [corner[3 * t]!, corner[3 * t + 1]!, corner[3 * t + 2]!] as const
    const middle = { ...at(...nodes), id: `triangle ${t}` }
    nodes.forEach((own, i) => {
      if (!isWet[own]) return
      const [next, last] = [nodes[(i + 1) % 3]!, nodes[(i + 2) % 3]!]
      const ring = [at(own), at(own, next), middle, at(own, last)]
      ring.forEach((from, k) => put(from, ring[(k + 1) % 4] ?? from))
    })
  }
  return rings([...edges.values()])
}

type Place = { readonly id: string; readonly point: Point }
type Edge = { readonly from: Place; readonly to: Place }

const mean = (nodes: readonly number[], of: Float64Array): number =>
  nodes.reduce((sum, n) => sum + of[n]!, 0) / nodes.length

/** Edges one behind the other, as closed outlines. */
const rings = (edges: readonly Edge[]): readonly Outline[] => {
  const from = new Map<string, Edge[]>()
  for (const it of edges) from.set(it.from.id, [...(from.get(it.from.id) ?? []), it])
  const found: Outline[] = []
  for (const first of edges) {
    const ring: Point[] = []
    for (let edge = taken(from, first.from.id); edge; edge = taken(from, edge.to.id))
      ring.push(edge.from.point)
    if (ring.length > 2) found.push(ring)
  }
  return found
}

const taken = (scratch: Map<string, Edge[]>, id: string): Edge | undefined => scratch.get(id)?.pop()
