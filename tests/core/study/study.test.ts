import { describe, expect, it } from 'vitest'
import { applyEdits, materialOf, openingOf, zonesOf } from '../../../core/detail'
import { lowestSurfaces, solveCase } from '../../../core/heat'
import { practiceOf } from '../../../core/practice'
import { type Finding, type NotApplicable, check, findingKey, needsHeat } from '../../../core/rules'
import {
  beingSolved,
  coldestOf,
  heatReport,
  remediesOf,
  surenessOf,
  usualPositions,
  variantsOf,
  verdictsOf,
  withHeat,
} from '../../../core/study'
import { specified } from '../../../core/units'
import { climateOf, physicsDesk, solveZone, zoneCase } from '../../../core/vapour'
import { aSample } from '../../given/a-sample'
import { aWalledProject } from '../../given/a-walled-project'

describe('what moves the coldest place most', () => {
  const { project, place } = aSample('facing-leaf')
  const found = surenessOf(project, place)
  if (!found.ok) throw new Error(JSON.stringify(found.problems))
  const { sensitivities, coldest_C, mesh_K, assumed_K } = found.value

  /** The coldest place of a change, solved from nothing. */
  const cold = (it: ReturnType<typeof zoneCase>): number => {
    const solved = it.ok ? solveCase(it.value.turned.case) : it
    if (!it.ok || !solved.ok) throw new Error('cannot be solved')
    return coldestOf(lowestSurfaces(it.value.turned, solved.value, climateOf(it.value.conditions)))?.temperature_C ?? NaN
  } // prettier-ignore

  it('is said largest first, and agrees with solutions from nothing', () => {
    const sizes = sensitivities.map(it => Math.abs(it.change_K))
    expect(sizes).toEqual(sizes.toSorted((a, b) => b - a))
    const at = { field: 'opening.position', part: place.opening }
    const moved = [-5, 5].map(by => {
      const done = applyEdits(project, [{ kind: 'state', at, to: specified(openingOf(project, place.opening).position_mm.value + by) }])
      if (!done.ok) throw new Error(JSON.stringify(done.problems))
      return cold(zoneCase(done.value, place, 'surface-humidity'))
    })
    const position = sensitivities.find(it => 'field' in it.of && it.of.field === at.field)
    expect(position?.change_K).toBeGreaterThan(0.5)
    expect(Math.abs((position?.change_K ?? NaN) - ((moved[1] ?? 0) - (moved[0] ?? 0)))).toBeLessThan(0.03)
  }) // prettier-ignore

  it('holds conductivities too', () => {
    const brick = sensitivities.find(it => 'material' in it.of && it.of.material.includes('brick'))
    const id = brick && 'material' in brick.of ? brick.of.material : ''
    const scaled = (times: number) =>
      cold(
        zoneCase(project, place, 'surface-humidity', (of, part) => {
          const usual = materialOf(project, of, part)
          return usual && of === id ? { ...usual, lambda_W_mK: times * usual.lambda_W_mK } : usual
        }),
      )
    expect(Math.abs((brick?.change_K ?? NaN) - (scaled(1.05) - scaled(0.95)))).toBeLessThan(0.03)
  })

  it('keeps the errors of mesh and of inputs apart', () => {
    expect(coldest_C).toBeCloseTo(cold(zoneCase(project, place, 'surface-humidity')), 2)
    expect(mesh_K).toBeLessThan(0.05)
    const squares = sensitivities.filter(it => it.basis === 'assumed').map(it => it.change_K ** 2)
    expect(assumed_K).toBeCloseTo(Math.sqrt(squares.reduce((sum, it) => sum + it, 0)), 12)
    expect(assumed_K).toBeGreaterThan(mesh_K)
  })
})

describe('verdicts that a worker sends', () => {
  const { project } = aSample('guard-in-aerated-concrete')
  const practice = practiceOf(project.practice)
  const whole = check(project, practice, physicsDesk())
  const told = heatReport(project)

  it('are plain values of the rules on heat and vapour', () => {
    expect(JSON.parse(JSON.stringify(told))).toEqual(told)
    expect(new Set(told.findings.map(it => it.rule))).toEqual(new Set(needsHeat))
  })

  it('make a check without heat the same as one with it', () => {
    const found = withHeat(check(project, practice, beingSolved), told)
    const plain = (all: readonly (Finding | NotApplicable)[]) => all.map(it => ({ ...it, remedies: [] })).map(it => JSON.stringify(it)).toSorted()
    expect(found.findings.map(findingKey)).toEqual(whole.findings.map(findingKey))
    expect(plain(found.findings)).toEqual(plain(whole.findings))
    expect(plain(found.notApplicable)).toEqual(plain(whole.notApplicable))
  }) // prettier-ignore

  it('leave a place that is new unknown, and one that is gone out', () => {
    const place = zonesOf(project).find(it => it.side === 'sill')
    if (!place) throw new Error('an opening has a sill')
    const split = applyEdits(project, [{ kind: 'split-zone', zone: place.zone.id, at_mm: 300 }])
    if (!split.ok) throw new Error(JSON.stringify(split.problems))
    const found = withHeat(check(split.value, practice, beingSolved), told)
    const heat = found.findings.filter(it => it.rule === 'surface-criterion' && it.where.side === 'sill')
    expect(heat).toHaveLength(2)
    expect(heat.filter(it => it.verdict === 'unknown')).toHaveLength(1)
    expect(withHeat({ findings: [], notApplicable: [] }, told)).toEqual({ findings: [], notApplicable: [] })
  })

  it('have the remedies of a check with heat, sought one finding at a time', () => {
    const cold = whole.findings.find(it => it.rule === 'surface-criterion' && it.where.side === 'sill')
    if (cold?.verdict !== 'not-met') throw new Error('the sill of this sample is cold')
    const remedies = remediesOf(project, findingKey(cold))
    expect(remedies).toEqual(cold.remedies)
    expect(remedies.length).toBeGreaterThan(0)
    expect(remediesOf(project, 'no such finding')).toEqual([])
  })
})

describe('places of the frame beside each other', () => {
  const { project, place } = aSample('bead-in-brick')
  const found = variantsOf(project, place)
  if (!found.ok) throw new Error(JSON.stringify(found.problems))

  it('are the present one and others, at most four', () => {
    expect(found.value.map(it => it.position_mm)).toEqual(usualPositions(project, place))
    expect(found.value.filter(it => it.isPresent)).toHaveLength(1)
    expect(found.value.length).toBeLessThanOrEqual(4)
    expect(variantsOf(project, place, [0, 20, 40, 60, 80]).ok).toBe(false)
  })

  it('have the Psi and the coldest place of a solution from nothing', () => {
    for (const it of found.value) {
      const [loss, humid] = (['heat-loss', 'surface-humidity'] as const).map(purpose => solveZone(it.project, place, { purpose }))
      if (!loss?.ok || !humid?.ok) throw new Error('cannot be solved')
      expect(Math.abs((it.psi?.psi_W_mK ?? NaN) - (loss.value.solved.heat.psi?.psi_W_mK ?? NaN))).toBeLessThan(1e-3)
      const alone = coldestOf(humid.value.solved.heat.lowest)
      expect(it.coldest?.of).toBe(alone?.of)
      expect(Math.abs((it.coldest?.temperature_C ?? NaN) - (alone?.temperature_C ?? NaN))).toBeLessThan(0.05)
    }
  }) // prettier-ignore

  // From the bearing layer outward the joint loses less and less. Its corner is warmest where the room-side face of the
  // frame still stands within the bearing layer, which brings it heat; on insulation before that layer nothing does.
  it('are warmest at the outer edge of the bearing layer, though the loss falls further out', () => {
    const project = aWalledProject('insulated-masonry')
    const place = zonesOf(project).find(it => it.side === 'left')
    if (!place) throw new Error('there is no left')
    const found = variantsOf(project, place, [60, -20, -80])
    if (!found.ok) throw new Error(JSON.stringify(found.problems))
    const [behind, edge, before] = found.value.map(it => ({ psi: it.psi?.psi_W_mK ?? NaN, C: it.coldest?.temperature_C ?? NaN, at: it.coldest?.at_mm[1] ?? NaN })) // prettier-ignore
    if (!behind || !edge || !before) throw new Error('three places')
    expect(behind.psi).toBeGreaterThan(edge.psi)
    expect(edge.psi).toBeGreaterThan(before.psi)
    expect(edge.C).toBeGreaterThan(behind.C)
    expect(edge.C).toBeGreaterThan(before.C)
    expect(edge.at).toBeGreaterThan(0)
    expect(before.at).toBeLessThan(0)
  })

  it('stay what they are when the next is solved', () => {
    const again = variantsOf(project, place, [found.value[0]?.position_mm ?? 0])
    if (!again.ok) throw new Error(JSON.stringify(again.problems))
    expect(again.value[0]?.flow_W_m).toBeCloseTo(found.value[0]?.flow_W_m ?? NaN, 9)
    expect([...(again.value[0]?.solution.mesh.y ?? [])].some((y, v) => y !== found.value[1]?.solution.mesh.y[v])).toBe(true)
  }) // prettier-ignore

  it('are judged by every rule of their opening', () => {
    const [first] = found.value
    if (!first) throw new Error('there are none')
    const report = verdictsOf(first, place, physicsDesk())
    expect(report.findings.some(it => it.rule === 'surface-criterion')).toBe(true)
    expect(report.findings.every(it => it.where.opening === place.opening)).toBe(true)
  })
})
