import { describe, expect, test } from 'vitest'
import {
  limitKeys,
  type OwnRow,
  type Practice,
  type Row,
  lookUp,
  practice,
  practiceOf,
  practices,
} from '../../../core/practice'
import { sourceIds, trusts } from '../../../core/sources'

const rowsOf = (it: Practice) =>
  limitKeys.flatMap(key => (it.limits[key] ?? []).map((row: Row) => ({ key, row })))

describe.each(practices)('practice $id', it => {
  test.each(rowsOf(it))('$key has a registered source and a strength in each tier', ({ row }) => {
    for (const tier of row.last ? [row, row.last] : [row]) {
      expect(sourceIds).toContain(tier.cite.source)
      expect(trusts).toContain(tier.cite.trust)
      expect(['not-met', 'advice', 'refer']).toContain(tier.ifBroken)
    }
  })

  // With two of them nobody would know which holds; with none nobody would know whether it was forgotten.
  test.each(limitKeys)('%s has rows, or a reason why it is not asked, or why it has no figure', key => {
    const reasons = [it.notAsked[key], it.noFigure[key]].flatMap(reason => reason ?? [])
    expect(reasons.length + Number((it.limits[key] ?? []).length > 0)).toBe(1)
    for (const reason of reasons) expect(reason.en && reason.de).toBeTruthy()
  })

  test('is found by its name', () => expect(practice(it.id)).toBe(it))
})

test.each(limitKeys)('%s has rows in some practice', key => {
  expect(practices.some(it => (it.limits[key] ?? []).length > 0)).toBe(true)
})

test('the first row that holds is used', () => {
  const first: Row<'bonded-faces'> = {
    when: {},
    then: { faces: 1 },
    cite: { source: 'convention', trust: 'ours' },
    ifBroken: 'advice',
  }
  const de = practiceOf({ id: 'DE', own: [] })
  const both = { ...de, limits: { 'bonded-faces': [first, { ...first, then: { faces: 2 } }] } }
  expect(lookUp(both, 'bonded-faces', {})).toBe(first)
})

const own = (least_mm: number, note: string): OwnRow => ({
  limit: 'least-joint',
  row: {
    when: { frame: ['timber'] },
    then: { least_mm },
    cite: { source: 'own', trust: 'ours' },
    ifBroken: 'not-met',
  },
  note,
})
const timber = { frame: 'timber', reveal: 'butt', length_mm: 1000 } as const

test('the rows of the office come first, signed with its note, in their order', () => {
  const ours = practiceOf({ id: 'DE', own: [own(12, 'after two repairs'), own(14, 'older')] })
  const row = lookUp(ours, 'least-joint', timber)
  expect(row?.then.least_mm).toBe(12)
  expect(row?.cite).toEqual({ source: 'own', clause: 'after two repairs', trust: 'ours' })
  expect(lookUp(ours, 'least-joint', { ...timber, frame: 'pvc-white' })?.then.least_mm).toBe(10)
})

test('an own row asks what the country does not ask', () => {
  const ours = practiceOf({ id: 'UK', own: [own(12, 'export job')] })
  expect(ours.notAsked['least-joint']).toBeUndefined()
  expect(lookUp(ours, 'least-joint', timber)?.then.least_mm).toBe(12)
  expect(practice('UK')?.notAsked['least-joint']).toBeDefined()
})

test('a practice that nobody knows is our fault', () => {
  expect(() => practiceOf({ id: 'XX', own: [] })).toThrow('XX')
})
