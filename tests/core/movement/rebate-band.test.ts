import { describe, expect, test } from 'vitest'
import { applyEdits, type Edit, type Project, samples, sizesOf } from '../../../core/detail'
import { jointBand, rebateBand } from '../../../core/movement'
import { measured, specified } from '../../../core/units'

/** A project behind a nib of which nobody has measured the gap. */
const behindNib = ((): Project | undefined => {
  const project = samples.find(it => it.file === 'protected-sill')?.project
  const opening = project?.openings['opening-14']
  if (!project || !opening) return undefined
  const { rebates_mm: _, ...survey } = { ...opening.survey }
  return { ...project, openings: { ...project.openings, 'opening-14': { ...opening, survey } } }
})()
const after = (...edits: readonly Edit[]): Project => {
  if (behindNib === undefined) throw new Error('no sample stands behind a nib')
  const found = applyEdits(behindNib, edits)
  if (!found.ok) throw new Error(found.problems[0].say.en)
  return found.value
}
const state = (field: string, value: number, basis = specified): Edit => ({
  kind: 'state',
  at: { field, part: 'opening-14' },
  to: basis(value),
})
const atLeft = (project: Project) => rebateBand(project, 'opening-14', 'left', 'zone-11')

describe('the gap between a nib of 115 mm and a frame', () => {
  test.each([
    [123, 8],
    [118, 3],
    [115, 0],
  ])('that stands at %d mm is %d mm wide, with the tolerance of its joint', (position_mm, planned_mm) => {
    const band = atLeft(after(state('opening.position', position_mm)))
    expect(band?.planned_mm).toBe(planned_mm)
    expect(band?.still_mm).toEqual({ min: planned_mm - 1, max: planned_mm + 1 })
    expect(band?.restsOn).toEqual([{ field: 'joint.tolerance', part: 'joint-5' }])
  })

  test('is what was measured, where it was', () => {
    const project = after(
      state('survey.rebate-left-narrowest', 4, measured),
      state('survey.rebate-left-widest', 13, measured),
    )
    expect(atLeft(project)?.still_mm).toEqual({ min: 4, max: 13 })
    expect(atLeft(project)?.restsOn).toEqual([])
    expect(rebateBand(project, 'opening-14', 'right', 'zone-12')?.still_mm).toEqual({ min: 7, max: 9 })
  })

  test('keeps its width when the frame changes its length', () => {
    const band = atLeft(after())
    expect(band?.moving_mm).toEqual(band?.still_mm)
    expect([band?.opens_mm, band?.closes_mm]).toEqual([0, 0])
    expect(band?.widestSum.map(it => `${it.sign}${it.value}`)).toEqual(['8', '+1', '=9'])
  })

  test('is none at the sill, nor in a straight reveal', () => {
    expect(rebateBand(after(), 'opening-14', 'sill', 'zone-13')).toBeUndefined()
    const straight = after({
      kind: 'state',
      at: { field: 'reveal.form', part: 'wall-1' },
      to: specified('butt'),
    })
    expect(atLeft(straight)).toBeUndefined()
  })
})

describe('a box on the head of a frame', () => {
  const boxed = after(state('opening.position', 170), { kind: 'add', into: 'opening-14', part: 'box' })
  const headOf = (project: Project) => jointBand(project, 'opening-14', 'head', 'zone-10')

  test('moves with it: the joint below the lintel takes the change of frame and box', () => {
    // 0.5 mm/m of 2100 and 240 mm
    expect(headOf(boxed).opens_mm).toBeCloseTo(1.17, 6)
    expect(headOf(after()).opens_mm).toBeCloseTo(1.05, 6)
    expect(jointBand(boxed, 'opening-14', 'left', 'zone-11').opens_mm).toBeCloseTo(0.3, 6)
  })

  test('takes its height out of the frame that fits an opening', () => {
    const withHeight = (project: Project): Project => {
      const found = applyEdits(project, [state('survey.height-left', 2400, measured)])
      if (!found.ok) throw new Error('refused')
      return found.value
    }
    expect(sizesOf(withHeight(boxed), 'opening-14').proposed.height_mm).toBe(2400 - 24 - 240)
    expect(sizesOf(withHeight(after()), 'opening-14').proposed.height_mm).toBe(2400 - 24)
  })
})
