import { describe, expect, it } from 'vitest'
import { type ZonePlace, frameOf, jointOf, materialOf, samples, zonesOf } from '../../../core/detail'
import {
  type Purpose,
  flows_W_m,
  passedCases,
  refinementOf,
  sectionCase,
  solveCase,
  solveSection,
  undisturbedWall,
  usualClimate,
  wallCoupling_W_mK,
} from '../../../core/heat'
import { cutSection } from '../../../core/section'
import { aHeatCase } from '../../given/a-heat-case'
import { referenceCases } from '../../reference/all'

type Given = { readonly project: (typeof samples)[number]['project']; readonly place: ZonePlace }

const viewOf = ({ project, place }: Given, purpose: Purpose = 'heat-loss') => {
  const frame = frameOf(project, place.opening).id
  return {
    climate: usualClimate,
    purpose,
    materialOf: (id: string) => materialOf(project, id),
    isElement: (part: string) => part === frame || part.startsWith(`${frame}/`),
  }
}

const cut = ({ project, place }: Given) =>
  cutSection(project, place, { state: 'planned', width_mm: jointOf(project, place.zone).planned_mm.value })

const all = samples.flatMap(({ file, project }) =>
  zonesOf(project).map(place => [`${file}, ${place.side}`, { project, place }] as const),
)

const hasGround = ({ project, place }: Given): boolean =>
  place.side === 'sill' && project.openings[place.opening]?.threshold !== undefined

describe('every sample', () => {
  it.each(all)('%s balances, and its Psi can be worked again from its terms', (_, given) => {
    const solved = solveSection(cut(given), viewOf(given))
    if (!solved.ok) throw new Error(JSON.stringify(solved.problems))
    const { heat } = solved.value
    expect(heat.flow_W_m.inside + heat.flow_W_m.outside + heat.flow_W_m.ground).toBeCloseTo(0, 8)
    const { psi } = heat
    if (hasGround(given)) {
      expect(heat.flow_W_m.ground).not.toBe(0)
      expect([psi, heat.coupling_W_mK]).toEqual([undefined, undefined])
      return
    }
    if (!psi) throw new Error('there is no ground, so there is a Psi')
    const resistance = psi.wall.layers.reduce(
      (sum, it) => sum + it.thickness_mm / 1000 / it.lambda_W_mK,
      0.04 + 0.13,
    )
    const worked =
      (heat.coupling_W_mK ?? NaN) -
      psi.wall.length_mm / 1000 / resistance -
      (psi.element.u_W_m2K * psi.element.length_mm) / 1000
    expect(psi.psi_W_mK).toBeCloseTo(worked, 12)
    expect(psi.psi_W_mK).toBeGreaterThan(0)
    expect(heat.passed).toBe(passedCases)
  })

  it.each(all)('%s meets the refinement criterion', (_, given) => {
    const turned = sectionCase(cut(given), viewOf(given))
    const solution = turned.ok ? solveCase(turned.value.case) : turned
    if (!solution.ok) throw new Error(JSON.stringify(solution.problems))
    const refinement = refinementOf(solution.value)
    expect(refinement.difference_percent).toBeLessThan(0.1)
    expect(refinement.imbalance).toBeLessThan(1e-4)
  })

  it.each(all)('%s is coldest at reveal, frame and glass as told, and colder for mould', (_, given) => {
    const lowest = (purpose: Purpose) => {
      const solved = solveSection(cut(given), viewOf(given, purpose))
      if (!solved.ok) throw new Error(JSON.stringify(solved.problems))
      return new Map(solved.value.heat.lowest.map(it => [it.of, it]))
    }
    const [loss, mould] = [lowest('heat-loss'), lowest('surface-humidity')]
    const beside = loss.has('reveal') ? 'reveal' : hasGround(given) ? 'floor' : 'sill'
    for (const of of [beside, 'frame', 'glass'] as const) {
      const [a, b] = [loss.get(of), mould.get(of)]
      if (!a || !b) throw new Error(`no ${of}`)
      expect(a.fRsi).toBeCloseTo((a.temperature_C + 5) / 25, 12)
      expect(b.temperature_C).toBeLessThan(a.temperature_C + 0.01)
    }
    expect(mould.get(beside)?.temperature_C).toBeLessThan((loss.get(beside)?.temperature_C ?? 0) - 0.2)
  })
})

describe('Psi of the worked example', () => {
  it('is 0.06013 W/(mK) within 0.0003', () => {
    const flow = (name: string) => {
      const solved = solveCase(aHeatCase(name))
      if (!solved.ok) throw new Error(JSON.stringify(solved.problems))
      const inside = solved.value.case.surfaces.findIndex(it => it.name === 'int')
      return (flows_W_m(solved.value)[inside] ?? NaN) / 25
    }
    const whole = aHeatCase('jamb')
    const wall = undisturbedWall({ case: whole, parts: whole.bodies.map(it => it.name) })
    expect(wall.layers.map(it => it.part)).toEqual(['render_out', 'eps', 'masonry', 'plaster_in'])
    expect(wall.u_W_m2K).toBeCloseTo(0.181411, 6)
    const psi_W_mK = flow('jamb') - flow('jamb-window') - wallCoupling_W_mK(wall)
    expect(Math.abs(psi_W_mK - 0.06013)).toBeLessThan(3e-4)
  })
})

describe('the cases that a build has passed', () => {
  it('are those that the runner runs', () => {
    const heat = referenceCases.filter(it => it.id.startsWith('heat/')).map(it => it.id.slice('heat/'.length))
    expect([...passedCases].toSorted()).toEqual(heat.toSorted())
  })
})
