import type { Id } from '../../geometry'
import type { HeatCase, Stretch, Surface } from '../case'
import type { SectionCase } from './section-case'
import { type Climate, type Purpose, film_W_m2K } from './surface-film'

/**
 * Frame and glazing of a section alone, as Psi wants them: the flank towards the joint and the cut are adiabatic, all of
 * the outer and inner side is free, covered by the wall or not.
 */
export const elementAlone = (
  { case: whole, parts }: SectionCase,
  isElement: (part: Id) => boolean,
  view: { readonly climate: Climate; readonly purpose: Purpose },
): HeatCase => {
  const bodies = whole.bodies.filter((_, b) => isElement(parts[b] ?? ''))
  const rim = rimOf(
    bodies.flatMap(body =>
      [body.outline, ...body.holes].flatMap(ring =>
        ring.map((from, i): Stretch => [from, ring[(i + 1) % ring.length] ?? from]),
      ),
    ),
  )
  const xs = rim.map(([from]) => from[0])
  const [left, right] = [Math.min(...xs), Math.max(...xs)]
  const isEnd = ([a, b]: Stretch) => a[0] === b[0] && (a[0] === left || a[0] === right)
  const sides: Record<'outside' | 'inside', Stretch[]> = { outside: [], inside: [] }
  // Counter-clockwise, the run after the flank (which goes down) is the outer side, the one after the cut the inner.
  const start = rim.findIndex(
    (edge, i) => isEnd(edge) && edge[0][0] === left && !isEnd(rim[(i + 1) % rim.length] ?? edge),
  )
  let side: 'outside' | 'inside' = 'outside'
  for (let i = 1; i <= rim.length; i++) {
    const edge = rim[(start + i) % rim.length]
    if (!edge) continue
    if (isEnd(edge)) side = edge[0][0] === right ? 'inside' : 'outside'
    else sides[side].push(edge)
  }
  const surface = (to: 'outside' | 'inside'): Surface => ({
    name: to,
    h_W_m2K: film_W_m2K({ to, of: 'frame' }, view.purpose, false),
    air_C: to === 'inside' ? view.climate.inside_C : view.climate.outside_C,
    edges: sides[to],
  })
  return {
    name: `${whole.name}, element alone`,
    bodies,
    surfaces: [surface('outside'), surface('inside')],
    foils: [],
    probes: {},
  }
}

/** The outer edge of bodies that share all vertices: the edges that only one of them has, as the longest closed run. */
const rimOf = (edges: readonly Stretch[]): readonly Stretch[] => {
  const key = (a: Stretch[0], b: Stretch[0]) => `${a[0]},${a[1]};${b[0]},${b[1]}`
  const all = new Set(edges.map(([a, b]) => key(a, b)))
  const free = edges.filter(([a, b]) => !all.has(key(b, a)))
  const from = new Map(free.map(edge => [`${edge[0][0]},${edge[0][1]}`, edge] as const))
  let longest: readonly Stretch[] = []
  const seen = new Set<Stretch>()
  for (const first of free) {
    const run: Stretch[] = []
    for (
      let edge: Stretch | undefined = first;
      edge && !seen.has(edge);
      edge = from.get(`${edge[1][0]},${edge[1][1]}`)
    ) {
      seen.add(edge)
      run.push(edge)
    }
    if (run.length > longest.length) longest = run
  }
  return longest
}
