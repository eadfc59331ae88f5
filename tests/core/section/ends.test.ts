import { describe, expect, test } from 'vitest'
import { applyEdits, type Edit, type Project, samples, starters, zonesOf } from '../../../core/detail'
import { areaOf, grid_mm } from '../../../core/geometry'
import { specified } from '../../../core/units'
import { cutSection, jointBay, layoutOf, type Section } from '../../../core/section'
import { aWalledProject } from '../../given/a-walled-project'

const width_mm = 14
const placeAt = (project: Project, side: string) => {
  const found = zonesOf(project).find(it => it.side === side)
  if (found === undefined) throw new Error(`there is no ${side}`)
  return found
}
const layoutAt = (project: Project, side: string) => layoutOf(project, placeAt(project, side), width_mm)
const cut = (project: Project): Section =>
  cutSection(project, placeAt(project, 'left'), { state: 'planned', width_mm })

/** The project with nothing in its joints but some fresh seals. */
const sealedBy = (project: Project, seals: readonly (readonly ['outer' | 'inner', string])[]): Project => {
  const edits = Object.values(project.joints).flatMap((joint): readonly Edit[] => [
    ...joint.seals.map((it): Edit => ({ kind: 'remove', part: it.id })),
    ...seals.map(([plane, seal]): Edit => ({ kind: 'fill', joint: joint.id, plane, seal })),
  ])
  const found = applyEdits(project, edits)
  if (!found.ok) throw new Error(found.problems[0].say.en)
  return found.value
}

const areaOfMaterials = (
  section: Section,
  materials: readonly string[],
  of: (part: string) => boolean,
): number =>
  section.regions
    .filter(it => it.fill.kind === 'material' && materials.includes(it.fill.material) && of(it.part))
    .reduce((sum, it) => sum + areaOf(it.outline), 0)

describe.each(starters.map(it => [it.id] as const))('the ends of a joint in %s', id => {
  const project = aWalledProject(id)

  test('have flanks on the grid that begin at the joint', () => {
    const at = layoutAt(project, 'left')
    const { ends, from_mm, to_mm } = jointBay(at)
    for (const [start, { lead, flank }] of [[from_mm, ends.outer], [to_mm, ends.inner]] as const) {
      if (flank.length === 0) continue
      expect([...lead, ...flank][0]?.[1]).toBeCloseTo(start)
      for (const place of flank.flat()) expect(Math.abs(place / grid_mm - Math.round(place / grid_mm))).toBeLessThan(1e-3)
    }
  }) // prettier-ignore

  test('have no bond where the sash stands', () => {
    const { ends } = jointBay(layoutAt(project, 'left'))
    expect(Math.max(...ends.inner.flank.map(([x]) => x))).toBeLessThanOrEqual(ends.inner.free_mm + 1e-9)
  })

  test('are stopped by beads that fill the very strips that finishes leave', () => {
    const { ends } = jointBay(layoutAt(project, 'left'))
    const stops = [ends.outer.stop, ends.inner.stop].reduce((sum, it) => sum + areaOf(it ?? []), 0)
    const isSeal = (part: string) => part.startsWith('seal-')
    const bare = areaOfMaterials(cut(sealedBy(project, [])), ['pe-foam'], () => true)
    const beaded = cut(sealedBy(project, [['outer', 'render-stop-bead'], ['inner', 'plaster-stop-bead']])) // prettier-ignore
    expect(areaOfMaterials(beaded, ['pe-foam', 'pvc-u'], isSeal)).toBeCloseTo(stops, 2)
    expect(areaOfMaterials(beaded, ['pe-foam'], part => !isSeal(part))).toBeCloseTo(bare - stops, 2)
    // behind the nib of an outer rebate nobody sets a bead
    expect(bare).toBeCloseTo(stops, 2)
  })

  test('show a fillet bead against the finished reveal, outside every other part', () => {
    const { ends } = jointBay(layoutAt(project, 'left'))
    const section = cut(sealedBy(project, [['inner', 'fillet-bead']]))
    const bead = areaOfMaterials(section, ['silicone'], part => part.startsWith('seal-'))
    expect(bead > 0).toBe(ends.inner.face.length > 0)
  })
})

describe('an outer membrane on a frame that stands forward of the bearing layer', () => {
  const standingAt = (project: Project, position_mm: number): Project => {
    const [opening] = Object.keys(project.openings)
    const found = applyEdits(project, [
      { kind: 'state', at: { field: 'opening.position', part: opening ?? '' }, to: specified(position_mm) },
    ])
    if (!found.ok) throw new Error(found.problems[0].say.en)
    return found.value
  }
  const pathIn = (project: Project) => cut(sealedBy(project, [['outer', 'membrane']])).lines[0]?.path ?? []

  test('is led back along the insulation and bonded to the outer face of the bearing layer', () => {
    const path = pathIn(standingAt(aWalledProject('insulated-masonry'), -60))
    // a fresh one is bonded by 50 mm
    expect(path.slice(-3)).toEqual([[0, -60], [0, 0], [-50, 0]]) // prettier-ignore
  })

  test('is bonded to the face of a rigid frame, where one closes the insulation', () => {
    const consoles = samples.find(it => it.file === 'on-consoles')?.project
    if (consoles === undefined) throw new Error('no sample stands on consoles')
    // 40 mm of its front, then 10 mm back along it
    expect(pathIn(consoles).slice(-3)).toEqual([[0, -200], [-40, -200], [-40, -190]]) // prettier-ignore
  })
})
