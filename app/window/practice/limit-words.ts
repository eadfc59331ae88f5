import type { Row } from '../../../core/practice'
import { writeNumber } from '../../../core/units'
import { same, type Words } from '../../../core/words'
import { nameInCase, nameInOutcome, nameOfKey } from './case-names'

const unitOfEnd = [
  ['_mm_m', 'mm/m'],
  ['_mm', 'mm'],
  ['_deg', '°'],
  ['_pct', '%'],
  ['_kg_m2', 'kg/m²'],
  ['_N_mm2', 'N/mm²'],
] as const

/** The unit that the name of a key says: of `share_pct.min` that of its group. */
export const unitOfKey = (key: string): string =>
  unitOfEnd.find(([end]) => (key.split('.')[0] ?? key).endsWith(end))?.[1] ?? ''

/** When a row holds, in words: nothing where it always does. */
export const caseOf = (row: Row): Words => {
  const parts = Object.entries(row.when).map(([key, asked]) => conditionOf(key, asked))
  return { en: parts.map(it => it.en).join('; '), de: parts.map(it => it.de).join('; ') }
}

const conditionOf = (key: string, asked: unknown): Words => {
  const name = nameOfKey(key)
  if (Array.isArray(asked)) {
    const values = asked.map(it => nameInCase(key, String(it)))
    return {
      en: `${name.en}: ${values.map(it => it.en).join(', ')}`,
      de: `${name.de}: ${values.map(it => it.de).join(', ')}`,
    }
  }
  // The only other form of a condition is a half-open range.
  const { above, upTo } = asked as { readonly above?: number; readonly upTo?: number }
  const unit = unitOfKey(key)
  const range = (language: 'en' | 'de', over: string, to: string) =>
    [
      above === undefined ? '' : `${over} ${writeNumber(above, language)}`,
      upTo === undefined ? '' : `${to} ${writeNumber(upTo, language)}`,
    ]
      .filter(Boolean)
      .join(' ') + (unit ? ` ${unit}` : '')
  return { en: `${name.en} ${range('en', 'above', 'up to')}`, de: `${name.de} ${range('de', 'über', 'bis')}` }
}

/** A number in what a limit gives, and where it stands. */
export type Leaf = { readonly path: readonly string[]; readonly key: string; readonly value: number }

/** All numbers of what a limit gives. */
export const leavesOf = (then: unknown, path: readonly string[] = []): readonly Leaf[] => {
  if (typeof then === 'number') return [{ path, key: path.join('.'), value: then }]
  if (typeof then !== 'object' || then === null || Array.isArray(then)) return []
  return Object.entries(then).flatMap(([key, value]) => leavesOf(value, [...path, key]))
}

/** What a limit gives that is no number, in words. */
export const wordsOf = (then: unknown): Words => {
  if (typeof then === 'string') return nameInOutcome(undefined, then)
  if (typeof then !== 'object' || then === null) return same('')
  const parts = Object.entries(then).flatMap(([key, value]) =>
    typeof value === 'number' || (typeof value === 'object' && !Array.isArray(value))
      ? []
      : [
          {
            name: nameOfKey(key),
            values: (Array.isArray(value) ? value : [value]).map(it => nameInOutcome(key, String(it))),
          },
        ],
  )
  return {
    en: parts.map(it => `${it.name.en}: ${it.values.map(one => one.en).join(', ')}`).join('; '),
    de: parts.map(it => `${it.name.de}: ${it.values.map(one => one.de).join(', ')}`).join('; '),
  }
}

/** What a limit gives with one of its numbers changed. */
export const withLeaf = (then: unknown, [key, ...rest]: readonly string[], to: number): unknown => {
  if (key === undefined) return to
  if (typeof then !== 'object' || then === null) return then
  return Object.fromEntries(
    Object.entries(then).map(([name, value]) => [name, name === key ? withLeaf(value, rest, to) : value]),
  )
}
