import type { Project, ZonePlace } from '../../detail'
import { type LowestSurface, type Solution, lowestSurfaces, solveCase } from '../../heat'
import { type Result, ok } from '../../units'
import { type TwoPeriods, twoPeriodBalance } from '../path/two-period'
import { unfavourable } from '../path/path'
import { pathThrough } from '../section/path-through'
import { type ZoneCase, climateOf, zoneCase } from './solve-zone'

/** What rules ask of heat and vapour in a zone: the coldest place of each inside surface, and the water of a winter. */
export type ZonePhysics = {
  readonly lowest: readonly LowestSurface[]
  /** along the middle of the joint by the two periods, at the least favourable ends of all ranges */
  readonly water: Result<Pick<TwoPeriods, 'gathers_kg_m2' | 'dries_kg_m2' | 'sum'>>
}

/** Whom rules ask for heat and vapour of a zone; nothing while that is still being worked out. */
export type PhysicsOf = (project: Project, place: ZonePlace) => Result<ZonePhysics> | undefined

/** The same from a solution that is there already, found with the films for surface humidity. */
export const physicsOf = (
  it: Pick<ZoneCase, 'turned' | 'conditions' | 'vapourView'>,
  solution: Solution,
): ZonePhysics => ({
  lowest: lowestSurfaces(it.turned, solution, climateOf(it.conditions)),
  water: waterIn(it),
})

/** A temperature within a twentieth of a kelvin is enough to judge by; it takes half the time of the usual accuracy. Ours. */
const accuracy = { share: 1e-3, rounds: 6 }

/** Heat and vapour of a zone, solved for rules. Problems: materials that are not known, sections that cannot be solved. */
export const zonePhysics = (project: Project, place: ZonePlace): Result<ZonePhysics> => {
  const it = zoneCase(project, place, 'surface-humidity')
  if (!it.ok) return it
  const solution = solveCase(it.value.turned.case, accuracy)
  return solution.ok ? ok(physicsOf(it.value, solution.value)) : solution
}

const waterIn = ({ vapourView }: Pick<ZoneCase, 'vapourView'>): ZonePhysics['water'] => {
  const path = pathThrough(vapourView, vapourView.jointMiddle_mm)
  if (!path.ok) return path
  const found = unfavourable(path.value).map(taken => twoPeriodBalance(path.value, taken))
  const worst = found.reduce((a, b) => (b.gathers_kg_m2 > a.gathers_kg_m2 ? b : a))
  return ok(worst)
}
