import { describe, expect, test } from 'vitest'
import { areaOf } from '../../../core/geometry'
import { type AnySeal, type End, kindOf } from '../../../core/seals'
import { specified } from '../../../core/units'
import { aBay as bay } from '../../given/a-bay'

describe('a bead on a bond breaker', () => {
  const bead: AnySeal = { kind: 'sealant', id: 's', plane: 'outer', depth_mm: specified(6) }
  const foam: AnySeal = { kind: 'foam', id: 'f', plane: 'middle' }
  const faces = (seal: AnySeal) => kindOf(seal).bonds(seal, bay(8), foam).map(it => it.to) // prettier-ignore

  test('is bonded to two faces where a bare one sticks to the foam too', () => {
    expect(faces(bead)).toEqual(['wall', 'frame', 'seal'])
    expect(faces({ ...bead, breaker: specified('yes') })).toEqual(['wall', 'frame'])
  })

  test('has the breaker across the joint at its back', () => {
    const [line] = kindOf(bead).lay({ ...bead, breaker: specified('yes') }, bay(8)).lines
    expect(line?.path).toEqual([[8, 6], [0, 6]]) // prettier-ignore
  })
})

describe('a fillet bead', () => {
  const kind = kindOf({ kind: 'fillet-bead' })
  const seal: AnySeal = {
    kind: 'fillet-bead',
    id: 's',
    plane: 'inner',
    legFrame_mm: specified(10),
    legWall_mm: specified(12),
  }

  test('is a triangle in the corner of frame and lining, half the product of its legs', () => {
    const [bead] = kind.lay(seal, bay(14)).regions
    expect(areaOf(bead?.outline ?? [])).toBeCloseTo(60)
    expect(bead?.outline).toContainEqual([20, 78])
  })

  test('spans the joint where the reveal ends beside it', () => {
    const at = bay(14)
    const inner: End = { ...at.ends.inner, face: [[0, 78], [0, 190]] } // prettier-ignore
    const [bead] = kind.lay(seal, { ...at, ends: { ...at.ends, inner } }).regions
    expect(areaOf(bead?.outline ?? [])).toBeCloseTo((24 * 12) / 2)
  })

  test('keeps to the free face of the frame, and lies nowhere where there is no reveal', () => {
    const [bead] = kind.lay({ ...seal, legFrame_mm: specified(30) }, bay(14)).regions
    expect(Math.max(...(bead?.outline ?? []).map(([x]) => x))).toBe(30)
    const at = bay(14)
    const bare = { ...at, ends: { ...at.ends, inner: { ...at.ends.inner, face: [] } } }
    expect(kind.lay(seal, bare).regions).toEqual([])
  })

  test('needs 72 ml of sealant a metre with legs of 12', () => {
    const twelve = { ...seal, legFrame_mm: specified(12) }
    expect(kind.needs(twelve, bay(14), 1000)[0]?.amount).toBeCloseTo(72)
  })
})

describe('a backing rod', () => {
  test.each([
    [14, 18],
    [20, 25],
    [10, 13],
  ])('keeps its area when a joint of %d mm presses a rod of %d mm', (width_mm, rod_mm) => {
    const seal: AnySeal = {
      kind: 'sealant',
      id: 's',
      plane: 'outer',
      depth_mm: specified(8),
      rod_mm: specified(rod_mm),
    }
    const rod = kindOf(seal)
      .lay(seal, bay(width_mm))
      .regions.find(it => it.id === 's.rod')
    // the outline has 16 chords a side: its area is a little less than that of the curve
    expect(areaOf(rod?.outline ?? [])).toBeGreaterThan(0.97 * (Math.PI / 4) * rod_mm * rod_mm)
    expect(areaOf(rod?.outline ?? [])).toBeLessThanOrEqual((Math.PI / 4) * rod_mm * rod_mm)
  })

  test('leaves the bead as deep at its middle as is stated', () => {
    const seal: AnySeal = {
      kind: 'sealant',
      id: 's',
      plane: 'outer',
      depth_mm: specified(8),
      rod_mm: specified(18),
    }
    const rod = kindOf(seal)
      .lay(seal, bay(14))
      .regions.find(it => it.id === 's.rod')
    expect(Math.min(...(rod?.outline ?? []).map(([, y]) => y))).toBeCloseTo(8)
  })
})
