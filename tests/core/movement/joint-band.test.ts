import { expect, test } from 'vitest'
import { beadDepths_mm, jointBand } from '../../../core/movement'
import type { Side } from '../../../core/kinds'
import { lookUp, practiceOf } from '../../../core/practice'
import { assumed, specified } from '../../../core/units'
import { aJoint, type Wanted } from '../../given/a-joint'

const bandAt = (side: Side, it: Wanted = {}) => jointBand(aJoint(it), 'opening-1', side, `zone-${side}`)

// White PVC-U moves 1.6 mm/m: 1.8 m wide 1.44 mm at each jamb, 1.5 m high 2.4 mm at the head, nothing at the sill.
const window = { width_mm: specified(1800), height_mm: specified(1500) }
test.each([
  ['left', 1.44],
  ['right', 1.44],
  ['head', 2.4],
  ['sill', 0],
] as const)('the joint at %s moves %d mm each way', (side, moves_mm) => {
  const band = bandAt(side, window)
  expect(band.still_mm).toEqual({ min: 13, max: 17 })
  expect(band.opens_mm).toBeCloseTo(moves_mm, 9)
  expect(band.closes_mm).toBeCloseTo(moves_mm, 9)
  expect(band.moving_mm.min).toBeCloseTo(13 - moves_mm, 9)
  expect(band.moving_mm.max).toBeCloseTo(17 + moves_mm, 9)
})

test.each([
  ['pvc-white', 1.6],
  ['pvc-coloured', 2.4],
  ['aluminium', 1.3],
  ['timber', 0.5],
  ['timber-aluminium', 0.5],
] as const)('a metre of %s moves %d mm', (frame, rate_mm_m) => {
  const band = bandAt('head', { frame, height_mm: specified(1000) })
  expect(band.opens_mm).toBeCloseTo(rate_mm_m, 9)
})

test('a stated movement takes the place of the trade value', () => {
  const band = bandAt('head', { height_mm: specified(1000), movement_mm_m: specified(3) })
  expect(band.opens_mm).toBeCloseTo(3, 9)
  expect(band.restsOn).toEqual([])
})

test('a band rests on what is assumed, and on nothing else', () => {
  expect(bandAt('left').restsOn).toEqual([{ field: 'frame.movement', part: 'frame-1' }])
  expect(bandAt('sill').restsOn).toEqual([])
  const all = bandAt('head', {
    planned_mm: assumed(15),
    tolerance_mm: assumed(2),
    width_mm: assumed(1000),
    height_mm: assumed(1000),
  })
  expect(all.restsOn.map(it => it.field)).toEqual([
    'joint.planned',
    'joint.tolerance',
    'opening.height',
    'frame.movement',
  ])
})

test.each(['narrowestSum', 'widestSum'] as const)('%s adds up, and says how', key => {
  for (const side of ['head', 'left', 'sill'] as const) {
    const band = bandAt(side, window)
    const terms = band[key].slice(0, -1)
    const total = terms.reduce((sum, it) => sum + (it.sign === '−' ? -it.value : it.value), 0)
    const end = key === 'narrowestSum' ? band.moving_mm.min : band.moving_mm.max
    expect(total).toBeCloseTo(end, 9)
    expect(band[key].at(-1)).toMatchObject({ sign: '=', value: end })
  }
  expect(bandAt('left', window)[key][2]?.says.de.replaceAll('\u00a0', ' ')).toBe('1,6 mm/m × 1,800 m ÷ 2')
})

test('an opening is its frame and the joints on both sides', () => {
  expect(bandAt('left', window)).toMatchObject({ frame_mm: 1800, opening_mm: 1830 })
  expect(bandAt('sill', window)).toMatchObject({ frame_mm: 1500, opening_mm: 1530 })
})

test('a zone that does not exist is our fault', () => {
  expect(() => jointBand(aJoint(), 'opening-1', 'left', 'zone-head')).toThrow('zone-head')
})

const de = practiceOf({ id: 'DE', own: [] })
const depths = (min: number, max: number) =>
  beadDepths_mm({ min, max }, width_mm => lookUp(de, 'sealant-depth', { width_mm })?.then ?? {})

test.each([
  [20, 20, 8, 12],
  [12, 18, 7, 8],
  [10, 10, 6, 7],
  [30, 30, 12, 15],
])('a joint of %d to %d mm takes a bead of %d to %d mm', (narrow, wide, min, max) => {
  expect(depths(narrow, wide)).toEqual({ min, max })
})

test('a joint that varies by more than 8 mm has no depth that serves both ends', () => {
  const none = depths(10, 20)
  expect(none.min).toBeGreaterThan(none.max)
})
