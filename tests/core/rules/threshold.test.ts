import { describe, expect, it } from 'vitest'
import { applyEdits, beginWith, type Edit, type Project, starters } from '../../../core/detail'
import { check, findingRows } from '../../../core/rules'
import { specified } from '../../../core/units'

const opening = (project: Project): string => Object.keys(project.openings)[0] ?? ''

/** The wall of concrete with cladding, a door in it with its levels over the finished floor. */
const aDoor = (practice: string, told: Readonly<Record<string, number | string>>): Project => {
  const plan = starters.find(it => it.id === 'clad-concrete')
  if (plan === undefined) throw new Error('there is no such wall')
  const begun = beginWith(plan, practice)
  const edits = Object.entries(told).map(([key, value]): Edit => ({
    kind: 'state',
    at: { field: `opening.threshold-${key}`, part: opening(begun) },
    to: specified(value) as Extract<Edit, { kind: 'state' }>['to'],
  }))
  const stated = applyEdits(begun, edits)
  if (!stated.ok) throw new Error(stated.problems[0].say.en)
  return stated.value
}

const found = (project: Project, rule: string) => check(project).findings.find(it => it.rule === rule)

/** actual, required and margin as they are read */
const read = (project: Project, rule: string): readonly string[] => {
  const it = found(project, rule)
  return it ? findingRows(it).slice(0, 3).map(row => row.text.en) : [] // prettier-ignore
}

const stepFree = { top: 15, outside: 0 }

describe('a door with its outside as high as the floor', () => {
  it('misses 135 of 150 mm of upstand, and both figures are said', () => {
    const project = aDoor('DE', stepFree)
    expect(read(project, 'threshold-upstand')).toEqual(['15\u00a0mm', '≥\u00a0150\u00a0mm', '−135\u00a0mm'])
  })

  it('is not cured by a channel alone: what cures it is the whole step-free work, which is then recorded', () => {
    const project = aDoor('DE', stepFree)
    const finding = found(project, 'threshold-upstand')
    const changes = finding && 'remedies' in finding ? finding.remedies.flatMap(it => (it.kind === 'change' ? [it] : [])) : [] // prettier-ignore
    expect(changes.map(it => it.say.en)).toEqual([expect.stringMatching(/step-free: channel, fall away/)])
    const cured = applyEdits(project, changes[0]?.edits ?? [])
    if (!cured.ok) throw new Error(cured.problems[0].say.en)
    expect(cured.value.openings[opening(project)]?.told?.thresholdDrain).toEqual(specified('special'))
    // Nobody calls that plainly met: who plans the waterproofing stands for it.
    expect(found(cured.value, 'threshold-upstand')?.verdict).toBe('refer')
  })

  // DE 150 and 50 published, AT and UK from memory, as the rows of the practices say.
  it.each([
    ['DE', { top: 150, outside: 0 }, 'met'],
    ['DE', { top: 149, outside: 0 }, 'not-met'],
    ['DE', { top: 20, outside: -30, drain: 'channel' }, 'met'],
    ['DE', { top: 20, outside: -29, drain: 'channel' }, 'not-met'],
    ['AT', { top: 100, outside: -50 }, 'met'],
    ['AT', { top: 60, outside: 0, drain: 'channel' }, 'refer'],
    ['UK', { top: 15, outside: 0, drain: 'channel' }, 'met'],
    ['UK', { top: 15, outside: 0 }, 'not-met'],
    ['DE', { top: 20 }, 'unknown'],
  ] as const)('%s, %j: the upstand is %s', (practice, told, verdict) => {
    expect(found(aDoor(practice, told), 'threshold-upstand')?.verdict).toBe(verdict)
  })

  it.each([
    ['DE', { top: 20, outside: 0 }, 'met'],
    ['DE', { top: 21, outside: 0 }, 'not-met'],
    ['DE', { top: 10, outside: -11 }, 'not-met'],
    ['UK', { top: 16, outside: 0 }, 'not-met'],
  ] as const)('%s, %j, step-free: the step is %s', (practice, told, verdict) => {
    expect(found(aDoor(practice, { ...told, 'step-free': 'yes' }), 'threshold-step')?.verdict).toBe(verdict)
  })

  it('is asked where its surface falls, and a window is asked nothing of that', () => {
    expect(found(aDoor('DE', stepFree), 'threshold-fall')?.verdict).toBe('unknown')
    expect(found(aDoor('DE', { ...stepFree, fall: 'towards' }), 'threshold-fall')?.verdict).toBe('not-met')
    const rules = check(aDoor('DE', {})).findings.map(it => it.rule)
    expect(rules.filter(it => it.startsWith('threshold-'))).toEqual([])
  })
})
