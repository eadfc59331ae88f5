import type { Mesh } from '../../core/heat'

/** A strip of right triangles between the given places in x, 10 mm high; each column a body as told, its two ends outlines of their own. */
export const aStripMesh = (x_mm: readonly number[], bodyOf: (column: number) => number): Mesh => {
  const columns = x_mm.length - 1
  const vertices = 2 * x_mm.length
  const place = (column: number, row: number) => 2 * column + row
  const edges: [from: number, to: number, segment: number][] = []
  const edge = new Map<string, number>()
  const edgeAt = (a: number, b: number, segment: number): number => {
    const key = a < b ? `${a} ${b}` : `${b} ${a}`
    const known = edge.get(key)
    if (known !== undefined) return known
    edges.push([a, b, segment])
    edge.set(key, edges.length - 1)
    return edges.length - 1
  }
  const corner: number[] = []
  const edgeOf: number[] = []
  const body: number[] = []
  const triangle = (a: number, b: number, c: number, of: number) => {
    corner.push(a, b, c)
    // Upright edges are the outlines of the bodies, numbered by their column.
    const side = (p: number, q: number) => edgeAt(p, q, p >> 1 === q >> 1 ? p >> 1 : -1)
    edgeOf.push(side(b, c), side(c, a), side(a, b))
    body.push(of)
  }
  for (let i = 0; i < columns; i++) {
    const [a, b, c, d] = [place(i, 0), place(i + 1, 0), place(i + 1, 1), place(i, 1)]
    triangle(a, b, c, bodyOf(i))
    triangle(a, c, d, bodyOf(i))
  }
  return {
    vertices,
    triangles: 2 * columns,
    edges: edges.length,
    x: Float64Array.from({ length: vertices }, (_, v) => x_mm[v >> 1] ?? 0),
    y: Float64Array.from({ length: vertices }, (_, v) => 10 * (v & 1)),
    corner: Int32Array.from(corner),
    edgeOf: Int32Array.from(edgeOf),
    body: Int32Array.from(body),
    edgeFrom: Int32Array.from(edges, it => it[0]),
    edgeTo: Int32Array.from(edges, it => it[1]),
    segmentOf: Int32Array.from(edges, it => it[2]),
    inSegment: new Int32Array(vertices).fill(-1),
    origin: new Int32Array(vertices).fill(-1),
  }
}
