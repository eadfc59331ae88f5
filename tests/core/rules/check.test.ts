import { describe, expect, test } from 'vitest'
import { type Project, samples } from '../../../core/detail'
import { type LimitKey, type Practice, practiceOf, type Row } from '../../../core/practice'
import { check, type Finding, marginOfFinding, rules, verdicts, worstFirst } from '../../../core/rules'
import type { AnySeal } from '../../../core/seals'
import { assumed, measured, specified } from '../../../core/units'
import { aJoint, type Wanted } from '../../given/a-joint'

const tape = (values: Record<string, number> = {}): AnySeal => ({
  kind: 'impregnated-tape',
  id: 'tape',
  plane: 'outer',
  least_mm: specified(values['least_mm'] ?? 10),
  most_mm: specified(values['most_mm'] ?? 18),
  width_mm: specified(20),
  sd_m: specified(values['sd_m'] ?? 0.5),
  class: specified('BG1'),
})
const foam: AnySeal = { kind: 'foam', id: 'foam', plane: 'middle' }
const membrane: AnySeal = {
  kind: 'membrane',
  id: 'membrane',
  plane: 'inner',
  bondFrame_mm: specified(20),
  bondWall_mm: specified(50),
  slack_mm: specified(8),
  sd_m: specified(20),
}
const bead = (values: { depth_mm?: number; rod_mm?: number; share_pct?: number } = {}): AnySeal => ({
  kind: 'sealant',
  id: 'bead',
  plane: 'outer',
  ...(values.depth_mm === undefined ? {} : { depth_mm: specified(values.depth_mm) }),
  ...(values.rod_mm === undefined ? {} : { rod_mm: specified(values.rod_mm) }),
  ...(values.share_pct === undefined ? {} : { share_pct: specified(values.share_pct) }),
  mu: specified(5000),
})
const right: Wanted = {
  planned_mm: specified(14),
  tolerance_mm: specified(1),
  seals: [tape(), foam, membrane],
  sill: {
    id: 'sill-1',
    material: 'aluminium',
    thickness_mm: specified(2),
    slope_deg: specified(5),
    overhang_mm: specified(40),
    upstand_mm: specified(25),
    endDam_mm: specified(20),
    endGap_mm: specified(5),
    secondPlane: specified('tray'),
  },
}

const at = (it: Wanted, rule: string, side = 'left'): Finding => {
  const found = check(aJoint(it)).findings.find(one => one.rule === rule && one.where.side === side)
  if (!found) throw new Error(`${rule} does not apply`)
  return found
}
const reasonAt = (it: Wanted, rule: string): string | undefined =>
  check(aJoint(it)).notApplicable.find(one => one.rule === rule && one.where.side === 'left')?.because.en

test('a right joint has nothing but met findings', () => {
  expect(check(aJoint(right)).findings.filter(it => it.verdict !== 'met')).toEqual([])
})

test('every rule answers in every zone: with a finding or with the reason why it does not apply', () => {
  for (const it of [right, { seals: [] }, { seals: [bead()] }]) {
    const { findings, notApplicable } = check(aJoint(it))
    for (const side of ['head', 'left', 'right', 'sill'])
      for (const { id } of rules.filter(rule => rule.about === 'part' || rule.about === 'zone'))
        expect(
          [...findings, ...notApplicable].filter(one => one.rule === id && one.where.side === side).length,
          `${id} at ${side}`,
        ).toBeGreaterThan(0)
  }
})

describe('planes', () => {
  test('foam alone is named with what is missing inside and outside', () => {
    const found = at({ ...right, seals: [foam] }, 'planes-filled')
    expect(found).toMatchObject({
      verdict: 'not-met',
      compared: {
        missing: [{ en: 'outside: a seal against driving rain' }, { en: 'inside: an airtight seal' }],
      },
    })
    expect(at({ ...right, seals: [foam] }, 'foam-as-air-seal').verdict).toBe('not-met')
  })

  test('a wall of which no layer is airtight is unknown, by name', () => {
    const project = aJoint(right)
    const wall = project.walls['wall-1']
    if (!wall) throw new Error('no wall')
    const [first, ...more] = wall.layers
    const bare = [
      first,
      ...more.map(it => ({ ...it, duties: it.duties.filter(duty => duty !== 'airtight') })),
    ] as const
    const { findings } = check({ ...project, walls: { 'wall-1': { ...wall, layers: bare } } })
    expect(findings[0]).toMatchObject({
      rule: 'planes-filled',
      verdict: 'unknown',
      missing: [{ part: 'wall-1' }],
    })
  })

  test('both resistances are in the sum as ranges, dry and humid', () => {
    const found = at(
      { ...right, seals: [tape(), foam, { ...membrane, sdHumid_m: specified(0.25) }] },
      'vapour-order',
    )
    expect(found.verdict).toBe('not-met')
    expect(marginOfFinding(found)).toBeCloseTo(0.25 / 0.5 - 1, 9)
    expect(found.sum.filter(it => it.sign === '=').map(it => it.value)).toEqual([40, 0.5])
  })

  test('a resistance that is fallen back on is named as assumed', () => {
    const open: AnySeal = { ...membrane, sd_m: undefined }
    const found = at({ ...right, seals: [tape(), foam, open] }, 'vapour-order')
    expect(found.restsOn).toEqual([{ field: 'membrane.sd', part: 'membrane' }])
    expect(found.verdict).toBe('met')
  })

  test('an accepted exception turns not met into refer, with what has to be handed over', () => {
    const reversed: Wanted = {
      ...right,
      seals: [bead({ depth_mm: 7, rod_mm: 18, share_pct: 25 }), foam, membrane],
    }
    expect(at(reversed, 'vapour-order').verdict).toBe('not-met')
    const stated = { ...reversed, joint: { reversal: specified('calculation' as const) } } as const
    const found = at(stated, 'vapour-order')
    expect(found).toMatchObject({ verdict: 'refer', handOver: [{ en: expect.stringContaining('EN 15026') }] })
    expect(marginOfFinding(found)).toBeLessThan(0)
  })
})

describe('sealant', () => {
  const sealed = (values: Parameters<typeof bead>[0], it: Wanted = {}): Wanted => ({
    ...right,
    ...it,
    seals: [bead(values), foam, membrane],
  })

  test('the governing end of the joint is named', () => {
    const deep = at(
      sealed({ depth_mm: 10 }, { planned_mm: specified(15), tolerance_mm: specified(3) }),
      'sealant-depth',
    )
    expect(deep).toMatchObject({
      verdict: 'not-met',
      compared: { governs: 'narrowest', required: { min: 6, max: 8 } },
    })
    const thin = at(
      sealed({ depth_mm: 6 }, { planned_mm: specified(15), tolerance_mm: specified(3) }),
      'sealant-depth',
    )
    expect(thin).toMatchObject({
      verdict: 'not-met',
      compared: { governs: 'widest', required: { min: 7, max: 11 } },
    })
  })

  test('a bead without a rod sticks to the foam behind it', () => {
    expect(at(sealed({ depth_mm: 7 }), 'bonded-faces')).toMatchObject({
      verdict: 'not-met',
      compared: { actual: { min: 3 } },
    })
    expect(at(sealed({ depth_mm: 7, rod_mm: 18 }), 'bonded-faces').verdict).toBe('met')
  })

  test('a depth or a share that nobody states is unknown, by name', () => {
    expect(at(sealed({}), 'sealant-depth')).toMatchObject({
      verdict: 'unknown',
      missing: [{ field: 'sealant.depth', part: 'bead' }],
    })
    expect(at(sealed({}), 'joint-for-movement')).toMatchObject({
      verdict: 'unknown',
      missing: [{ field: 'sealant.share', part: 'bead' }],
    })
  })

  test('the least joint is held against the narrowest still joint', () => {
    const wide = { width_mm: specified(2400), planned_mm: specified(16) }
    expect(at(sealed({ depth_mm: 8 }, wide), 'least-joint').verdict).toBe('met')
    expect(
      at(sealed({ depth_mm: 8 }, { ...wide, tolerance_mm: specified(1.5) }), 'least-joint').verdict,
    ).toBe('not-met')
  })

  test('a splayed reveal is a straight one where the frame stands', () => {
    const wide: Wanted = { width_mm: specified(2400), planned_mm: specified(16), reveal: 'splayed' }
    expect(at(sealed({ depth_mm: 8 }, wide), 'least-joint').verdict).toBe('met')
  })

  test('where the table has no value the sum is the only proof', () => {
    const long: Wanted = { width_mm: specified(4500), planned_mm: specified(20), frame: 'pvc-white' }
    const given = sealed({ depth_mm: 10, rod_mm: 25, share_pct: 25 }, long)
    const refers = at(given, 'least-joint')
    expect(refers.verdict).toBe('refer')
    expect(refers.cite).toBeUndefined()
    expect('handOver' in refers && refers.handOver.map(it => it.en.replaceAll('\u00a0', ' '))).toContain(
      'frame 4500 mm across the joint',
    )
    expect(at(given, 'joint-for-movement').verdict).toBe('not-met')
    expect(at({ ...given, width_mm: specified(3000) }, 'joint-for-movement').verdict).toBe('advice')
  })
})

describe('tape', () => {
  test('is held against both ends of the moving joint', () => {
    const narrow = at(
      { ...right, seals: [tape({ least_mm: 12.5, most_mm: 25 }), foam, membrane] },
      'tape-range',
    )
    expect(narrow).toMatchObject({ verdict: 'not-met', compared: { governs: 'narrowest' } })
    const wide = at({ ...right, seals: [tape({ least_mm: 8, most_mm: 15 }), foam, membrane] }, 'tape-range')
    expect(wide).toMatchObject({ verdict: 'not-met', compared: { governs: 'widest' } })
    expect(wide.sum.at(-1)?.value).toBeCloseTo(14 + 1 + 0.5 * 1.6 * 1.23, 9)
  })

  test('rests on the trade value of the frame, and on nothing that is specified', () => {
    expect(at(right, 'tape-range').restsOn).toEqual([{ field: 'frame.movement', part: 'frame-1' }])
    expect(at({ ...right, movement_mm_m: specified(1.6) }, 'tape-range').restsOn).toEqual([])
    expect(at({ ...right, tolerance_mm: assumed(1) }, 'tape-range').restsOn).toContainEqual({
      field: 'joint.tolerance',
      part: 'joint-1',
    })
  })
})

test('what a practice does not ask does not apply, with its reason', () => {
  expect(reasonAt(right, 'perimeter-gap')).toContain('German practice')
  expect(reasonAt({ ...right, practice: 'UK' }, 'least-joint')).toContain('British practice')
  expect(reasonAt(right, 'sealant-depth')).toContain('no sealant')
})

test('findings come worst first', () => {
  const { findings } = check(aJoint({ ...right, seals: [bead({ depth_mm: 14 }), foam] }))
  const ranks = findings.map(it => verdicts.indexOf(it.verdict))
  expect(ranks).toEqual(ranks.toSorted((a, b) => a - b))
  expect(new Set(ranks).size).toBeGreaterThan(2)
  expect(worstFirst(findings.toReversed()).map(it => it.verdict)).toEqual(findings.map(it => it.verdict))
})

test('a finding is plain data once it is written', () => {
  const report = check(aJoint({ ...right, seals: [foam] }))
  const written = JSON.parse(JSON.stringify(report))
  expect(written.findings[0].remedies.length).toBeGreaterThan(0)
  expect(written).toEqual(JSON.parse(JSON.stringify(check(aJoint({ ...right, seals: [foam] })))))
})

test('a finding that is not met says by whose word, and how far it can be trusted', () => {
  for (const { project } of samples)
    for (const it of check(project).findings)
      if (it.verdict === 'not-met' || it.verdict === 'advice') expect(it.cite).toBeDefined()
})

describe('a limit changed in the data of a practice changes its own verdict and citation, and no other', () => {
  const de = practiceOf({ id: 'DE', own: [] })
  const changed = <K extends LimitKey>(key: K, row: Row<K>): Practice => ({
    ...de,
    limits: { ...de.limits, [key]: [row] },
  })
  const cite = { source: 'own', trust: 'ours' } as const
  const sealed: Wanted = {
    ...right,
    planned_mm: specified(20),
    seals: [bead({ depth_mm: 10, rod_mm: 25, share_pct: 25 }), foam, { ...membrane, sd_m: specified(150) }],
  }
  const cases: readonly [string, string, Wanted, Practice][] = [
    [
      'depth',
      'sealant-depth',
      sealed,
      changed('sealant-depth', { when: {}, then: { share: 0.4, within_mm: 1 }, cite, ifBroken: 'not-met' }),
    ],
    [
      'rod',
      'backing-rod',
      sealed,
      changed('backing-oversize', {
        when: {},
        then: { share_pct: { min: 130, max: 150 } },
        cite,
        ifBroken: 'not-met',
      }),
    ],
    [
      'faces',
      'bonded-faces',
      sealed,
      changed('bonded-faces', { when: {}, then: { faces: 1 }, cite, ifBroken: 'refer' }),
    ],
    [
      'least joint',
      'least-joint',
      sealed,
      changed('least-joint', { when: {}, then: { least_mm: 22 }, cite, ifBroken: 'advice' }),
    ],
    [
      'order',
      'vapour-order',
      sealed,
      changed('vapour-order', { when: {}, then: { least: 5 }, cite, ifBroken: 'not-met' }),
    ],
    [
      'planes',
      'planes-filled',
      { ...right, seals: [tape(), membrane] },
      changed('planes-filled', { when: {}, then: { planes: ['outer', 'inner'] }, cite, ifBroken: 'not-met' }),
    ],
  ]
  test.each(cases)('%s', (_says, rule, wanted, other) => {
    const project = aJoint({ ...wanted, width_mm: specified(1000), height_mm: specified(1000) })
    const told = (it: Practice) =>
      check(project, it)
        .findings.filter(one => one.where.side === 'left')
        .map(one => ({ rule: one.rule, verdict: one.verdict, cite: one.cite }))
        .toSorted((a, b) => a.rule.localeCompare(b.rule))
    const before = told(de)
    const after = told(other)
    const differing = before.filter((it, i) => JSON.stringify(it) !== JSON.stringify(after[i]))
    expect(differing.map(it => it.rule)).toEqual([rule])
    const now = after.find(it => it.rule === rule)
    expect(now?.cite).toEqual(cite)
    expect(now?.verdict).not.toBe(differing[0]?.verdict)
  })
})

// A count may grow with a new rule, never shrink: a rule that fell silent would go unnoticed.
const least: Readonly<Record<string, number>> = { 'right-jamb': 3, 'foam-only': 2, 'tight-outside': 8 }
test.each(samples)('silence does not grow: rules that apply to $file', ({ file, project }) => {
  const applying = new Set(check(project).findings.map(it => it.rule)).size
  expect(applying).toBeGreaterThanOrEqual(least[file] ?? 1)
})

describe('a measured opening', () => {
  const measured_mm = (width: number): Project => {
    const project = aJoint({ ...right, width_mm: specified(1230), height_mm: specified(1480) })
    const opening = project.openings['opening-1']
    if (!opening) throw new Error('no opening')
    const at = (value: number) => measured(value)
    const survey = {
      widths_mm: { top: at(width), middle: at(width - 1), bottom: at(width) },
      heights_mm: { left: at(1508), centre: at(1508), right: at(1508) },
    }
    return { ...project, openings: { 'opening-1': { ...opening, survey } } }
  }
  const tapeAt = (project: Project): Finding | undefined =>
    check(project).findings.find(it => it.rule === 'tape-range' && it.where.side === 'left')

  test('gives its own joint, whatever was planned', () => {
    expect(tapeAt(measured_mm(1258))?.verdict).toBe('met')
    expect(tapeAt(measured_mm(1276))).toMatchObject({ verdict: 'not-met', compared: { governs: 'widest' } })
  })

  test('is answered by another tape or another frame, never by what was planned or measured', () => {
    const found = tapeAt(measured_mm(1276))
    const changes = found && 'remedies' in found ? found.remedies.filter(it => it.kind === 'change') : []
    const fields = changes.flatMap(it =>
      it.edits.flatMap(edit => (edit.kind === 'state' ? [edit.at.field] : [])),
    )
    expect(fields).toContain('opening.width')
    expect(fields).not.toContain('joint.planned')
    expect(fields.filter(it => it.startsWith('survey'))).toEqual([])
  })
})
