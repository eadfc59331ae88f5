import { expect, test } from 'vitest'
import { applyEdit, type Project, samples } from '../../../core/detail'
import { check } from '../../../core/rules'

const [sample] = samples
if (sample === undefined) throw new Error('there are no samples')
const sealsOf = (project: Project) => Object.values(project.joints)[0]?.seals ?? []
const inPlane = (project: Project, plane: string) => sealsOf(project).find(it => it.plane === plane)
const [outer, middle, inner] = ['outer', 'middle', 'inner'].map(it => inPlane(sample.project, it)?.id ?? '')

test('seals that change planes keep their values, turn the order of the planes round, and come back by the same', () => {
  const turned = applyEdit(sample.project, { kind: 'exchange', part: outer ?? '', with: inner ?? '' })
  if (!turned.ok) throw new Error(turned.problems[0].say.en)
  expect(sealsOf(turned.value).map(it => it.plane)).toEqual(['outer', 'middle', 'inner'])
  expect(inPlane(turned.value, 'outer')).toEqual({ ...inPlane(sample.project, 'inner'), plane: 'outer' })
  const order = check(turned.value).findings.find(it => it.rule === 'vapour-order')
  expect(order?.verdict).toBe('not-met')
  const back = applyEdit(turned.value, { kind: 'exchange', part: outer ?? '', with: inner ?? '' })
  expect(back.ok && back.value).toEqual(sample.project)
})

test('a seal whose kind does not serve the other plane stays where it is', () => {
  const found = applyEdit(sample.project, { kind: 'exchange', part: outer ?? '', with: middle ?? '' })
  expect(found.ok ? [] : found.problems.map(it => it.say.en)).toEqual([
    'this kind of seal does not serve the middle plane',
    'this kind of seal does not serve the outer plane',
  ])
})
