import type { Id } from '../../geometry'
import type { Face, Section } from '../../section'
import { type Result, ok } from '../../units'
import { passedCases } from '../passed'
import { type Spot, flows_W_m, lowestSpots } from '../results'
import { type Accuracy, type Solution, solveCase, usualAccuracy } from '../solution'
import { elementAlone } from './element-alone'
import { type SectionCase, type SectionView, sectionCase } from './section-case'
import { type UndisturbedWall, undisturbedWall, wallCoupling_W_mK } from './wall'

/** The coldest place of an inside surface and what it is on. `fRsi` = (θ − θe) / (θi − θe). */
export type LowestSurface = Spot & { readonly of: Face['of']; readonly fRsi: number }

/** Psi = L2D − U·l of the wall − L2D of the element alone: every term, so that it can be worked again by hand. */
export type Psi = {
  readonly psi_W_mK: number
  readonly wall: UndisturbedWall
  readonly element: { readonly coupling_W_mK: number; readonly length_mm: number; readonly u_W_m2K: number }
}

/** All that heat says of a section. */
export type SectionHeat = {
  readonly flow_W_m: Readonly<Record<'inside' | 'outside' | 'ground', number>>
  /** Heat flow from inside per kelvin; absent where inside and outside are equally warm, or where the ground takes part. */
  readonly coupling_W_mK?: number
  readonly psi?: Psi
  readonly lowest: readonly LowestSurface[]
  readonly unknowns: number
  readonly errorEstimate_percent: number
  readonly errorKind: 'one-sided'
  /** The published cases that this build is held to, and passed. */
  readonly passed: readonly string[]
}

/** A section with its heat: what it was turned into, the solution, and what follows from it. */
export type SolvedSection = {
  readonly turned: SectionCase
  readonly solution: Solution
  readonly heat: SectionHeat
}

/** Solves a section. `isElement` tells frame and glazing from wall and joint. Problems: as `sectionCase` and `solveCase`. */
export const solveSection = (
  section: Section,
  view: SectionView & { readonly isElement: (part: Id) => boolean; readonly accuracy?: Accuracy },
): Result<SolvedSection> => {
  const accuracy = view.accuracy ?? usualAccuracy
  const turned = sectionCase(section, view)
  if (!turned.ok) return turned
  const solution = solveCase(turned.value.case, accuracy)
  if (!solution.ok) return solution
  const alone = solveCase(elementAlone(turned.value, view.isElement, view), accuracy)
  if (!alone.ok) return alone
  const psi = psiOf(turned.value, solution.value, alone.value, view)
  return ok({
    turned: turned.value,
    solution: solution.value,
    heat: sectionHeat(turned.value, solution.value, view, psi),
  })
}

/** What follows from a solution alone: while something moves, Psi is left for when it settles. */
export const sectionHeat = (
  turned: SectionCase,
  solution: Solution,
  { climate }: Pick<SectionView, 'climate'>,
  psi?: Psi,
): SectionHeat => {
  const flow_W_m = { inside: 0, outside: 0, ground: 0 }
  flows_W_m(solution).forEach((flow, s) => {
    const to = turned.faces[s]?.to
    if (to && to !== 'cut') flow_W_m[to] += flow
  })
  const drop_K = climate.inside_C - climate.outside_C
  const hasGround = turned.faces.some(it => it.to === 'ground')
  const coupling = drop_K !== 0 && !hasGround ? { coupling_W_mK: flow_W_m.inside / drop_K } : {}
  return {
    flow_W_m,
    ...coupling,
    ...(psi ? { psi } : {}),
    lowest: lowestSurfaces(turned, solution, climate),
    unknowns: solution.mesh.vertices + solution.mesh.edges,
    errorEstimate_percent: 100 * solution.errorShare,
    errorKind: 'one-sided',
    passed: passedCases,
  }
}

/** Psi from the section as a whole and its element alone; none where no heat flows or the ground takes part. */
export const psiOf = (
  turned: SectionCase,
  whole: Solution,
  alone: Solution,
  { climate }: Pick<SectionView, 'climate'>,
): Psi | undefined => {
  const drop_K = climate.inside_C - climate.outside_C
  if (drop_K === 0 || turned.faces.some(it => it.to === 'ground')) return undefined
  const wall = undisturbedWall(turned)
  const through = (it: Solution) =>
    flows_W_m(it).reduce((sum, flow, s) => (it.case.surfaces[s]?.name === 'inside' ? sum + flow : sum), 0) /
    drop_K
  const element_W_mK = through(alone)
  const xs = alone.case.bodies.flatMap(body => body.outline.map(([x]) => x))
  const length_mm = Math.max(...xs) - Math.min(...xs)
  return {
    psi_W_mK: through(whole) - wallCoupling_W_mK(wall) - element_W_mK,
    wall,
    element: {
      coupling_W_mK: element_W_mK,
      length_mm,
      u_W_m2K: element_W_mK / wallCoupling_W_mK({ u_W_m2K: 1, length_mm }),
    },
  }
}

/** The coldest place of each kind of inside surface, coldest first. */
export const lowestSurfaces = (
  turned: Pick<SectionCase, 'faces'>,
  solution: Solution,
  climate: SectionView['climate'],
): readonly LowestSurface[] => {
  const found = new Map<Face['of'], LowestSurface>()
  lowestSpots(solution).forEach((spot, s) => {
    const face = turned.faces[s]
    if (!spot || face?.to !== 'inside') return
    const known = found.get(face.of)
    if (known && known.temperature_C <= spot.temperature_C) return
    const fRsi = (spot.temperature_C - climate.outside_C) / (climate.inside_C - climate.outside_C)
    found.set(face.of, { ...spot, of: face.of, fRsi })
  })
  return [...found.values()].toSorted((a, b) => a.temperature_C - b.temperature_C)
}
