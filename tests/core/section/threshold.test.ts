import { describe, expect, it, test } from 'vitest'
import {
  applyEdit,
  applyEdits,
  type Edit,
  fieldOf,
  openProject,
  type Project,
  saveProject,
} from '../../../core/detail'
import { detailSheet } from '../../../core/drawing'
import { thresholdChains } from '../../../core/drawing/section/threshold-sizes'
import type { Region } from '../../../core/geometry'
import { check, findingRows } from '../../../core/rules'
import { cutSection, layoutOf, type Section } from '../../../core/section'
import { specified } from '../../../core/units'
import { aSample } from '../../given/a-sample'
import { randomFrom } from '../../given/random'
import { areasByLibrary, areasIn, differing, untiled } from '../../properties/section-laws'

const { project: door, place } = aSample('step-free-door', 'sill')
const opening = place.opening
const threshold = door.openings[opening]?.threshold
if (threshold === undefined) throw new Error('the door has no threshold')
const width_mm = 15

const stating = (of: Readonly<Record<string, number | string>>, project = door): Project => {
  const edits = Object.entries(of).map(([field, value]): Edit => ({
    kind: 'state',
    at: { field, part: field.startsWith('opening.') ? opening : threshold.id },
    to: specified(value) as Extract<Edit, { kind: 'state' }>['to'],
  }))
  const stated = applyEdits(project, edits)
  if (!stated.ok) throw new Error(stated.problems[0].say.en)
  return stated.value
}

const cut = (project: Project): Section => cutSection(project, place, { state: 'planned', width_mm })
const bodies = (section: Section, part: string, material?: string): readonly Region[] =>
  section.regions.filter(
    it =>
      it.part === `${threshold.id}/${part}` &&
      it.fill.kind === 'material' &&
      (material === undefined || it.fill.material === material),
  )
const top = (regions: readonly Region[]): number =>
  Math.max(...regions.flatMap(it => it.outline.map(([x]) => x)))
const bottom = (regions: readonly Region[]): number =>
  Math.min(...regions.flatMap(it => it.outline.map(([x]) => x)))

describe('the cut of a threshold', () => {
  const section = cut(door)

  it('has floor, surface and top of the profile at their stated levels', () => {
    // the profile of 35 mm stands on a joint of 15 mm, 15 mm over floor and surface
    expect(section.levels).toEqual({ top_mm: 50, floor_mm: 35, surface_mm: 35, edge_mm: 50 })
    expect(top(bodies(section, 'floor'))).toBe(35)
    expect(top(bodies(section, 'surface'))).toBe(35)
    expect(top(section.regions.filter(it => it.part === door.openings[opening]?.frame))).toBe(50)
  })

  it('lays the floor layer on layer: finish, screed, insulation, slab', () => {
    const layers = [['ceramic-tile', 15], ['screed', 50], ['eps', 100], ['reinforced-concrete', 150]] as const // prettier-ignore
    let at_mm = 35
    for (const [material, thickness_mm] of layers) {
      const found = bodies(section, 'floor', material)
      expect(top(found)).toBeCloseTo(at_mm, 6)
      at_mm -= thickness_mm
      expect(bottom(found)).toBeCloseTo(at_mm, 6)
    }
  })

  it('turns the waterproofing up to its edge at the face of the frame', () => {
    const sheet = (project: Project) => cut(project).lines.find(it => it.part === `${threshold.id}/sheet`)
    expect(sheet(door)?.path.at(-1)).toEqual([50, 10])
    expect(sheet(stating({ 'opening.threshold-edge': 5 }))?.path.at(-1)).toEqual([40, 10])
  })

  it('has a channel where one is told, as deep and as wide as stated, open through its grating', () => {
    expect(section.regions.filter(it => it.part.endsWith('/channel'))).toEqual([])
    const drained = cut(stating({ 'opening.threshold-drain': 'channel', 'threshold.channel-depth': 60 }))
    const channel = drained.regions.filter(it => it.part.endsWith('/channel'))
    expect([top(channel), bottom(channel)]).toEqual([35, -25])
    const ys = channel.flatMap(it => it.outline.map(([, y]) => y))
    expect(Math.max(...ys) - Math.min(...ys)).toBe(150)
    expect(channel.some(it => it.fill.kind === 'air' && it.fill.vented === 'open')).toBe(true)
  })

  it('falls the way that is told, by the stated amount', () => {
    const far_mm = (project: Project): number => {
      const surface = bodies(cut(project), 'surface').flatMap(it => it.outline)
      const out_mm = Math.min(...surface.map(([, y]) => y))
      return Math.max(...surface.filter(([, y]) => y === out_mm).map(([x]) => x))
    }
    const { threshold: laid } = layoutOf(door, place, width_mm)
    const run_mm = 10 - (laid?.out_mm ?? NaN)
    expect(35 - far_mm(door)).toBeCloseTo(0.02 * run_mm, 3)
    expect(far_mm(stating({ 'opening.threshold-fall': 'towards' })) - 35).toBeCloseTo(0.02 * run_mm, 3)
    expect(far_mm(stating({ 'opening.threshold-fall': 'level' }))).toBe(35)
  })

  it('lies in the ground at its lower end and is cut off at both sides', () => {
    const ground = section.faces.filter(it => it.to === 'ground')
    expect(new Set(ground.flatMap(it => it.path.map(([x]) => x)))).toEqual(new Set([-3000]))
    expect(section.faces.filter(it => it.to === 'inside').map(it => it.of)).toContain('floor')
  })

  it('shows assumed levels where nobody tells any', () => {
    const { told: _, ...bare } = door.openings[opening] ?? {}
    const untold = { ...door, openings: { [opening]: bare as Project['openings'][string] } }
    expect(cut(untold).levels).toMatchObject({ floor_mm: 30, surface_mm: 30 })
    const sheet = detailSheet(untold, place, cut(untold), { language: 'en', palette: 'black' })
    expect(JSON.stringify(sheet.marks)).toContain('surface outside, assumed')
  })
})

test('whatever levels are stated, a threshold can be cut, tiles its ground and has the areas of what is painted', () => {
  const random = randomFrom(7)
  const broken: string[] = []
  const one = (field: string, part = opening): number => {
    const { min = 0, max = 0 } = fieldOf(field)?.allowed(door, part).bounds ?? { unit: 'mm' as const }
    return random.chance(0.2) ? random.one([min, max]) : random.between(min, max)
  }
  for (let i = 0; i < 30; i++) {
    const drain = random.one(['none', 'channel', 'special'] as const)
    const channel = drain === 'none' ? [] : ['channel-width', 'channel-depth']
    const own = ['height', 'base', 'finish', 'screed', 'insulation', 'slab', 'paving', 'bed', 'fall', ...channel] // prettier-ignore
    const project = stating({
      'opening.threshold-drain': drain,
      ...Object.fromEntries(['top', 'outside', 'edge'].map(it => [`opening.threshold-${it}`, one(`opening.threshold-${it}`)])),
      ...Object.fromEntries(own.map(it => [`threshold.${it}`, one(`threshold.${it}`, threshold.id)])),
      'opening.threshold-fall': random.one(['away', 'level', 'towards']),
      'opening.position': one('opening.position'),
    }) // prettier-ignore
    const section = cut(project)
    broken.push(...untiled(section).map(it => `${i}: ${it}`))
    broken.push(...differing(areasIn(section), areasByLibrary(project, place, { width_mm }), 1e-6).map(it => `${i}: ${it}`)) // prettier-ignore
  }
  expect(broken).toEqual([])
})

describe('the sizes up a threshold', () => {
  const chainsAt = (levels: NonNullable<Section['levels']>) => thresholdChains(levels, 15, undefined)
  const lengths = ({ start_mm, links }: ReturnType<typeof chainsAt>[number]) =>
    links.map((it, at) => it.to_mm - (links[at - 1]?.to_mm ?? start_mm))

  it.each([
    ['level with floor and surface', { top_mm: 50, floor_mm: 35, surface_mm: 35, edge_mm: 50 }, [[15, 35], [15]]],
    ['its surface 150 lower', { top_mm: 50, floor_mm: 30, surface_mm: -100, edge_mm: 50 }, [[15, 35], [130, 20], [150]]],
    ['its waterproofing lower than its top', { top_mm: 170, floor_mm: 150, surface_mm: 0, edge_mm: 120 }, [[15, 155], [120, 30, 20]]],
  ] as const)('%s: each chain adds up', (_, levels, expected) => {
    const chains = chainsAt(levels)
    expect(chains.map(lengths)).toEqual(expected)
    const [, steps] = chains
    const sum = (steps ? lengths(steps) : []).reduce((all, it) => all + it, 0)
    expect(sum).toBe(levels.top_mm - Math.min(levels.surface_mm, levels.floor_mm))
  }) // prettier-ignore
})

describe('the sample of a step-free door', () => {
  it('lacks 135 of 150 mm of upstand, shown at its waterproofing, and nothing else', () => {
    const broken = check(door).findings.filter(it => it.verdict !== 'met')
    expect(broken.map(it => it.rule)).toEqual(['threshold-upstand'])
    const [finding] = broken
    expect(finding?.where).toEqual({ opening, side: 'sill', part: `${threshold.id}/sheet` })
    expect(finding && findingRows(finding).slice(0, 3).map(it => it.text.en)).toEqual(['15\u00a0mm', '≥\u00a0150\u00a0mm', '−135\u00a0mm']) // prettier-ignore
  })

  it('draws its channel once the drain is told', () => {
    const special = stating({ 'opening.threshold-drain': 'special' })
    expect(cut(special).regions.some(it => it.part === `${threshold.id}/channel`)).toBe(true)
    expect(check(special).findings.find(it => it.rule === 'threshold-upstand')?.verdict).toBe('refer')
  })

  it('is asked for the upstand to the edge of its waterproofing where that lies lower', () => {
    const lower = stating({ 'opening.threshold-top': 150, 'opening.threshold-edge': 149 })
    const found = check(lower).findings.find(it => it.rule === 'threshold-upstand')
    expect(found && findingRows(found).slice(0, 3).map(it => it.text.en)).toEqual(['149\u00a0mm', '≥\u00a0150\u00a0mm', '−1\u00a0mm']) // prettier-ignore
  })
})

describe('a foot with a threshold', () => {
  it('takes no sill beside it, in a file either', () => {
    const added = applyEdit(door, { kind: 'add', into: opening, part: 'sill' })
    expect(added.ok ? '' : added.problems[0].say.en).toMatch(/a sill or a threshold/)
    const sill = aSample('right-jamb', 'sill').project
    const both = {
      ...door,
      openings: { [opening]: { ...door.openings[opening], sill: Object.values(sill.openings)[0]?.sill } },
    }
    const opened = openProject(saveProject(both as Project))
    expect(opened.ok ? '' : opened.problems[0].say.en).toMatch(/a sill or a threshold/)
  })

  it('can be taken out and added anew, with its levels kept', () => {
    const out = applyEdit(door, { kind: 'remove', part: threshold.id })
    const again = out.ok ? applyEdit(out.value, { kind: 'add', into: opening, part: 'threshold' }) : out
    if (!again.ok) throw new Error(again.problems[0].say.en)
    const made = again.value.openings[opening]
    expect(made?.told?.threshold_mm).toEqual(specified(15))
    expect(made?.threshold?.height_mm.basis).toBe('assumed')
  })
})
