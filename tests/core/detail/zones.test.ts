import { describe, expect, test } from 'vitest'
import {
  applyEdit,
  applyEdits,
  type Edit,
  outOfSquare,
  type Project,
  sizesOf,
  zoneOf,
} from '../../../core/detail'
import { measured, specified } from '../../../core/units'
import { aJoint } from '../../given/a-joint'

const [opening] = Object.values(aJoint().openings)
const zone = opening?.sides.right[0].id ?? ''
const length_mm = opening?.sides.right[0].to_mm ?? 0
const done = (...edits: readonly Edit[]): Project => {
  const found = applyEdits(aJoint(), edits)
  if (!found.ok) throw new Error(found.problems.map(it => it.say.en).join(', '))
  return found.value
}
const rightOf = (project: Project) => Object.values(project.openings)[0]?.sides.right ?? []

describe('a side of an opening', () => {
  test('is split in two zones that together are as long as it was', () => {
    const zones = rightOf(done({ kind: 'split-zone', zone, at_mm: 600 }))
    expect(zones.map(it => it.to_mm)).toEqual([600, length_mm])
    expect(new Set(zones.map(it => it.id)).size).toBe(2)
  })

  test('is whole again when its zones are joined', () => {
    const split = done({ kind: 'split-zone', zone, at_mm: 600 })
    const joined = applyEdit(split, { kind: 'join-zones', zone: rightOf(split)[0]?.id ?? '' })
    expect(joined.ok && rightOf(joined.value).map(it => it.to_mm)).toEqual([length_mm])
  })

  test.each([0, 20, -5, 1e9, Number.NaN])('is not split at %d mm: a zone is at least 50 mm long', at_mm => {
    const found = applyEdit(aJoint(), { kind: 'split-zone', zone, at_mm })
    expect(found.ok ? undefined : found.problems[0].allowed).toEqual({
      unit: 'mm',
      min: 50,
      max: length_mm - 50,
    })
  })

  test('gets a joint of its own for one zone, and the others keep theirs', () => {
    const split = done({ kind: 'split-zone', zone, at_mm: 600 })
    const upper = rightOf(split)[1]?.id ?? ''
    const own = applyEdit(split, { kind: 'choose-joint', zone: upper, joint: 'copy' })
    if (!own.ok) throw new Error('refused')
    const joint = zoneOf(own.value, upper)?.zone.joint ?? ''
    expect(joint).not.toBe('joint-1')
    expect(Object.values(own.value.openings)[0]?.sides.left[0].joint).toBe('joint-1')
    const changed = applyEdit(own.value, {
      kind: 'state',
      at: { field: 'joint.planned', part: joint },
      to: specified(22),
    })
    expect(changed.ok && changed.value.joints['joint-1']).toEqual(own.value.joints['joint-1'])
  })
})

describe('the sizes of an opening', () => {
  const surveyed = (project: Project): Project => {
    const [one] = Object.values(project.openings)
    if (one === undefined) throw new Error('no opening')
    const survey = {
      widths_mm: { top: measured(1206), middle: measured(1210), bottom: measured(1215) },
      heights_mm: { left: measured(1500), right: measured(1500) },
      diagonals_mm: { rising: measured(1930), falling: measured(1920) },
    }
    return { ...project, openings: { [one.id]: { ...one, survey } } }
  }

  test('are three: clear opening, frame, daylight, each smaller than the one before', () => {
    const { opening: clear, frame, daylight } = sizesOf(aJoint(), 'opening-1')
    expect(clear.width_mm).toBeGreaterThan(frame.width_mm)
    expect(frame.width_mm).toBeGreaterThan(daylight.width_mm)
  })

  test('propose a frame: the smallest opening less the planned joint on both sides', () => {
    const sizes = sizesOf(surveyed(aJoint({ planned_mm: specified(15) })), 'opening-1')
    expect(sizes.opening.width_mm).toBe(1206)
    expect(sizes.proposed.width_mm).toBe(1206 - 30)
  })

  test('show how far the opening is out of square: the shear that its diagonals tell', () => {
    const [one] = Object.values(surveyed(aJoint()).openings)
    const found = one && outOfSquare(one)
    expect(found?.widths_mm).toBe(9)
    expect(found?.diagonals_mm).toBe(10)
    // by hand: (1930² − 1920²) / (4 × 1206) = 7.98 mm over 1500 mm
    expect(found?.slope_mm_m).toBeCloseTo(5.32, 2)
  })
})
