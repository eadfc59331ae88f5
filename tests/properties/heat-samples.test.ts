import { describe, expect, it } from 'vitest'
import { jointOf, materialOf, samples, zonesOf } from '../../core/detail'
import { type HeatCase, type Solution, flows_W_m, sectionCase, usualClimate } from '../../core/heat'
import { cutSection } from '../../core/section'
import { agree, isTiling, mirroredAndTurned, solved, staysBetween, told } from './heat-laws'

const cases = samples.flatMap(({ file, project }) =>
  zonesOf(project).map((place): readonly [string, HeatCase] => {
    const width_mm = jointOf(project, place.zone).planned_mm.value
    const turned = sectionCase(cutSection(project, place, { state: 'planned', width_mm }), {
      climate: usualClimate,
      purpose: 'frame',
      materialOf: id => materialOf(project, id),
    })
    if (!turned.ok) throw new Error(JSON.stringify(turned.problems))
    return [`${file}, ${place.side}`, turned.value.case]
  }),
)

/** Flow from the warmer side. */
const inflow = (it: Parameters<typeof flows_W_m>[0]): number =>
  flows_W_m(it).reduce((sum, flow) => sum + Math.max(0, flow), 0)

const toldOf = (it: HeatCase) => toldBy(solved(it))
const toldBy = (solution: Solution) => ({ ...told(solution), inflow: inflow(solution) })

/** Samples share most of their bodies: each zone tries every sixth, the next zone its neighbour. */
const sixth = (index: number) => (_: unknown, b: number) => b % 6 === index % 6

describe.each(cases.map(([name, given], index) => [name, given, index] as const))('%s', (_, given, index) => {
  let known: Solution | undefined
  const asItIs = () => (known ??= solved(given))

  it('is meshed without a gap, balances, and stays between the temperatures outside', () => {
    const solution = asItIs()
    expect(isTiling(solution)).toBe(true)
    expect(staysBetween(solution)).toBe(true)
    expect(Math.abs(flows_W_m(solution).reduce((sum, flow) => sum + flow, 0))).toBeLessThan(
      1e-9 * inflow(solution),
    )
  })

  it('is the same whatever the order of its parts, mirrored and turned', () => {
    const as = toldBy(asItIs())
    const shuffled = toldOf({ ...given, bodies: given.bodies.toReversed() })
    expect(Math.abs(shuffled.inflow / as.inflow - 1)).toBeLessThan(1e-6)
    expect(agree(as, toldOf(mirroredAndTurned(given, 5)))).toBe(true)
  })

  it('passes no less heat when a body conducts more', () => {
    const as = toldBy(asItIs())
    const less = given.bodies.filter(sixth(index)).flatMap(body => {
      const better = given.bodies.map(other =>
        other === body ? { ...other, lambda_W_mK: 1.5 * other.lambda_W_mK } : other,
      )
      return toldOf({ ...given, bodies: better }).inflow < as.inflow * (1 - as.errorShare) ? [body.name] : []
    })
    expect(less).toEqual([])
  })
})
