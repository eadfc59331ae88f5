import { describe, expect, test } from 'vitest'
import { areaOf } from '../../../core/geometry'
import { material } from '../../../core/materials'
import { arrange, kindOf, sealKinds } from '../../../core/seals'
import { exactly, isInside, specified } from '../../../core/units'
import { aBay as bay, ownEnd } from '../../given/a-bay'

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
