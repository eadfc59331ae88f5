import type { Point } from '../../geometry'
import type { Properties } from '../assemble'
import { fixedFilm_W_m2K } from '../case'
import { squareCorners } from './fixed-triangulation'
import type { OutlineGraph } from './outline-graph'
import { type Triangulation, lastEdge } from './triangulation'

/**
 * From this contrast on, two good conductors that touch in a point only, poor ones between them, have a field like r^μ
 * with μ below 0.13: halving elements gains next to nothing, and estimates say too little. Ours, measured.
 */
const contrast = 100

/**
 * Vertices of the outlines where good conductors touch in a point alone. Outside counts as a poor conductor, a fixed
 * temperature as a perfect one.
 */
export const pointContacts = (
  net: Triangulation,
  graph: OutlineGraph,
  properties: Properties,
): readonly Point[] => {
  const found: Point[] = []
  for (let v = squareCorners; v < net.vertices; v++)
    if (net.onSegment[v] === -2 && touchesInPoint(sectorsAbout(net, graph, properties, v)))
      found.push([net.x[v]!, net.y[v]!])
  return found
}

/** Conductivities round a vertex, in order. */
const sectorsAbout = (
  { twin, edgeOf, body, tag }: Triangulation,
  { surface }: OutlineGraph,
  { lambda_W_mK, film_W_m2K }: Properties,
  v: number,
): readonly number[] => {
  const around: number[] = []
  let e = edgeOf[v]!
  do {
    const s = tag[e]! >= 0 ? surface[tag[e]! >> 1]! : -1
    if (s >= 0 && film_W_m2K[s]! >= fixedFilm_W_m2K) around.push(Infinity)
    const b = body[(e / 3) | 0]!
    around.push(b < 0 ? 0 : lambda_W_mK[b]!)
    e = twin[lastEdge(e)]!
  } while (e !== edgeOf[v])
  // Outside between two fixed surfaces keeps their temperature: the fixed one goes on round the corner.
  const isBetweenFixed = (i: number): boolean => {
    const before = around.slice(0, i).findLast(it => it > 0) ?? around.findLast(it => it > 0)
    const after = around.slice(i).find(it => it > 0) ?? around.find(it => it > 0)
    return before === Infinity && after === Infinity
  }
  return around.map((it, i) => (it === 0 && isBetweenFixed(i) ? Infinity : it))
}

/** Whether some conductivity and better ones come in two runs with poor ones, a hundred times less, between them. */
const touchesInPoint = (around: readonly number[]): boolean =>
  around.some(good => {
    if (good === 0) return false
    const clear = around.filter(it => it >= good || it <= good / contrast).map(it => it >= good)
    return clear.filter((is, i) => is && !clear.at(i - 1)).length > 1
  })
