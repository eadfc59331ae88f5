import { conductanceBounds } from '../bounds'
import { fixedFilm_W_m2K } from '../case'
import { flows_W_m, lowestSpots, temperatureAt } from '../results'
import type { Solution, Spent } from '../solution'

/** The object that the command line prints for a solved section. Flows are positive into the section. */
export type PlainResult = {
  readonly heatFlow_W_m: Readonly<Record<string, number>>
  readonly probes_C: Readonly<Record<string, number | null>>
  readonly lowestSurface_C: Readonly<
    Record<string, { readonly temperature_C: number; readonly at_mm: readonly [number, number] }>
  >
  readonly unknowns: number
  /** null where the flow itself is infinite: fixed temperatures that differ meet in a corner. */
  readonly errorEstimate_percent: number | null
  readonly errorKind: 'one-sided' | 'two-sided'
  readonly ms: Spent
}

/** Puts a solution (by a clock of milliseconds) into the plain object. Surfaces of one name are one: their flows add up, the lowest counts. */
export const plainResult = (it: Solution): PlainResult => {
  const flows: Record<string, number> = {}
  flows_W_m(it).forEach((flow, s) => {
    const name = it.case.surfaces[s]?.name ?? ''
    flows[name] = (flows[name] ?? 0) + flow
  })
  const lowest: Record<string, { temperature_C: number; at_mm: readonly [number, number] }> = {}
  lowestSpots(it).forEach((spot, s) => {
    const name = it.case.surfaces[s]?.name ?? ''
    const known = lowest[name]
    if (spot && (!known || spot.temperature_C < known.temperature_C)) lowest[name] = spot
  })
  return {
    heatFlow_W_m: flows,
    probes_C: Object.fromEntries(
      Object.entries(it.case.probes).map(([name, at]) => [name, temperatureAt(it, at) ?? null]),
    ),
    lowestSurface_C: lowest,
    unknowns: it.mesh.vertices + it.mesh.edges,
    ...errorOf(it),
    ms: it.spent,
  }
}

/**
 * Where films are fixed temperatures on one arc each, the distance of the bounds; else the estimate, which is one-sided:
 * the true flow is smaller.
 */
const errorOf = (it: Solution): Pick<PlainResult, 'errorEstimate_percent' | 'errorKind'> => {
  const isFixed = it.case.surfaces.every(surface => surface.h_W_m2K >= fixedFilm_W_m2K)
  const bounds = isFixed && it.unsettled_mm.length === 0 ? conductanceBounds(it.case) : undefined
  if (bounds?.ok) {
    const { least_W_mK, most_W_mK } = bounds.value
    return { errorEstimate_percent: (100 * (most_W_mK - least_W_mK)) / least_W_mK, errorKind: 'two-sided' }
  }
  return {
    errorEstimate_percent: Number.isFinite(it.errorShare) ? 100 * it.errorShare : null,
    errorKind: 'one-sided',
  }
}
