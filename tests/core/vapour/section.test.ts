import { describe, expect, it } from 'vitest'
import { applyEdits, type Project, samples, zonesOf } from '../../../core/detail'
import { areaOf } from '../../../core/geometry'
import { planes } from '../../../core/kinds'
import { kindOf } from '../../../core/seals'
import { specified } from '../../../core/units'
import {
  type SolvedZone,
  along,
  pathThrough,
  physicsDesk,
  sectionField,
  sectionVapour,
  wetZone,
  solveZone,
  zoneCase,
  zonePhysics,
} from '../../../core/vapour'
import { aSample } from '../../given/a-sample'

const solved = (file: string, side: 'head' | 'left' | 'sill' = 'left', change?: (project: Project) => Project): SolvedZone => {
  const { project, place } = aSample(file, side)
  const zone = solveZone(change ? change(project) : project, place, { purpose: 'surface-humidity' })
  if (!zone.ok) throw new Error(JSON.stringify(zone.problems))
  return zone.value
} // prettier-ignore

describe('the path through the middle of a joint', () => {
  const all = samples.flatMap(({ file, project }) =>
    zonesOf(project).filter(it => it.side === 'left').map(place => [file, project, place] as const),
  ) // prettier-ignore

  it.each(all)('%s: its seals add up to what they declare', (_, project, place) => {
    const zone = zoneCase(project, place, 'surface-humidity')
    const path = zone.ok ? pathThrough(zone.value.vapourView, zone.value.vapourView.jointMiddle_mm) : zone
    if (!zone.ok || !path.ok) return expect(path).toMatchObject({ ok: false })
    for (const seal of zone.value.vapourView.seals) {
      const own = path.value.layers.filter(it => it.part === seal.id)
      const declared = planes.flatMap(plane => (kindOf(seal).serves(seal).includes(plane) ? (kindOf(seal).sd_m(seal, plane) ?? []) : []))
      if (own.length === 0 || declared.length === 0) continue
      const most = declared.reduce((sum, it) => sum + it.winter.max, 0)
      const found = own.reduce((sum, it) => sum + it.sd_m.max, 0)
      // The air in the fold of a film comes on top: a hundredth of a metre.
      expect(Math.abs(found - most)).toBeLessThan(0.02 + 1e-9 * most)
    }
  }) // prettier-ignore

  it('names the part whose resistance nobody declares, and computes what does not need it', () => {
    const { vapourView, conditions, solved: heat } = solved('on-consoles')
    const field = sectionField(vapourView, heat.solution, conditions)
    expect(field.ok ? [] : field.problems.map(it => it.at)).toEqual(['layer-3'])
    expect(sectionVapour(vapourView, 'joint', conditions).along.ok).toBe(true)
  })

  it('begins behind a metal sheet that lies before the joint', () => {
    const { vapourView, conditions } = solved('bead-in-brick', 'sill')
    const found = sectionVapour(vapourView, 'joint', conditions).along
    expect(found.ok && found.value.path.layers.every(it => it.sd_m.min < 100)).toBe(true)
  })
})

describe('the least favourable ends of the ranges', () => {
  it('bring no less water than either end of all of them', () => {
    const { vapourView, conditions } = solved('tight-outside', 'sill')
    const path = pathThrough(vapourView, vapourView.jointMiddle_mm)
    if (!path.ok) throw new Error(JSON.stringify(path.problems))
    const wide = { ...path.value, layers: path.value.layers.map(it => ({ ...it, sd_m: { min: it.sd_m.min / 3, max: it.sd_m.max * 3 } })) }
    const at = (end: 'min' | 'max') =>
      along({ ...wide, layers: wide.layers.map(it => ({ ...it, sd_m: { min: it.sd_m[end], max: it.sd_m[end] } })) }, conditions)
    const worst = along(wide, conditions)
    for (const end of ['min', 'max'] as const) {
      expect(worst.periods.gathers_kg_m2).toBeGreaterThanOrEqual(at(end).periods.gathers_kg_m2)
      expect(worst.year.peak_kg_m2).toBeGreaterThanOrEqual(at(end).year.peak_kg_m2)
    }
    expect(worst.periods.gathers_kg_m2).toBeGreaterThan(at('max').periods.gathers_kg_m2)
  }) // prettier-ignore
})

describe('the field of a cut', () => {
  it('keeps below saturation, and what enters stays or leaves', () => {
    for (const file of ['right-jamb', 'facing-leaf', 'timber-wall']) {
      const { vapourView, conditions, solved: heat } = solved(file)
      const field = sectionField(vapourView, heat.solution, conditions)
      if (!field.ok) throw new Error(JSON.stringify(field.problems))
      const { vapour_Pa, saturation_Pa, whole_kg_ms, kept_kg_ms, enters_kg_ms, isSettled } = field.value
      expect(isSettled).toBe(true)
      vapour_Pa.forEach((value, n) => expect(value).toBeLessThanOrEqual((saturation_Pa[n] ?? 0) * (1 + 1e-9)))
      expect(whole_kg_ms).toBeGreaterThan(0)
      expect(Math.abs(kept_kg_ms - whole_kg_ms)).toBeLessThan(1e-9 * enters_kg_ms)
    }
  })

  it('draws its wet zone round what lies nearest to each wet node', () => {
    const { vapourView, conditions, solved: heat } = solved('facing-leaf')
    const field = sectionField(vapourView, heat.solution, conditions)
    if (!field.ok) throw new Error(JSON.stringify(field.problems))
    const { domain, isWet, x_mm, y_mm } = field.value
    const rings = wetZone(field.value)
    let nearest_mm2 = 0
    for (let t = 0; t < domain.triangles; t++) {
      const corners = [0, 1, 2].map(i => domain.corner[3 * t + i] ?? 0)
      const area_mm2 = areaOf(corners.map(n => [x_mm[n] ?? 0, y_mm[n] ?? 0] as const))
      nearest_mm2 += (area_mm2 * corners.filter(n => isWet[n]).length) / 3
    }
    expect(rings.length).toBeGreaterThan(0)
    expect(rings.reduce((sum, ring) => sum + areaOf(ring), 0)).toBeCloseTo(nearest_mm2, 6)
  })

  it('lets less in through a tighter membrane inside: it is an interface', () => {
    const entering = (sd_m: number): number => {
      const tighter = (project: Project): Project => {
        const membrane = Object.values(project.joints).flatMap(it => it.seals).find(it => it.kind === 'membrane')
        const done = applyEdits(project, [{ kind: 'state', at: { field: 'membrane.sd', part: membrane?.id ?? '' }, to: specified(sd_m) }])
        if (!done.ok) throw new Error(JSON.stringify(done.problems))
        return done.value
      }
      const { vapourView, conditions, solved: heat } = solved('right-jamb', 'left', tighter)
      const field = sectionField(vapourView, heat.solution, conditions)
      if (!field.ok) throw new Error(JSON.stringify(field.problems))
      return field.value.enters_kg_ms
    }
    const [open, usual, tight] = [0.05, 20, 1500].map(entering)
    expect(open).toBeGreaterThan((usual ?? 0) * 1.005)
    expect(usual).toBeGreaterThan(tight ?? 0)
  }) // prettier-ignore
})

describe('a desk that answers rules', () => {
  it('gives both jambs of a window the same answer, and another once the frame is moved', () => {
    const { project, place } = aSample('right-jamb')
    const right = aSample('right-jamb', 'right').place
    const desk = physicsDesk()
    expect(desk(project, right)).toBe(desk(project, place))
    const moved = applyEdits(project, [{ kind: 'state', at: { field: 'opening.position', part: place.opening }, to: specified(60) }])
    if (!moved.ok) throw new Error(JSON.stringify(moved.problems))
    expect(desk(moved.value, place)).not.toBe(desk(project, place))
  }) // prettier-ignore

  it('solves a threshold anew once a level is told, and says why it has no vapour', () => {
    const { project, place } = aSample('step-free-door', 'sill')
    const desk = physicsDesk()
    const lower = applyEdits(project, [{ kind: 'state', at: { field: 'opening.threshold-outside', part: place.opening }, to: specified(-150) }])
    if (!lower.ok) throw new Error(JSON.stringify(lower.problems))
    const [now, then] = [desk(project, place), desk(lower.value, place)]
    if (!now?.ok || !then?.ok) throw new Error('a threshold has heat')
    expect(then.value.lowest).not.toEqual(now.value.lowest)
    expect(now.value.lowest.map(it => it.of)).toContain('floor')
    expect(now.value.water).toMatchObject({ ok: false, problems: [{ say: { en: expect.stringMatching(/not computed at a threshold/) } }] })
    const { vapourView, conditions, solved: heat } = solved('step-free-door', 'sill')
    expect(sectionField(vapourView, heat.solution, conditions).ok).toBe(false)
  }) // prettier-ignore

  it('is within a twentieth of a kelvin of the usual accuracy', () => {
    const { project, place } = aSample('facing-leaf')
    const fast = zonePhysics(project, place)
    const exact = solved('facing-leaf').solved.heat.lowest
    if (!fast.ok) throw new Error(JSON.stringify(fast.problems))
    for (const it of fast.value.lowest)
      expect(Math.abs(it.temperature_C - (exact.find(one => one.of === it.of)?.temperature_C ?? NaN))).toBeLessThan(0.05)
  }) // prettier-ignore
})
