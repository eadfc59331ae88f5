import { describe, expect, test } from 'vitest'
import { type FrameMaterial, frameMaterials } from '../../../core/kinds'
import { lookUp, practiceOf } from '../../../core/practice'

const de = practiceOf({ id: 'DE', own: [] })
const at = practiceOf({ id: 'AT', own: [] })
const uk = practiceOf({ id: 'UK', own: [] })

// Largest distance by frame: Germany and Britain from memory; Austria from a supplier's summary of ÖNORM B 5320, which
// names no frame material. Timber under aluminium is held like timber, which is our own convention.
const spacings: readonly (readonly [FrameMaterial, de_mm: number, at_mm: number, uk_mm: number])[] = [
  ['pvc-white', 700, 700, 600],
  ['pvc-coloured', 700, 700, 600],
  ['timber', 800, 700, 600],
  ['aluminium', 800, 700, 600],
]
test.each(spacings)('%s: at most %d mm apart in Germany, %d in Austria, %d in Britain', (frame, ...most_mm) => {
  const given = { frame, burglary: 'no', length_mm: 2000 } as const
  expect([de, at, uk].map(it => lookUp(it, 'fixing-spacing', given)?.then.most_mm)).toEqual(most_mm)
  expect([de, at, uk].map(it => lookUp(it, 'fixing-spacing', given)?.then.least)).toEqual([2, 2, 2])
  expect([de, at, uk].map(it => lookUp(it, 'fixing-spacing', given)?.cite.trust)).toEqual([
    'memory',
    'published',
    'memory',
  ])
}) // prettier-ignore

// An installation note for burglar-resistant elements publishes 600 mm, 150 mm from the corner, 50 to 60 mm deep.
test('600 mm whatever the frame, where burglary is to be resisted', () => {
  for (const it of [de, at, uk])
    for (const frame of frameMaterials)
      expect(lookUp(it, 'fixing-spacing', { frame, burglary: 'yes', length_mm: 400 })?.then).toEqual({
        most_mm: 600,
        least: 2,
      })
  expect(lookUp(de, 'burglary', {})?.then).toEqual({ spacing_mm: 600, corner_mm: 150, embedment_mm: 50 })
  expect([at, uk].map(it => it.noFigure.burglary !== undefined)).toEqual([true, true])
})

test('one fixing is enough on an Austrian side of up to 450 mm, and nowhere else', () => {
  const given = (length_mm: number) => ({ frame: 'timber', burglary: 'no', length_mm }) as const
  expect(lookUp(at, 'fixing-spacing', given(450))?.then.least).toBe(1)
  expect(lookUp(at, 'fixing-spacing', given(451))?.then.least).toBe(2)
  expect([de, uk].map(it => lookUp(it, 'fixing-spacing', given(450))?.then.least)).toEqual([2, 2])
})

describe('the corner distance', () => {
  const given = { frame: 'pvc-white', burglary: 'no' } as const
  test('is 100–150 mm from the inner corner in Germany, from memory', () => {
    const row = lookUp(de, 'fixing-corner', given)
    expect(row?.then).toEqual({ from: 'inner-corner', least_mm: 100, most_mm: 150 })
    expect(row?.cite.trust).toBe('memory')
  })
  test('is 100–200 mm from the inner corner in Austria, published', () => {
    const row = lookUp(at, 'fixing-corner', given)
    expect(row?.then).toEqual({ from: 'inner-corner', least_mm: 100, most_mm: 200 })
    expect(row?.cite.trust).toBe('published')
  })
  test('is 150–250 mm from the outer corner of a British PVC-U frame, and not known of others', () => {
    expect(lookUp(uk, 'fixing-corner', given)?.then).toEqual({ from: 'outer-corner', least_mm: 150, most_mm: 250 })
    expect(lookUp(uk, 'fixing-corner', { frame: 'timber', burglary: 'no' })).toBeUndefined()
  })
}) // prettier-ignore

// Germany and Austria 100–150 mm from the edge of a mullion, Britain at least 150 mm from its axis: all from memory.
test('fixings stand 100–150 mm beside a mullion, in Britain at least 150 mm from its axis', () => {
  for (const it of [de, at])
    expect(lookUp(it, 'fixing-at-member', {})?.then).toEqual({ from: 'edge', least_mm: 100, most_mm: 150 })
  expect(lookUp(uk, 'fixing-at-member', {})?.then).toEqual({ from: 'axis', least_mm: 150 })
})

// Support blocks are published for Austria and by a test institute; distance blocks are recommended in Germany, left
// free in Austria, not asked in Britain.
test('support blocks are asked everywhere, distance blocks only advised in Germany', () => {
  for (const it of [de, at, uk]) expect(lookUp(it, 'support-blocks', {})?.ifBroken).toBe('not-met')
  expect(lookUp(de, 'distance-blocks', {})).toMatchObject({ then: { isOptional: false }, ifBroken: 'advice' })
  expect(lookUp(at, 'distance-blocks', {})?.then.isOptional).toBe(true)
  expect(uk.notAsked['distance-blocks']).toBeDefined()
})

// Sill heights below which an element guards: Germany 0.80 / 0.90 m published, Austria 1.00 / 1.10 m and Britain 0.80 m
// from memory; the taller ones where the fall is more than 12 m.
test.each([
  ['DE', 800, 900],
  ['AT', 1000, 1100],
  ['UK', 800, 800],
])('%s: a sill below %d mm guards, below %d mm where the fall is more than 12 m', (id, low_mm, high_mm) => {
  const it = practiceOf({ id, own: [] })
  expect(lookUp(it, 'guarding', { fall_mm: 12_000 })?.then.sill_mm).toBe(low_mm)
  expect(lookUp(it, 'guarding', { fall_mm: 12_001 })?.then.sill_mm).toBe(high_mm)
})
