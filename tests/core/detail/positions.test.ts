import { describe, expect, test } from 'vitest'
import { emptyBays, neededIn, type Opening, sideFixings } from '../../../core/detail'
import { specified } from '../../../core/units'
import { aJoint } from '../../given/a-joint'

/** An opening with fixings placed on its head by count and corner distance, mullions of 70 mm at places. */
const opening = (it: {
  readonly width_mm: number
  readonly head?: number
  readonly corner_mm?: number
  readonly mullions_mm?: readonly number[]
  readonly axes_mm?: readonly number[]
}): Opening => {
  const plain = aJoint({ width_mm: specified(it.width_mm) }).openings['opening-1']
  if (!plain) throw new Error('no opening')
  const [fixing] = plain.fixings
  if (!fixing) throw new Error('no fixing')
  const { corner_mm: _, counts: __, ...bare } = fixing
  return {
    ...plain,
    mullions: (it.mullions_mm ?? []).map((at_mm, i) => ({ id: `m-${i}`, at_mm: specified(at_mm), face_mm: specified(70) })),
    fixings: [
      {
        ...bare,
        ...(it.corner_mm === undefined ? {} : { corner_mm: specified(it.corner_mm) }),
        ...(it.head === undefined ? {} : { counts: { head: specified(it.head) } }),
        ...(it.axes_mm ? { positions_mm: { head: it.axes_mm } } : {}),
      },
    ],
  }
} // prettier-ignore

const face_mm = 70
const neededOn = (it: Opening, corner_mm: number, spacing_mm: number) =>
  emptyBays(it, 'head', face_mm, corner_mm).map(bay => neededIn(bay, spacing_mm, 2))

// Worked by hand: E' = 220 from the outer corner, 700 mm apart.
test.each([
  [1230, 3],
  [1480, 3],
  [2100, 4],
  [2400, 4],
])('a side of %d mm needs %d fixings', (width_mm, count) => {
  expect(neededOn(opening({ width_mm }), 150, 700)).toEqual([count])
})

test('2.4 m with a mullion in the middle needs three in each bay', () => {
  expect(neededOn(opening({ width_mm: 2400, mullions_mm: [1200] }), 140, 700)).toEqual([3, 3])
})

test('a distance of just what is asked needs no further fixing', () => {
  expect(neededOn(opening({ width_mm: 420 + 1400 }), 140, 700)).toEqual([3])
  expect(neededOn(opening({ width_mm: 420 + 1401 }), 140, 700)).toEqual([4])
})

describe('fixings of a side', () => {
  test('stand evenly between both corners', () => {
    const found = sideFixings(opening({ width_mm: 1350, head: 3, corner_mm: 140 }), 'head', face_mm)
    expect(found?.axes_mm).toEqual([210, 675, 1140])
    expect(found?.spacing_mm).toBe(465)
  })

  test('are shared out over the bays of a mullion, at either side of which they stand', () => {
    const it = opening({ width_mm: 2100, head: 4, corner_mm: 140, mullions_mm: [1050] })
    expect(sideFixings(it, 'head', face_mm)?.axes_mm).toEqual([210, 875, 1225, 1890])
    expect(sideFixings(it, 'head', face_mm)?.spacing_mm).toBe(665)
  })

  test('go to the longest bay first where they are more than two each', () => {
    const it = opening({ width_mm: 2400, head: 5, corner_mm: 140, mullions_mm: [800] })
    expect(sideFixings(it, 'head', face_mm)?.bays.map(bay => bay.axes_mm.length)).toEqual([2, 3])
  })

  test('stand where they are said to stand', () => {
    const it = opening({ width_mm: 2000, axes_mm: [200, 900, 1800] })
    expect(sideFixings(it, 'head', face_mm)?.spacing_mm).toBe(900)
  })

  test('that hold nothing leave the whole length free', () => {
    for (const head of [0, 1])
      expect(
        sideFixings(opening({ width_mm: 2400, head, corner_mm: 140 }), 'head', face_mm)?.spacing_mm,
      ).toBe(2400)
  })

  test('are not known while nobody says how many there are, or how far from the corner', () => {
    expect(sideFixings(opening({ width_mm: 1200, corner_mm: 140 }), 'head', face_mm)).toBeUndefined()
    expect(sideFixings(opening({ width_mm: 1200, head: 3 }), 'head', face_mm)).toBeUndefined()
  })
})

test('a mirrored opening has mirrored fixings', () => {
  for (const [width_mm, at_mm, head] of [[2100, 700, 4], [1800, 500, 5], [3000, 1200, 7]] as const) {
    const axes = (mullion_mm: number) =>
      sideFixings(opening({ width_mm, head, corner_mm: 130, mullions_mm: [mullion_mm] }), 'head', face_mm)?.axes_mm ?? []
    const mirrored = axes(width_mm - at_mm).map(it => width_mm - it).toReversed()
    axes(at_mm).forEach((it, i) => expect(it).toBeCloseTo(mirrored[i] ?? NaN, 9))
  }
}) // prettier-ignore
