import { describe, expect, it } from 'vitest'
import { applyEdits, type Project, samples } from '../../../core/detail'
import {
  cutsScales,
  cutsSheet,
  type Drawing,
  flatten,
  inkOf,
  type Letters,
  sheetProblems,
  titleOn,
  type ViewMark,
} from '../../../core/drawing'
import { cutsOf, sampleCuts } from '../../given/sample-cuts'

const sheets = [
  ...sampleCuts({ language: 'en', palette: 'colour' }, samples.slice(0, 4)),
  ...sampleCuts({ language: 'de', palette: 'black', unit: 'inch' }, samples.slice(4, 8)),
]

const lettersOn = (drawing: Drawing): readonly Letters[] =>
  inkOf(drawing).flatMap(group => group.inks.flatMap(it => (it.kind === 'letters' ? [it] : [])))

const marksOn = (drawing: Drawing): readonly ViewMark[] =>
  drawing.marks.flatMap(it => (it.kind === 'view' ? flatten(it) : [it]))

const first = (): Project => {
  const [sample] = samples
  if (sample === undefined) throw new Error('no sample')
  return sample.project
}

describe.each(sheets)('head, jamb and sill of $name', ({ project, drawing }) => {
  it('stand on one A3, with leaders to numbers that the list of parts has', () => {
    expect(drawing.size_mm).toEqual([420, 297])
    const listed = new Set(
      drawing.marks.flatMap(it =>
        it.kind === 'text' && /^\d+$/.test(it.words) && it.bold ? [it.words] : [],
      ),
    )
    const led = marksOn(drawing).flatMap(it => (it.kind === 'leader' ? [it.number] : []))
    expect(led.length).toBeGreaterThan(20)
    expect(led.filter(it => !listed.has(it))).toEqual([])
  })

  it('give every part one number in all cuts', () => {
    const numbers = new Map<string, Set<string>>()
    for (const it of marksOn(drawing))
      if (it.kind === 'leader' && it.part !== undefined)
        numbers.set(it.part, (numbers.get(it.part) ?? new Set()).add(it.number))
    expect([...numbers.values()].filter(it => it.size !== 1)).toEqual([])
  })

  it('keep cuts clear of each other and of the lists', () => {
    const views = drawing.marks.flatMap(it => (it.kind === 'view' ? [it] : []))
    expect(views.length).toBe(3)
    expect(new Set(views.map(it => it.scale)).size).toBe(1)
    const all = cutsScales(project, cutsOf(project), { language: drawing.language })
    expect(all).toContain(views[0]?.scale)
  })
})

describe('lengths in inch', () => {
  it.each(sampleCuts({ language: 'en', palette: 'colour', unit: 'inch' }, samples.slice(0, 3)))(
    '$name',
    ({ drawing }) => {
      for (const view of drawing.marks)
        if (view.kind === 'view')
          for (const mark of view.marks) {
            if (mark.kind !== 'dimension' || /[±…]/.test(mark.words)) continue
            const length = Math.hypot(mark.to[0] - mark.from[0], mark.to[1] - mark.from[1])
            expect(Math.abs(Number(mark.words) * 25.4 - length), mark.words).toBeLessThan(0.26)
          }
      const words = lettersOn(drawing).map(it => it.words)
      expect(
        words.filter(it => /\d[\s\u00a0]?mm\b/.test(it) && !(titleOn(drawing)['title'] ?? '').includes(it)),
      ).toEqual([])
    },
  )
})

describe('the state of issue', () => {
  const named = [
    { kind: 'entitle', text: 'author', to: 'Author' },
    { kind: 'entitle', text: 'approver', to: 'Checker' },
  ] as const
  const revision = { index: 'A', date: '2026-03-14', note: 'First issue' }
  const edited = (...edits: Parameters<typeof applyEdits>[1]): Project => {
    const it = applyEdits(first(), edits)
    if (!it.ok) throw new Error(it.problems[0].say.en)
    return it.value
  }
  const statusOf = (project: Project, sheet?: string) =>
    titleOn(
      cutsSheet(project, cutsOf(project), { language: 'en', palette: 'black', ...(sheet && { sheet }) }),
    ).status
  const issued = edited(...named, { kind: 'issue', status: 'issued', revision })

  it('is draft while a field that must be filled is empty', () => {
    expect(statusOf(first(), '1 / 1')).toMatch(/^Draft/)
    expect(statusOf(issued)).toMatch(/^Draft/)
    expect(statusOf(edited({ kind: 'issue', status: 'issued', revision }), '1 / 1')).toMatch(/^Draft/)
  })

  it('is issued with a revision, and superseded after any change of the design', () => {
    expect(statusOf(issued, '1 / 1')).toBe('Issued')
    const [joint] = Object.keys(issued.joints)
    const changed = applyEdits(issued, [
      {
        kind: 'state',
        at: { field: 'joint.planned', part: joint ?? '' },
        to: { value: 17, basis: 'specified' },
      },
    ])
    if (!changed.ok) throw new Error('a joint of 17 mm can be')
    expect(statusOf(changed.value, '1 / 1')).toMatch(/^Superseded/)
  })

  it('is not issued without a revision, nor twice with one index', () => {
    expect(applyEdits(first(), [{ kind: 'issue', status: 'issued' }]).ok).toBe(false)
    expect(applyEdits(issued, [{ kind: 'issue', status: 'issued', revision }]).ok).toBe(false)
  })

  it('a text that is longer than its field is refused with the field and its length', () => {
    const long = edited({ kind: 'entitle', text: 'office', to: 'An office with a name '.repeat(8) })
    const [problem] = sheetProblems(long, cutsSheet(long, cutsOf(long), { language: 'en', palette: 'black' }))
    expect(problem).toMatchObject({ at: 'title.owner' })
    expect(problem?.say.en).toMatch(/^Legal owner: the text has 17\d letters/)
    expect(
      sheetProblems(first(), cutsSheet(first(), cutsOf(first()), { language: 'de', palette: 'black' })),
    ).toEqual([])
  })
})
