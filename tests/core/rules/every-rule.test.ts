import { describe, expect, test } from 'vitest'
import { fieldOf } from '../../../core/detail'
import { practice, practices } from '../../../core/practice'
import { rules, verdicts } from '../../../core/rules'
import type { Words } from '../../../core/words'

const isSaid = (it: Words): boolean => it.en.trim() !== '' && it.de.trim() !== '' && it.en !== it.de

describe.each(rules)('rule $id', rule => {
  test.each(rule.examples)('$when.en: $verdict ($practice)', example => {
    const under = practice(example.practice)
    if (!under) throw new Error(`no practice ${example.practice}`)
    expect(example.found(under)).toBe(example.verdict)
  })

  test('shows a case that is met and one that is not', () => {
    const shown = rule.examples.map(it => it.verdict)
    // What is never plainly met shows a case that is referred with its figures.
    expect(shown).toContain(rule.isCautious && !shown.includes('met') ? 'refer' : 'met')
    // What is only ever handed to somebody else shows that.
    const isOnlyReferred = practices.every(it =>
      (it.limits[rule.limit] ?? []).every(row => row.ifBroken === 'refer'),
    )
    expect(shown.some(it => it === 'not-met' || it === 'advice' || (isOnlyReferred && it === 'refer'))).toBe(
      true,
    )
    expect(shown.every(it => verdicts.includes(it))).toBe(true)
  })

  test('speaks both languages, in sentences, calmly', () => {
    for (const it of [rule.title, rule.says, rule.why, ...rule.examples.map(one => one.when)]) {
      expect(isSaid(it), it.en).toBe(true)
      expect(it.en + it.de).not.toContain('!')
    }
    for (const it of [rule.says.en, rule.says.de, rule.why.en, rule.why.de])
      expect(it.endsWith('.')).toBe(true)
  })

  test('reads values that have a name, and fields that exist', () => {
    expect(rule.reads.length).toBeGreaterThan(0)
    for (const it of rule.reads) {
      expect(isSaid(it.name), it.id).toBe(true)
      // A reading that is a field of the model has a unit; one that is computed has none.
      if ('unit' in it) expect(fieldOf(it.id)).toBe(it)
    }
  })

  test('finds its limit in some practice', () => {
    expect(practices.some(it => it.limits[rule.limit] !== undefined)).toBe(true)
  })
})

test('every rule is listed once', () => {
  expect(new Set(rules.map(it => it.id)).size).toBe(rules.length)
})
