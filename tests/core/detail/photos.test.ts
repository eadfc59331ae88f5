import { describe, expect, test } from 'vitest'
import {
  applyEdits,
  type Edit,
  openingOf,
  openProject,
  type Project,
  samples,
  saveProject,
} from '../../../core/detail'
import { aPhoto, photographed } from '../../given/photographed'

const [sample] = samples
if (sample === undefined) throw new Error('there are no samples')
const [opening = ''] = Object.keys(sample.project.openings)
const pins = (project: Project) => openingOf(project, opening).photos ?? []
const done = (project: Project, ...edits: readonly Edit[]): Project => {
  const found = applyEdits(project, edits)
  if (!found.ok) throw new Error(found.problems[0].say.en)
  return found.value
}
const refusal = (project: Project, edit: Edit) => {
  const found = applyEdits(project, [edit])
  return found.ok ? undefined : found.problems[0]
}

describe('a pinned photo', () => {
  const project = photographed(sample.project)
  const [first, second, again] = pins(project)
  if (first === undefined || second === undefined || again === undefined) throw new Error('three are pinned')

  test('is told anew and stays the same photo at its place in the list', () => {
    const told = { note: 'loose sill, left end', side: 'sill', at_mm: 40 } as const
    const next = done(project, { kind: 'tell-photo', photo: second.id, ...told })
    expect(pins(next)).toEqual([first, { id: second.id, photo: second.photo, ...told }, again])
    expect(next.photos).toBe(project.photos)
  })

  test.each([
    ['at a place beyond its side', { side: 'left', at_mm: 99_999, note: '' }, 'a place along the side that is named'],
    ['at a place of no side', { at_mm: 10, note: '' }, 'a place along the side that is named'],
    ['on a day that there is not', { date: '2026-02-30', note: '' }, 'a day like 2026-03-14'],
    ['with a note that no file holds', { note: 'x'.repeat(2001) }, 'a note is at most 2000 characters long'],
  ] as const)('is not told %s', (_, told, why) => {
    expect(refusal(project, { kind: 'tell-photo', photo: first.id, ...told })?.say.en).toBe(why)
  }) // prettier-ignore

  test('takes what it shows out of the file with its last pin, and leaves the opening as it was before', () => {
    const one = done(project, { kind: 'remove', part: first.id })
    expect(Object.keys(one.photos ?? {})).toHaveLength(2)
    const none = done(one, { kind: 'remove', part: again.id }, { kind: 'remove', part: second.id })
    expect(none.photos).toBeUndefined()
    expect({ ...none, next: sample.project.next }).toEqual(sample.project)
  })

  test('goes with the opening that alone had it', () => {
    const two = done(project, { kind: 'duplicate', part: opening })
    expect(done(two, { kind: 'remove', part: opening }).photos).toBeUndefined()
  })
})

test('an opening never has more parts of a kind than its file holds', () => {
  const add = (part: 'fixing' | 'block' | 'mullion' | 'transom'): Edit => ({
    kind: 'add',
    into: opening,
    part,
  })
  const pin: Edit = { kind: 'pin-photo', opening, jpeg: aPhoto([1]), note: '' }
  for (const edit of [add('fixing'), add('block'), add('mullion'), add('transom'), pin]) {
    let project = sample.project
    let problem = refusal(project, edit)
    for (let at = 0; at < 50 && problem === undefined; at++) {
      project = done(project, edit)
      problem = refusal(project, edit)
    }
    expect(problem?.say.en).toMatch(/^an opening has at most (20|40) /)
    expect(openProject(saveProject(project)).ok).toBe(true)
  }
})

test('a bracket is added as what it is', () => {
  const next = done(sample.project, { kind: 'add', into: opening, part: 'fixing', fixing: 'bracket' })
  expect(openingOf(next, opening).fixings.at(-1)?.kind).toBe('bracket')
})
