import { describe, expect, test } from 'vitest'
import { areaOf } from '../../../core/geometry'
import { arrange, kindOf } from '../../../core/seals'
import { specified } from '../../../core/units'
import { aBay as bay, ownEnd } from '../../given/a-bay'

describe('a multifunction tape', () => {
  const kind = kindOf({ kind: 'multifunction-tape' })
  const seal = kind.fresh('s', 'middle', bay(14))

  test('closes all three planes as one body', () => {
    expect(kind.serves(seal)).toEqual(['outer', 'middle', 'inner'])
    expect(arrange([seal], bay(14))).toHaveLength(1)
  })

  test('is chosen as wide as the frame covers, with a printed range that holds the joint', () => {
    expect(seal['width_mm']).toEqual({ value: 74, basis: 'assumed' })
    expect(kind.takes(seal)).toEqual({ by: 'range', joint_mm: { min: 10, max: 20 } })
  })

  test('is graded over its width: the third at the room side is impregnated tighter', () => {
    const areas = kind.lay(seal, bay(14)).regions.map(it => [it.id, areaOf(it.outline)] as const)
    expect(areas.map(([id]) => id)).toEqual(['s.outer', 's.inner'])
    expect(areas[0]?.[1]).toBeCloseTo((14 * 74 * 2) / 3)
    expect(areas[1]?.[1]).toBeCloseTo((14 * 74) / 3)
  })

  test('is tighter to vapour in its inner zone than in its outer one', () => {
    const [inner, outer] = [kind.sd_m(seal, 'inner'), kind.sd_m(seal, 'outer')]
    expect(inner?.winter.min).toBeGreaterThanOrEqual(outer?.winter.max ?? Infinity)
  })
})

describe('what closes no plane', () => {
  test.each(['plaster-stop-bead', 'render-stop-bead'])('%s only ends a finish', name => {
    const kind = kindOf({ kind: name })
    expect(kind.serves(kind.fresh('s', kind.planes[0], bay(14)))).toEqual([])
  })

  test.each(['plaster-stop-bead', 'render-stop-bead'])(
    '%s fills the strip between finish and frame',
    name => {
      const kind = kindOf({ kind: name })
      const [plane] = kind.planes
      const { regions } = kind.lay(kind.fresh('s', plane, bay(14)), bay(14))
      const strip = bay(14).ends[ownEnd(plane)].stop ?? []
      expect(regions.reduce((sum, it) => sum + areaOf(it.outline), 0)).toBeCloseTo(areaOf(strip))
      const corners = regions.flatMap(it => it.outline.map(String))
      expect(corners).toEqual(expect.arrayContaining(strip.map(String)))
      // the soft tape lies on the frame
      const tape = regions.find(it => it.id === 's.tape')
      expect(tape?.outline.some(([, y]) => y === (plane === 'outer' ? 0 : 78))).toBe(true)
    },
  )

  test('a render stop bead tested against driving rain closes the outer plane', () => {
    const kind = kindOf({ kind: 'render-stop-bead' })
    const seal = kind.fresh('s', 'outer', bay(14))
    expect(kind.serves({ ...seal, tested: specified('yes') })).toEqual(['outer'])
    expect(kind.serves({ ...seal, tested: specified('no') })).toEqual([])
  })

  test('a liquid-applied membrane closes a joint on a carrier only', () => {
    const kind = kindOf({ kind: 'liquid-membrane' })
    const seal = kind.fresh('s', 'inner', bay(14))
    expect(kind.serves({ ...seal, carrier: specified('fleece') })).toEqual(['inner'])
    expect(kind.serves({ ...seal, carrier: specified('none') })).toEqual([])
  })
})
