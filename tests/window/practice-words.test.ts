import { describe, expect, test } from 'vitest'
import { isNamed } from '../../app/window/practice/case-names'
import { wordListOf } from '../../app/window/practice/limit-choices'
import { leavesOf } from '../../app/window/practice/limit-words'
import { samples } from '../../core/detail'
import { practices, type Row } from '../../core/practice'
import { rules } from '../../core/rules'

const [sample] = samples
if (sample === undefined) throw new Error('there is no sample')

/** What of a row has no name of its own: keys and words of its case, keys and words of what it gives. */
const unnamed = (limit: string, row: Row): readonly string[] => {
  const inCase = Object.entries(row.when).flatMap(([key, asked]) => {
    const words: readonly (string | undefined)[] = Array.isArray(asked) ? asked.map(String) : [undefined]
    return words.filter(word => !isNamed('case', key, word)).map(word => `${limit}: when ${key} ${word}`)
  })
  const { then } = row
  if (typeof then === 'string') return isNamed('outcome', undefined, then) ? inCase : [...inCase, `${limit}: ${then}`]
  const leaves = leavesOf(then).filter(it => !isNamed('outcome', it.key)).map(it => `${limit}: ${it.key}`)
  const rule = rules.find(it => it.limit === limit)
  // a list of words that a field knows is said by the names of that field
  const list = rule && wordListOf(sample.project, rule, then)
  const words = Object.entries(then).flatMap(([key, value]) => {
    if (typeof value === 'number' || (typeof value === 'object' && !Array.isArray(value)) || key === list?.key) return []
    const all: readonly unknown[] = Array.isArray(value) ? value : [value]
    return all.filter(word => !isNamed('outcome', key, String(word))).map(word => `${limit}: ${key} ${String(word)}`)
  })
  return [...inCase, ...leaves, ...words]
} // prettier-ignore

describe.each(practices.map(it => [it.id, it] as const))('the rows of %s', (_, practice) => {
  test('are said in names, in both languages', () => {
    const rows = Object.entries(practice.limits).flatMap(([limit, all]) =>
      (all ?? []).flatMap(row => unnamed(limit, row)),
    )
    expect([...new Set(rows)]).toEqual([])
  })
})
