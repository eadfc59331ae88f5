import { describe, expect, it } from 'vitest'
import { type Project, applyEdits } from '../../../core/detail'
import { practiceOf } from '../../../core/practice'
import { type Finding, check, fieldName } from '../../../core/rules'
import { specified } from '../../../core/units'
import { type PhysicsOf, physicsDesk } from '../../../core/vapour'
import { aSample } from '../../given/a-sample'

const asked = (project: Project, physics?: PhysicsOf) => check(project, practiceOf(project.practice), physics)
const ours = ['surface-criterion', 'joint-dries']
const of = (rule: string, side: string) => (it: Finding) => it.rule === rule && it.where.side === side

describe('rules on heat and vapour', () => {
  const { project } = aSample('guard-in-aerated-concrete')
  const report = asked(project, physicsDesk())

  it('are asked of every zone where somebody solves them', () => {
    const sides = ['head', 'left', 'right', 'sill']
    for (const rule of ours)
      expect(report.findings.filter(it => it.rule === rule).map(it => it.where.side).toSorted()).toEqual(sides) // prettier-ignore
  })

  it('do not apply where nobody does, and change no other verdict', () => {
    const without = asked(project)
    expect(without.findings.filter(it => ours.includes(it.rule))).toEqual([])
    expect(
      new Set(without.notApplicable.filter(it => ours.includes(it.rule)).map(it => it.because.en)),
    ).toEqual(new Set(['heat is not solved in this check']))
    const others = report.findings.filter(it => !ours.includes(it.rule))
    expect(others.map(it => [it.rule, it.where, it.verdict])).toEqual(without.findings.map(it => [it.rule, it.where, it.verdict])) // prettier-ignore
  })

  it('are unknown while the answer is worked out, and name what is waited for', () => {
    const waiting = asked(project, () => undefined).findings.filter(it => ours.includes(it.rule))
    expect(waiting.map(it => it.verdict)).toEqual(waiting.map(() => 'unknown'))
    for (const it of waiting) {
      const [missing] = it.verdict === 'unknown' ? it.missing : []
      expect(missing && fieldName(missing).en).toMatch(/by solving the heat flow|by its planes/)
    }
  })

  it('find the cold sill of a window far out in its leaf, and further in cures it', () => {
    const sill = report.findings.find(of('surface-criterion', 'sill'))
    if (sill?.verdict !== 'not-met') throw new Error('the sill is warm')
    const changes = sill.remedies.filter(it => it.kind === 'change')
    expect(changes.some(it => it.say.en.startsWith('Frame '))).toBe(true)
    for (const { edits } of changes) {
      const cured = applyEdits(project, edits)
      if (!cured.ok) throw new Error(JSON.stringify(cured.problems))
      expect(asked(cured.value, physicsDesk()).findings.find(of('surface-criterion', 'sill'))?.verdict).toBe(
        'met',
      )
    }
  })

  it('rest on the air that nobody stated', () => {
    const head = report.findings.find(of('surface-criterion', 'head'))
    expect(head?.restsOn.map(it => it.field)).toContain('site.outside-temperature')
  })
})

describe('the limit of a surface', () => {
  const { project, place } = aSample('right-jamb')
  const found = (...values: readonly (readonly [string, number | string])[]) => {
    const edits = values.map(([field, value]) => ({
      kind: 'state' as const,
      at: { field, part: place.opening },
      to: typeof value === 'number' ? specified(value) : specified(value),
    }))
    const [first, ...more] = edits
    const stated = first ? applyEdits(project, [first, ...more]) : { ok: true as const, value: project }
    if (!stated.ok) throw new Error(JSON.stringify(stated.problems))
    const finding = asked(stated.value, physicsDesk()).findings.find(of('surface-criterion', 'left'))
    return finding && 'compared' in finding && finding.compared?.kind === 'amount'
      ? finding.compared.required.min
      : undefined
  }

  it.each([
    ['a dwelling in the air of the standard keeps 0.70', [], 0.7],
    ['the same air, stated, keeps 80 %: 12.62 °C, 0.705', [['opening.inside-humidity', 50]], 0.705],
    ['60 % in the room ask for 0.817', [['opening.inside-humidity', 60]], 0.8174],
    ['an office is judged by its own drier air', [['opening.room-use', 'office']], 0.5222],
  ] as const)('%s', (_, values, least) => {
    expect(Math.abs((found(...values) ?? NaN) - least)).toBeLessThan(6e-4)
  })
})
