import { describe, expect, test } from 'vitest'
import type { Opening, Project } from '../../../core/detail'
import { check, type Finding } from '../../../core/rules'
import { measured, specified } from '../../../core/units'
import { aJoint, type Wanted } from '../../given/a-joint'

/** An opening as it is wanted, with further members of its own. */
const openingWith = (more: Partial<Opening>, it: Wanted = {}): Project => {
  const project = aJoint(it)
  const opening = project.openings['opening-1']
  if (!opening) throw new Error('no opening')
  return { ...project, openings: { 'opening-1': { ...opening, ...more } } }
}
const withBase = (material: string, asked: Opening['asked']): Project => {
  const project = openingWith(asked ? { asked } : {})
  const wall = project.walls['wall-1']
  if (!wall) throw new Error('no wall')
  const [first, ...more] = wall.layers
  const layers = [
    first,
    ...more.map(it => (it.duties.includes('bearing') ? { ...it, material } : it)),
  ] as const
  return { ...project, walls: { 'wall-1': { ...wall, layers } } }
}
const found = (project: Project, rule: string): Finding | undefined =>
  check(project).findings.find(it => it.rule === rule)
const screws = aJoint().openings['opening-1']?.fixings ?? []

describe('what is never plainly met', () => {
  const known = { baseKnown: specified('yes' as const) }
  const unknown = { baseKnown: specified('no' as const) }

  test('solid masonry of known strength is met, of unknown strength it is referred with the same figures', () => {
    expect(found(withBase('calcium-silicate-1800', known), 'embedment')?.verdict).toBe('met')
    expect(found(withBase('calcium-silicate-1800', {}), 'embedment')?.verdict).toBe('refer')
    const referred = found(withBase('calcium-silicate-1800', unknown), 'edge-distance')
    expect(referred).toMatchObject({
      verdict: 'refer',
      compared: { actual: { min: 60 }, required: { min: 60 } },
      handOver: [{ en: expect.stringContaining('pull tests') }],
    })
  })

  test('hollow, aerated and lightweight units are referred even where their strength is known', () => {
    for (const base of ['hollow-brick-1200', 'lightweight-block-1200'])
      expect(found(withBase(base, known), 'embedment')?.verdict).toBe('refer')
  })

  test('what is not met stays not met in weak masonry', () => {
    expect(found(withBase('aerated-concrete-500', known), 'edge-distance')?.verdict).toBe('not-met')
  })

  test('concrete needs no word on its strength', () => {
    expect(found(withBase('reinforced-concrete', {}), 'embedment')?.verdict).toBe('met')
  })
})

describe('a part that has to stay', () => {
  const sill = {
    id: 'sill-1',
    material: 'granite',
    thickness_mm: specified(40),
    slope_deg: specified(3),
    overhang_mm: specified(40),
    upstand_mm: specified(0),
  }
  test('is referred where it would not be met', () => {
    expect(found(openingWith({ sill }), 'sill-fall')?.verdict).toBe('not-met')
    expect(found(openingWith({ sill, stays: ['sill-1'] }), 'sill-fall')?.verdict).toBe('refer')
  })
})

describe('a frame that is wider than its opening', () => {
  const survey = (width: number) => ({
    widths_mm: { top: measured(width), middle: measured(width), bottom: measured(width) },
  })
  test('is named with its sides, and a smaller frame cures it', () => {
    const report = check(openingWith({ survey: survey(1228) }))
    const sides = report.findings
      .filter(it => it.rule === 'joint-there' && it.verdict === 'not-met')
      .map(it => it.where.side)
    expect(sides).toEqual(['left', 'right'])
    const one = report.findings.find(it => it.rule === 'joint-there')
    const changes = one && 'remedies' in one ? one.remedies.filter(it => it.kind === 'change') : []
    expect(
      changes.flatMap(it => it.edits.map(edit => (edit.kind === 'state' ? edit.at.field : edit.kind))),
    ).toContain('opening.width')
  })
})

describe('an element that has to guard', () => {
  const asked = (more: Opening['asked']) => found(openingWith({ asked: more ?? {} }), 'guarding')
  test('is not met by a spacing table, and never plainly met', () => {
    const yes = specified('yes' as const)
    expect(asked({ guarding: yes, guardProof: specified('no') })?.verdict).toBe('not-met')
    expect(asked({ guarding: yes, guardProof: yes })?.verdict).toBe('refer')
    expect(asked({ guarding: yes })?.verdict).toBe('refer')
  })
  test('follows from a low sill beside a fall, and does not arise over a high one', () => {
    expect(asked({ sillHeight_mm: specified(700), fall_mm: specified(4000) })?.verdict).toBe('refer')
    expect(asked({ sillHeight_mm: specified(850), fall_mm: specified(4000) })).toBeUndefined()
    expect(asked({ sillHeight_mm: specified(850), fall_mm: specified(13_000) })?.verdict).toBe('refer')
    expect(asked({ guarding: specified('no') })).toBeUndefined()
  })
  test('is unknown while nobody says how high the sill is, by name', () => {
    expect(asked({ fall_mm: specified(4000) })).toMatchObject({
      verdict: 'unknown',
      missing: [{ field: 'opening.guarding' }, { field: 'opening.sill-height' }],
    })
  })
})

test('rules about the whole opening say so: no side, and the part that they are about', () => {
  const { findings } = check(openingWith({}))
  expect(findings.find(it => it.rule === 'embedment')?.where).toEqual({
    opening: 'opening-1',
    part: 'fixing-1',
  })
  expect(findings.find(it => it.rule === 'support-blocks')?.where).toEqual({ opening: 'opening-1' })
  const sides = findings.filter(it => it.rule === 'fixing-spacing').map(it => it.where)
  expect(sides).toHaveLength(4)
  expect(sides).toContainEqual({ opening: 'opening-1', side: 'sill' })
})

test('an opening of which no fixing is stated is unknown, by name', () => {
  expect(found(openingWith({ fixings: [] }), 'embedment')).toMatchObject({
    verdict: 'unknown',
    missing: [{ field: 'opening.fixings', part: 'opening-1' }],
  })
})

test('a rule about fixings answers for each kind of them', () => {
  const [first] = screws
  if (!first) throw new Error('no fixing')
  const second = { ...first, id: 'fixing-2', embedment_mm: specified(30) }
  const answers = check(openingWith({ fixings: [first, second] })).findings.filter(
    it => it.rule === 'embedment',
  )
  expect(answers.map(it => [it.where.part, it.verdict]).toSorted()).toEqual([
    ['fixing-1', 'met'],
    ['fixing-2', 'not-met'],
  ])
})

test('too few fixings are cured by as many as are needed, on their own side', () => {
  const [first] = screws
  if (!first) throw new Error('no fixing')
  const few = { ...first, counts: { ...first.counts, left: specified(2) } }
  const it = found(
    openingWith({ fixings: [few], height_mm: specified(2300) }, { height_mm: specified(2300) }),
    'fixing-spacing',
  )
  expect(it).toMatchObject({ verdict: 'not-met', where: { side: 'left' } })
  expect(it && 'remedies' in it && it.remedies[0]).toMatchObject({
    kind: 'change',
    edits: [{ at: { field: 'fixing.count-left', part: 'fixing-1' }, to: { value: 4 } }],
  })
})
