import { describe, expect, test } from 'vitest'
import { areaOf, lengthOf } from '../../../core/geometry'
import { type AnySeal, arrange, type Bay, kindOf, sealKinds } from '../../../core/seals'
import { specified } from '../../../core/units'

const bay = (width_mm: number, from_mm = 0, to_mm = 78): Bay => ({
  width_mm: { min: width_mm - 3, max: width_mm + 3 },
  from_mm,
  to_mm,
  wallFace: [
    [0, from_mm],
    [0, to_mm],
  ],
  frameFace: [
    [width_mm, from_mm],
    [width_mm, to_mm],
  ],
  flank: [
    [0, to_mm],
    [0, 175],
    [-1000, 175],
  ],
})

const freshOnes = sealKinds.flatMap(kind =>
  kind.planes.map(plane => [kind.kind, plane, kind.fresh('seal-1', plane, bay(14))] as const),
)

describe.each(freshOnes)('a fresh %s in the %s plane', (_, plane, seal) => {
  const kind = kindOf(seal)

  test('is what its own schema takes', () => {
    expect(kind.schema.safeParse(seal).success).toBe(true)
    expect(seal.plane).toBe(plane)
  })

  test.each([6, 14, 22, 40])('lays closed outlines that lie in a bay of %d mm', width_mm => {
    const { regions } = kind.lay(seal, bay(width_mm))
    for (const region of regions) {
      expect(areaOf(region.outline), region.id).toBeGreaterThan(0)
      for (const [x, y] of region.outline) {
        expect(x).toBeGreaterThanOrEqual(-1e-9)
        expect(x).toBeLessThanOrEqual(width_mm + 1e-9)
        expect(Math.abs(y)).toBeLessThan(400)
      }
    }
  })

  test('has grips that name values of its own and point along one axis', () => {
    for (const grip of kind.grips(seal, bay(14))) {
      expect(kind.values.map(it => it.id)).toContain(grip.field)
      expect(Math.hypot(...grip.along)).toBeCloseTo(1)
    }
  })

  test('needs something of a metre of joint, in proportion to its length', () => {
    const one = kind.needs(seal, bay(14), 1000)
    const two = kind.needs(seal, bay(14), 2000)
    expect(one.length).toBeGreaterThan(0)
    one.forEach((it, i) => expect(two[i]?.amount).toBeCloseTo(2 * it.amount))
  })

  test('is named in both languages', () => {
    expect([kind.name.en, kind.name.de, kind.called(seal).en, kind.called(seal).de]).not.toContain('')
  })
})

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
    const [line] = kindOf(seal).lay(seal, {
      ...bay(14),
      flank: [
        [0, 78],
        [0, 100],
        [-1000, 100],
      ],
    }).lines
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

describe('seals in one joint', () => {
  const seals = (['outer', 'middle', 'inner'] as const).map((plane, i) => {
    const kind = sealKinds.find(it => it.planes.includes(plane))
    if (kind === undefined) throw new Error(`nothing serves the ${plane} plane`)
    return kind.fresh(`seal-${i}`, plane, bay(14))
  })

  test('share its depth: the outer one begins outside, the inner one ends inside, the fill takes the rest', () => {
    const [outer, middle, inner] = arrange(seals, bay(14))
    expect(outer?.bay.from_mm).toBe(0)
    expect(inner?.bay.to_mm).toBe(78)
    expect(middle?.bay.from_mm).toBeGreaterThan(0)
    expect(middle?.bay.to_mm).toBe(78)
  })

  test('are laid alike wherever the joint lies', () => {
    const here = arrange(seals, bay(14)).map(it => it.bay.from_mm)
    const there = arrange(seals, bay(14, 100, 178)).map(it => it.bay.from_mm - 100)
    there.forEach((from_mm, i) => expect(from_mm).toBeCloseTo(here[i] ?? Number.NaN))
  })
})
