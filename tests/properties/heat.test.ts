import { describe, expect, it } from 'vitest'
import { flows_W_m } from '../../core/heat'
import { randomHeatSection } from '../given/heat-section'
import { randomFrom } from '../given/random'
import { type Told, agree, isTiling, mirroredAndTurned, solved, staysBetween, told } from './heat-laws'

/** Sections per law: each law is tried on all 2,000 in four runs that share the work. */
const runs = [0, 1, 2, 3].map(run => Array.from({ length: 500 }, (_, i) => run * 500 + i + 1))

/** What a seed's section gives as it is, solved once for all laws. */
const asItIs = new Map<number, Told>()
const toldBy = (seed: number): Told => {
  const known = asItIs.get(seed) ?? told(solved(randomHeatSection(seed)))
  asItIs.set(seed, known)
  return known
}

describe.each(runs.map(seeds => [`seeds ${seeds[0]} to ${seeds.at(-1)}`, seeds] as const))(
  '%s',
  (_, seeds) => {
    it('mesh without a gap, balance, and stay between the temperatures outside', () => {
      const broken: string[] = []
      for (const seed of seeds) {
        const solution = solved(randomHeatSection(seed))
        asItIs.set(seed, told(solution))
        if (!isTiling(solution)) broken.push(`${seed} does not tile`)
        const flows = flows_W_m(solution)
        const amount = flows.reduce((sum, flow) => sum + Math.abs(flow), 0)
        const rest = Math.abs(flows.reduce((sum, flow) => sum + flow, 0))
        // A fixed temperature is a film of 1e9: the last digit of a temperature is then some 1e-6 W/m of flow.
        const isFixed = solution.case.surfaces.some(surface => surface.h_W_m2K >= 1e8)
        if (rest > (isFixed ? 1e-4 * amount + 1e-7 : 1e-9 * amount))
          broken.push(`${seed} loses ${rest} of ${amount}`)
        if (!staysBetween(solution)) broken.push(`${seed} leaves the temperatures outside`)
      }
      expect(broken).toEqual([])
    })

    it('do not ask in which order the parts come', () => {
      const broken: string[] = []
      for (const seed of seeds) {
        const it = randomHeatSection(seed)
        const shuffled = { ...it, bodies: it.bodies.toReversed() }
        const [a, b] = [toldBy(seed), told(solved(shuffled))]
        if (Math.abs(a.inflow - b.inflow) > 1e-6 * Math.abs(a.inflow) || a.vertices !== b.vertices)
          broken.push(`${seed}: ${a.inflow} is ${b.inflow}`)
      }
      expect(broken).toEqual([])
    })

    it('are the same mirrored and turned, within the error that they tell', () => {
      const broken: string[] = []
      let unsettled = 0
      for (const seed of seeds) {
        const a = toldBy(seed)
        if (a.errorShare === Infinity) {
          unsettled++
          continue
        }
        const b = told(solved(mirroredAndTurned(randomHeatSection(seed), seed)))
        if (!agree(a, b))
          broken.push(`${seed}: ${a.inflow} is ${b.inflow}, told ${a.errorShare} ${b.errorShare}`)
      }
      expect(broken).toEqual([])
      expect(unsettled).toBeLessThan(0.35 * seeds.length)
    })

    it('pass no less heat when a body conducts more', () => {
      const broken: string[] = []
      for (const seed of seeds) {
        const a = toldBy(seed)
        if (a.errorShare === Infinity) continue
        const it = randomHeatSection(seed)
        const random = randomFrom(seed + 1_000_000)
        const which = random.whole(0, it.bodies.length - 1)
        const factor = random.between(1.2, 3)
        const better = {
          ...it,
          bodies: it.bodies.map((body, b) =>
            b === which ? { ...body, lambda_W_mK: factor * body.lambda_W_mK } : body,
          ),
        }
        const b = told(solved(better))
        if (b.errorShare === Infinity) continue
        if (b.inflow < a.inflow * (1 - a.errorShare - 1e-6))
          broken.push(`${seed}: ${a.inflow} falls to ${b.inflow}`)
      }
      expect(broken).toEqual([])
    })
  },
)
