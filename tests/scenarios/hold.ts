import { expect, test } from 'vitest'
import { type Project, samples } from '../../core/detail'
import { type Side, sides } from '../../core/kinds'
import { check, type Finding, type Verdict } from '../../core/rules'

/** Where an expert looked: a side, both jambs, every side, or the opening as a whole. */
type Where = Side | 'jambs' | 'jambs and head' | 'all sides' | 'whole'

/**
 * What an expert found by hand: rule, place, verdict, and the numbers of it, each within one part in a hundred:
 * what was compared, and lines of the sum.
 */
export type Expected = readonly [
  rule: string,
  where: Where,
  verdict: Verdict | 'not-applicable',
  ...numbers: number[],
]

/** Holds the report of a sample to what an expert found. */
export const holds = (file: string, expected: readonly Expected[]): void => {
  const report = check(sampleOf(file))
  const rows = expected.map(([rule, where, verdict, ...numbers]) => ({ rule, where, verdict, numbers }))
  test.each(rows)('$rule, $where: $verdict', ({ rule, where, verdict, numbers }) => {
    for (const side of sidesOf[where]) {
      const found = report.findings.filter(it => it.rule === rule && isAt(it, side))
      if (verdict === 'not-applicable') {
        expect(found).toEqual([])
        expect(report.notApplicable.some(it => it.rule === rule && isAt(it, side))).toBe(true)
        continue
      }
      expect([...new Set(found.map(it => it.verdict))]).toEqual([verdict])
      for (const number of numbers)
        for (const it of found)
          expect(
            numbersIn(it).some(one => isNear(one, number)),
            `${number} in ${numbersIn(it).join(', ')}`,
          ).toBe(true)
    }
  })
}

/** The report of a sample has no rule that is not met beside those that are listed. */
export const breaksOnly = (file: string, rules: readonly string[]): void =>
  test('nothing else is not met', () => {
    const broken = check(sampleOf(file)).findings.filter(it => it.verdict === 'not-met')
    expect([...new Set(broken.map(it => it.rule))].toSorted()).toEqual([...rules].toSorted())
  })

/**
 * One value of the opening, multiplied, changes what is found: a finding that nothing can move holds nothing. The value
 * is found by its way through the opening.
 */
export const spoiled = (
  file: string,
  way: readonly string[],
  by: number,
  [rule, side]: readonly [rule: string, side: Side | undefined],
): void =>
  test(`${way.join('.')} × ${by} is seen by ${rule}`, () => {
    const project = sampleOf(file)
    const verdicts = (it: Project) =>
      check(it)
        .findings.filter(one => one.rule === rule && isAt(one, side))
        .map(one => one.verdict)
    const openings = Object.fromEntries(
      // What has one value changed is an opening as before.
      Object.values(project.openings).map(it => [it.id, multiplied(it, way, by) as typeof it]),
    )
    expect(verdicts({ ...project, openings })).not.toEqual(verdicts(project))
  })

const multiplied = (it: unknown, [key, ...way]: readonly string[], by: number): unknown => {
  if (typeof it !== 'object' || it === null) throw new Error('there is no such value')
  if (key === undefined) return 'value' in it ? { ...it, value: Number(it.value) * by } : it
  return { ...it, [key]: multiplied(Reflect.get(it, key), way, by) }
}

export const sampleOf = (file: string): Project => {
  const found = samples.find(it => it.file === file)
  if (!found) throw new Error(`there is no sample ${file}`)
  return found.project
}

const sidesOf: Readonly<Record<Where, readonly (Side | undefined)[]>> = {
  head: ['head'],
  left: ['left'],
  right: ['right'],
  sill: ['sill'],
  jambs: ['left', 'right'],
  'jambs and head': ['left', 'right', 'head'],
  'all sides': sides,
  whole: [undefined],
}

const isAt = ({ where }: Pick<Finding, 'where'>, side: Side | undefined): boolean =>
  side === undefined || where.side === side

const numbersIn = (it: Finding): readonly number[] => {
  const compared = 'compared' in it ? it.compared : undefined
  const amounts = compared?.kind === 'amount' ? [compared.actual.min, compared.actual.max] : []
  const required =
    compared?.kind === 'amount' ? [compared.required.min, compared.required.max].flatMap(one => one ?? []) : []
  return [...amounts, ...required, ...it.sum.map(one => one.value)]
} // prettier-ignore

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= 0.01 * Math.abs(b) + 1e-9
