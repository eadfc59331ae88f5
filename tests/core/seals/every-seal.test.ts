import { describe, expect, test } from 'vitest'
import { areaOf, lengthOf } from '../../../core/geometry'
import type { Plane } from '../../../core/kinds'
import { material } from '../../../core/materials'
import { type AnySeal, arrange, type Bay, type End, kindOf, sealKinds } from '../../../core/seals'
import { exactly, isInside, specified } from '../../../core/units'

/** A joint 78 deep in a wall 175 thick, lined by 20 inside, rendered by 20 outside, its flank at x = 0. */
const bay = (width_mm: number, from_mm = 0, to_mm = 78): Bay => ({
  width_mm: { min: width_mm - 3, max: width_mm + 3 },
  from_mm,
  to_mm,
  wallFace: [[0, from_mm], [0, to_mm]],
  frameFace: [[width_mm, from_mm], [width_mm, to_mm]],
  ends: {
    outer: {
      flank: [[0, from_mm], [0, -60], [-1000, -60]],
      face: [[width_mm + 6, from_mm], [width_mm + 6, -80]],
      stop: [[width_mm, from_mm - 6], [width_mm + 6, from_mm - 6], [width_mm + 6, from_mm], [width_mm, from_mm]],
      free_mm: width_mm + 60,
    },
    inner: {
      flank: [[0, to_mm], [0, 175], [-1000, 175]],
      face: [[width_mm + 6, to_mm], [width_mm + 6, 190]],
      stop: [[width_mm, to_mm], [width_mm + 6, to_mm], [width_mm + 6, to_mm + 6], [width_mm, to_mm + 6]],
      free_mm: width_mm + 16,
    },
  },
}) // prettier-ignore

const freshOnes = sealKinds.flatMap(kind =>
  kind.planes.map(plane => [kind.kind, plane, kind.fresh('seal-1', plane, bay(14))] as const),
)

describe.each(freshOnes)('a fresh %s in the %s plane', (_, plane, seal) => {
  const kind = kindOf(seal)

  test('is what its own schema takes', () => {
    expect(kind.schema.safeParse(seal).success).toBe(true)
    expect(seal.plane).toBe(plane)
  })

  test.each([6, 14, 22, 40])(
    'lays closed outlines in a joint of %d mm, or at the end of it that is its own',
    width_mm => {
      const at = bay(width_mm)
      const own =
        kind.planes.length > 0 && kind.takesDepth(seal, width_mm) === 0 ? at.ends[ownEnd(plane)] : undefined
      const reach = own ? { low: Math.min(0, at.from_mm - 20), high: at.to_mm + 20, wide: own.free_mm } : { low: at.from_mm, high: at.to_mm, wide: width_mm } // prettier-ignore
      const { regions, lines } = kind.lay(seal, at)
      expect(regions.length + lines.length).toBeGreaterThan(0)
      for (const region of regions) {
        expect(areaOf(region.outline), region.id).toBeGreaterThan(0)
        for (const [x, y] of region.outline) {
          expect(x).toBeGreaterThanOrEqual(-1e-9)
          expect(x).toBeLessThanOrEqual(reach.wide + 1e-9)
          expect(y).toBeGreaterThanOrEqual(reach.low - 1e-9)
          expect(y).toBeLessThanOrEqual(reach.high + 1e-9)
        }
      }
    },
  )

  test('has materials that the library knows, and parts of its own', () => {
    const { regions, lines } = kind.lay(seal, bay(14))
    for (const { fill, part } of regions) {
      expect(part).toBe('seal-1')
      if (fill.kind === 'material') expect(material(fill.material), fill.material).toBeDefined()
    }
    for (const line of lines) expect(line.part).toBe('seal-1')
    expect(kind.shows === undefined || material(kind.shows) !== undefined).toBe(true)
  })

  test('closes planes of its joint, or says by none that it only ends a finish', () => {
    const served = kind.serves(seal)
    expect(new Set(served).size).toBe(served.length)
    if (served.length === 1) expect(served).toEqual([plane])
  })

  test('states values and words that its schema takes, and takes back what may be missing', () => {
    for (const value of kind.values) {
      const { min = 1, max = 1 } = value.bounds
      for (const at of [min, max]) {
        const stated = { ...seal, [value.key]: specified(at) }
        expect(kind.schema.safeParse(stated).success, `${value.id} ${at}`).toBe(true)
      }
    }
    for (const choice of kind.choices)
      for (const { value } of choice.choices) {
        const stated = { ...seal, [choice.key]: specified(value) }
        expect(kind.schema.safeParse(stated).success, `${choice.id} ${value}`).toBe(true)
      }
  })

  test('falls back on a value within its bounds and within what products declare', () => {
    for (const { id, bounds, fallback } of kind.values) {
      const it = fallback?.(seal)
      if (it === undefined) continue
      expect(isInside(exactly(it.value), bounds), id).toBe(true)
      if (it.band) expect(it.band.min <= it.value && it.value <= it.band.max, id).toBe(true)
    }
  })

  test('has grips that name values of its own and point along one axis', () => {
    for (const grip of kind.grips(seal, bay(14))) {
      expect(kind.values.map(it => it.id)).toContain(grip.field)
      expect(Math.hypot(...grip.along)).toBeCloseTo(1)
    }
  })

  test('has grips that go as far as their value', () => {
    const at = bay(14)
    kind.grips(seal, at).forEach((grip, i) => {
      const key = kind.values.find(it => it.id === grip.field)?.key ?? ''
      const now = seal[key]
      const value = typeof now === 'object' && typeof now.value === 'number' ? now.value : Number.NaN
      const moved = kind.grips({ ...seal, [key]: specified(value - 1) }, at)[i]
      const by = [(moved?.at[0] ?? 0) - grip.at[0], (moved?.at[1] ?? 0) - grip.at[1]] as const
      expect(by[0] * grip.along[0] + by[1] * grip.along[1], grip.field).toBeCloseTo(-1)
    })
  })

  test('needs something of a metre of joint, in proportion to its length', () => {
    const one = kind.needs(seal, bay(14), 1000)
    const two = kind.needs(seal, bay(14), 2000)
    expect(one.length).toBeGreaterThan(0)
    one.forEach((it, i) => expect(two[i]?.amount).toBeCloseTo(2 * it.amount))
  })

  test('is named in both languages', () => {
    const all = [kind.name, kind.called(seal), ...kind.values.map(it => it.name), ...kind.choices.flatMap(it => [it.name, ...it.choices.map(one => one.name)])] // prettier-ignore
    expect(all.flatMap(it => [it.en, it.de])).not.toContain('')
  })
})

function ownEnd(plane: Plane): 'outer' | 'inner' {
  return plane === 'outer' ? 'outer' : 'inner'
}

test('a name of a value or a word has one key, unit and list of words in every kind', () => {
  const values = new Map<string, string>()
  for (const { id, key, unit } of sealKinds.flatMap(kind => kind.values)) {
    expect(values.get(id) ?? `${key} ${unit}`).toBe(`${key} ${unit}`)
    values.set(id, `${key} ${unit}`)
  }
  const keys = new Map<string, string>()
  for (const { id, key } of sealKinds.flatMap(kind => kind.choices)) {
    expect(keys.get(id) ?? key).toBe(key)
    keys.set(id, key)
  }
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

test('a ground-level sheet has no resistance to vapour until somebody states it', () => {
  const kind = kindOf({ kind: 'ground-sheet' })
  const seal = kind.fresh('s', 'outer', bay(14))
  expect(kind.sd_m(seal, 'outer')).toBeUndefined()
  expect(kind.sd_m({ ...seal, sd_m: specified(240) }, 'outer')?.winter).toEqual({ min: 240, max: 240 })
})

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
