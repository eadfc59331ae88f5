import { describe, expect, test } from 'vitest'
import type { Opening, Project, Survey } from '../../../core/detail'
import type { Side } from '../../../core/kinds'
import { jointBand } from '../../../core/movement'
import { measured, specified } from '../../../core/units'
import { aJoint } from '../../given/a-joint'

/** A timber frame that does not move, in an opening that was measured. */
const surveyed = (
  survey: Survey,
  more: Partial<Opening> = {},
  width_mm = 1180,
  height_mm = 1500,
): Project => {
  const project = aJoint({
    width_mm: specified(width_mm),
    height_mm: specified(height_mm),
    movement_mm_m: specified(0),
  })
  const [opening] = Object.values(project.openings)
  if (opening === undefined) throw new Error('no opening')
  return { ...project, openings: { [opening.id]: { ...opening, survey, ...more } } }
}
const sidesOf = (project: Project): Opening['sides'] => {
  const [opening] = Object.values(project.openings)
  if (opening === undefined) throw new Error('no opening')
  return opening.sides
}
const bandAt = (project: Project, side: Side) => {
  const [opening] = Object.values(project.openings)
  return jointBand(project, opening?.id ?? '', side, opening?.sides[side][0].id ?? '')
}
const widths = (top: number, middle: number, bottom: number): Survey => ({
  widths_mm: { top: measured(top), middle: measured(middle), bottom: measured(bottom) },
})

describe('a joint in a measured opening', () => {
  test('is what the opening leaves beside a frame in its middle: 1206, 1210, 1215 and a frame of 1180 leave 13 to 17.5', () => {
    for (const side of ['left', 'right'] as const) {
      expect(bandAt(surveyed(widths(1206, 1210, 1215)), side).still_mm).toEqual({ min: 13, max: 17.5 })
    }
  })

  test('at head and sill comes from the heights', () => {
    const survey: Survey = { heights_mm: { left: measured(1528), right: measured(1532) } }
    expect(bandAt(surveyed(survey), 'head').still_mm).toEqual({ min: 14, max: 16 })
  })

  test('gains on one side what a frame off centre takes from the other', () => {
    const project = surveyed(widths(1210, 1210, 1210), { aside_mm: specified(4) })
    expect(bandAt(project, 'left').still_mm).toEqual({ min: 19, max: 19 })
    expect(bandAt(project, 'right').still_mm).toEqual({ min: 11, max: 11 })
  })

  test('follows a flank out of plumb, straight between the places where it was measured', () => {
    // 15 mm planned clearance a side; the flank stands in by 7 at the bottom and back by 10 at the top
    const offsets = [
      { side: 'right', at_mm: 0, offset_mm: 7 },
      { side: 'right', at_mm: 1500, offset_mm: -10 },
    ] as const
    expect(bandAt(surveyed({ ...widths(1210, 1210, 1210), offsets }), 'right').still_mm).toEqual({
      min: 8,
      max: 25,
    })
    const halved = surveyed(
      { ...widths(1210, 1210, 1210), offsets },
      {
        sides: {
          ...sidesOf(aJoint()),
          right: [
            { id: 'zone-a', joint: 'joint-1', to_mm: 750 },
            { id: 'zone-b', joint: 'joint-1', to_mm: 1500 },
          ],
        },
      },
    )
    expect(jointBand(halved, 'opening-1', 'right', 'zone-a').still_mm).toEqual({ min: 8, max: 16.5 })
    expect(jointBand(halved, 'opening-1', 'right', 'zone-b').still_mm).toEqual({ min: 16.5, max: 25 })
  })

  test('can be less than nothing where the frame is wider than the opening: that is a finding, no error', () => {
    expect(bandAt(surveyed(widths(1170, 1175, 1180)), 'left').still_mm.min).toBe(-5)
  })

  test('needs no tolerance, and its sum begins with the measured size', () => {
    const band = bandAt(surveyed(widths(1206, 1210, 1215)), 'left')
    expect(band.narrowestSum[0]).toMatchObject({ value: 1206, basis: 'measured' })
    expect(band.restsOn.map(it => it.field)).not.toContain('joint.tolerance')
  })
})

test('a joint measured on the frame as it stands goes before everything else', () => {
  const survey: Survey = {
    ...widths(1206, 1210, 1215),
    joints_mm: { left: { narrowest: measured(9), widest: measured(12) } },
  }
  expect(bandAt(surveyed(survey), 'left').still_mm).toEqual({ min: 9, max: 12 })
  expect(bandAt(surveyed(survey), 'right').still_mm).toEqual({ min: 13, max: 17.5 })
})
