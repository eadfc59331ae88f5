import { type Result, ok, refused } from '../units'
import { words } from '../words'
import { type HeatCase, type Stretch, fixedFilm_W_m2K } from './case'
import { flows_W_m } from './results'
import { type Accuracy, solveCase, usualAccuracy } from './solution'

/** Two-sided bounds of what a section conducts between two fixed temperatures, per kelvin. */
export type Conductance = { readonly least_W_mK: number; readonly most_W_mK: number }

/**
 * Bounds by duality (Keller 1964): with films replaced by fixed temperatures on one connected arc each, the conductance
 * between the arcs times the one between the two adiabatic arcs, with every resistivity for conductivity, is one. A
 * conforming field overestimates both, so each gives a bound of the other, whatever the mesh.
 * Problems: surfaces that are not two connected arcs with adiabatic ones between them, holes in the domain, foils.
 */
export const conductanceBounds = (it: HeatCase, accuracy: Accuracy = usualAccuracy): Result<Conductance> => {
  const arcs = fourArcs(it)
  if (!arcs) return refused({ at: it.name, say: noArcs })
  const most = conductance(it, [arcs.first, arcs.second], accuracy)
  if (!most.ok) return most
  const turned: HeatCase = {
    ...it,
    bodies: it.bodies.map(body => ({ ...body, lambda_W_mK: 1 / body.lambda_W_mK })),
  }
  const across = conductance(turned, [arcs.between, arcs.beyond], accuracy)
  return across.ok ? ok({ least_W_mK: 1 / across.value, most_W_mK: most.value }) : across
}

const conductance = (it: HeatCase, [hot, cold]: readonly [Arc, Arc], accuracy: Accuracy): Result<number> => {
  const surface = (name: string, air_C: number, edges: Arc) => ({
    name,
    h_W_m2K: 10 * fixedFilm_W_m2K,
    air_C,
    edges,
  })
  const solved = solveCase(
    { ...it, foils: [], probes: {}, surfaces: [surface('hot', 1, hot), surface('cold', 0, cold)] },
    accuracy,
  )
  return solved.ok ? ok(flows_W_m(solved.value)[0] ?? 0) : solved
}

type Arc = readonly Stretch[]

/** The outline as four arcs: one environment, adiabatic, the other environment, adiabatic. */
const fourArcs = (it: HeatCase): { first: Arc; between: Arc; second: Arc; beyond: Arc } | undefined => {
  const rim = outline(it)
  const environments = [...new Set(it.surfaces.map(surface => surface.air_C))]
  if (!rim || environments.length !== 2 || it.foils.length > 0) return undefined
  const airOf = new Map(
    it.surfaces.flatMap(s =>
      s.edges.flatMap(
        ([a, b]) =>
          [
            [key(a, b), s.air_C],
            [key(b, a), s.air_C],
          ] as const,
      ),
    ),
  )
  const air = rim.map(([a, b]) => airOf.get(key(a, b)))
  const starts = air.flatMap((value, i) => (value !== air.at(i - 1) ? [i] : []))
  const runs = starts.map((start, r) => {
    const end = starts[(r + 1) % starts.length] ?? 0
    const edges = start < end ? rim.slice(start, end) : [...rim.slice(start), ...rim.slice(0, end)]
    return { air: air[start], edges }
  })
  const offset = runs.findIndex(run => run.air !== undefined)
  const [first, between, second, beyond] = [0, 1, 2, 3].map(i => runs[(offset + i) % runs.length])
  if (runs.length !== 4 || !first || !between || !second || !beyond) return undefined
  if (between.air !== undefined || beyond.air !== undefined || second.air === undefined) return undefined
  return { first: first.edges, between: between.edges, second: second.edges, beyond: beyond.edges }
}

const key = (a: Stretch[0], b: Stretch[0]): string => `${a[0]},${a[1]};${b[0]},${b[1]}`

/** The outer edge of a domain without holes, in order; undefined when it is no single loop. */
const outline = (it: HeatCase): Arc | undefined => {
  const edges = it.bodies.flatMap(body =>
    [body.outline, ...body.holes].flatMap(ring =>
      ring.map((from, i): Stretch => [from, ring[(i + 1) % ring.length] ?? from]),
    ),
  )
  const all = new Set(edges.map(([a, b]) => key(a, b)))
  const free = edges.filter(([a, b]) => !all.has(key(b, a)))
  const next = new Map(free.map(edge => [String(edge[0]), edge]))
  const loop: Stretch[] = []
  for (let edge = free[0]; edge && loop.length <= free.length; edge = next.get(String(edge[1]))) {
    loop.push(edge)
    if (String(edge[1]) === String(free[0]?.[0])) return loop.length === free.length ? loop : undefined
  }
  return undefined
}

const noArcs = words(
  'bounds need two environments on one connected arc each, no holes and no foils',
  'Schranken brauchen zwei Umgebungen auf je einem zusammenhängenden Bogen, keine Löcher und keine Folien',
)
