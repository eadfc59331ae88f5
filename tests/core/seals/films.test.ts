import { describe, expect, test } from 'vitest'
import { lengthOf } from '../../../core/geometry'
import { type AnySeal, type End, kindOf } from '../../../core/seals'
import { specified } from '../../../core/units'
import { aBay as bay } from '../../given/a-bay'

describe('a membrane', () => {
  const seal: AnySeal = {
    kind: 'membrane',
    id: 'seal-1',
    plane: 'inner',
    bondFrame_mm: specified(20),
    bondWall_mm: specified(40),
    slack_mm: specified(8),
  }

  test.each([8, 14, 25])('is as long as both bonds, the joint of %d mm and its slack', width_mm => {
    const [line] = kindOf(seal).lay(seal, bay(width_mm)).lines
    expect(lengthOf(line?.path ?? [])).toBeCloseTo(20 + width_mm + 8 + 40, 1)
  })

  test('turns round the edge of the reveal where the flank is shorter than its bond', () => {
    const at = bay(14)
    const inner: End = { ...at.ends.inner, flank: [[0, 78], [0, 100], [-1000, 100]] } // prettier-ignore
    const [line] = kindOf(seal).lay(seal, { ...at, ends: { ...at.ends, inner } }).lines
    expect(line?.path.at(-1)).toEqual([-18, 100])
  })

  test('lies taut without slack, straight across the joint', () => {
    const [line] = kindOf(seal).lay({ ...seal, slack_mm: specified(0) }, bay(14)).lines
    expect(line?.path).toEqual([
      [14, 58],
      [14, 78],
      [0, 78],
      [0, 118],
    ])
  })
})

describe('an outer membrane', () => {
  const seal: AnySeal = {
    kind: 'membrane',
    id: 'seal-1',
    plane: 'outer',
    bondFrame_mm: specified(20),
    bondWall_mm: specified(70),
    slack_mm: specified(0),
  }

  test('goes from the flank of the frame over the joint to the flank before it, and round its edge', () => {
    const [line] = kindOf(seal).lay(seal, bay(14)).lines
    expect(line?.path).toEqual([[14, 20], [14, 0], [0, 0], [0, -60], [-10, -60]]) // prettier-ignore
  })

  test('hangs its fold into the joint', () => {
    const { regions } = kindOf(seal).lay({ ...seal, slack_mm: specified(8) }, bay(14))
    expect(Math.max(...(regions[0]?.outline ?? []).map(([, y]) => y))).toBeGreaterThan(3)
  })

  test('is open to vapour where an inner one is tight, as long as nothing is stated', () => {
    const sd = (plane: 'outer' | 'inner') => kindOf(seal).sd_m({ ...seal, plane }, plane)?.winter
    expect(sd('outer')).toEqual({ min: 0.02, max: 0.5 })
    expect(sd('inner')).toEqual({ min: 10, max: 55 })
  })
})

describe('a moisture-variable membrane', () => {
  test('is tight dry and open humid', () => {
    const kind = kindOf({ kind: 'variable-membrane' })
    const sd = kind.sd_m(kind.fresh('s', 'inner', bay(14)), 'inner')
    expect(sd?.winter.min).toBeGreaterThanOrEqual(10)
    expect(sd?.summer.max).toBeLessThan(0.5)
  })
})

test('a ground-level sheet has no resistance to vapour until somebody states it', () => {
  const kind = kindOf({ kind: 'ground-sheet' })
  const seal = kind.fresh('s', 'outer', bay(14))
  expect(kind.sd_m(seal, 'outer')).toBeUndefined()
  expect(kind.sd_m({ ...seal, sd_m: specified(240) }, 'outer')?.winter).toEqual({ min: 240, max: 240 })
})
