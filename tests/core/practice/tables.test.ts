import { expect, test } from 'vitest'
import type { FrameMaterial, RevealForm } from '../../../core/kinds'
import { type LimitShapes, lookUp, practiceOf } from '../../../core/practice'

const de = practiceOf({ id: 'DE', own: [] })
const uk = practiceOf({ id: 'UK', own: [] })

// Copied by hand from the table of a sealing contractor (PVC-U) and from memory (aluminium, timber), not from the code.
// Lengths up to 1.5, 2.5, 3.5, 4.5 m in a straight reveal; up to 2.5, 3.5, 4.5 m in an inner rebate.
const none = undefined
const leastJoints: readonly [FrameMaterial, RevealForm, readonly (number | undefined)[]][] = [
  ['pvc-white', 'butt', [10, 15, 20, none]],
  ['pvc-coloured', 'butt', [15, 20, none, none]],
  ['aluminium', 'butt', [10, 15, 20, 25]],
  ['timber', 'butt', [10, 10, 10, 10]],
  ['timber-aluminium', 'butt', [10, 10, 10, 10]],
  ['pvc-white', 'inner-rebate', [10, 10, 15]],
  ['pvc-coloured', 'inner-rebate', [10, 15, 15]],
  ['aluminium', 'inner-rebate', [10, 15, 15]],
  ['timber', 'inner-rebate', [10, 10, 10]],
  ['timber-aluminium', 'inner-rebate', [10, 10, 10]],
]
const ends_mm: Partial<Record<RevealForm, readonly number[]>> = {
  butt: [1500, 2500, 3500, 4500],
  'inner-rebate': [2500, 3500, 4500],
}

const cells = leastJoints.flatMap(([frame, reveal, least]) =>
  least.map((least_mm, at) => ({ frame, reveal, upTo_mm: ends_mm[reveal]?.[at] ?? 0, least_mm })),
)
const leastAt = (given: LimitShapes['least-joint']['given']) =>
  lookUp(de, 'least-joint', given)?.then.least_mm

test.each(cells)(
  '$frame, $reveal, up to $upTo_mm mm long: $least_mm mm',
  ({ frame, reveal, upTo_mm, least_mm }) => {
    expect(leastAt({ frame, reveal, length_mm: upTo_mm })).toBe(least_mm)
    expect(leastAt({ frame, reveal, length_mm: upTo_mm - 999 })).toBe(least_mm)
  },
)

test.each(leastJoints)('%s, %s: beyond 4.5 m there is no value', (frame, reveal) => {
  expect(leastAt({ frame, reveal, length_mm: 4501 })).toBeUndefined()
})

test('a length just past a column reads the next one', () => {
  expect(leastAt({ frame: 'pvc-white', reveal: 'butt', length_mm: 1500.1 })).toBe(15)
  expect(leastAt({ frame: 'pvc-white', reveal: 'inner-rebate', length_mm: 3500.1 })).toBe(15)
})

// Openings up to 1.5, 3 and 4.5 m: least gap a side; greatest 10 mm up to 3 m, else 15 mm.
const gaps: readonly [FrameMaterial, readonly [number, number, number]][] = [
  ['pvc-white', [5, 5, 7.5]],
  ['pvc-coloured', [7.5, 7.5, 11]],
  ['timber', [5, 5, 5]],
  ['timber-aluminium', [5, 5, 5]],
  ['aluminium', [5, 5, 7.5]],
]
test.each(gaps)('British gaps for %s', (frame, [small, middle, large]) => {
  const at = (length_mm: number) => lookUp(uk, 'perimeter-gap', { frame, length_mm })?.then
  expect(at(1500)).toEqual({ least_mm: small, most_mm: 10 })
  expect(at(3000)).toEqual({ least_mm: middle, most_mm: 10 })
  expect(at(4500)).toEqual({ least_mm: large, most_mm: 15 })
  expect(at(4501)).toBeUndefined()
})

test('a bead may be 2 mm off half the width up to 25 mm, 3 mm above', () => {
  const within = (width_mm: number) => lookUp(de, 'sealant-depth', { width_mm })?.then.within_mm
  expect(within(10)).toBe(2)
  expect(within(25)).toBe(2)
  expect(within(25.1)).toBe(3)
})
