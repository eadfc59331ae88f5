import { describe, expect, test } from 'vitest'
import {
  applyEdit,
  applyEdits,
  type Edit,
  fieldOf,
  fields,
  fieldsOf,
  known,
  type Project,
  samples,
} from '../../../core/detail'
import { specified } from '../../../core/units'
import { randomFrom } from '../../given/random'
import { randomEdit } from '../../given/random-detail'

const sample = (): Project => {
  const [first] = samples
  if (first === undefined) throw new Error('there are no samples')
  return first.project
}

const state = (field: string, part: string, value: number): Edit => ({
  kind: 'state',
  at: { field, part },
  to: specified(value),
})
const refusals = (edit: Edit) => {
  const found = applyEdit(sample(), edit)
  return found.ok ? [] : found.problems
}

describe('an edit', () => {
  test.each([
    ['layer.thickness', 'layer-3', -20],
    ['layer.thickness', 'layer-3', 0],
    ['layer.thickness', 'layer-3', 1e9],
    ['layer.thickness', 'layer-3', Number.NaN],
    ['layer.thickness', 'layer-3', Number.POSITIVE_INFINITY],
    ['opening.position', 'opening-15', 400],
    ['opening.position', 'opening-15', -141],
    ['joint.planned', 'joint-7', 0],
    ['membrane.bond-frame', 'seal-10', 79],
  ])('that states %s of %s as %d is refused with the allowed range', (field, part, value) => {
    const [problem] = refusals(state(field, part, value))
    expect(problem?.at).toBe(`${part} ${field}`)
    expect(problem?.allowed).toEqual(fieldOf(field)?.allowed(sample(), part).bounds)
  })

  test('that states an unusual but possible value is taken: a frame forward of the bearing layer is a finding, no error', () => {
    expect(refusals(state('opening.position', 'opening-15', -100))).toEqual([])
  })

  test('of several that is refused leaves the project as it was', () => {
    const found = applyEdits(sample(), [
      state('joint.planned', 'joint-7', 20),
      state('joint.planned', 'joint-7', -1),
    ])
    expect(found.ok).toBe(false)
  })

  test('confirms an assumed value: it becomes specified, and stays the same number', () => {
    const at = { field: 'joint.tolerance', part: 'joint-7' }
    const found = applyEdit(sample(), { kind: 'confirm', at })
    expect(found.ok && known(found.value, at)).toEqual({ value: 3, basis: 'specified', origin: 'file' })
  })

  test('cannot take out the bearing layer: all depths refer to it', () => {
    expect(refusals({ kind: 'remove', part: 'layer-4' }).map(it => it.say.en)).toEqual([
      'the bearing layer stays: all depths refer to it',
    ])
  })

  test('changes the project that it is given into another one, and leaves the given one alone', () => {
    const project = sample()
    const before = JSON.stringify(project)
    const random = randomFrom(3)
    for (let i = 0; i < 300; i++) applyEdit(project, randomEdit(project, random))
    expect(JSON.stringify(project)).toBe(before)
  })
})

describe('a field', () => {
  test('reads back what was written, whatever value its range allows', () => {
    const random = randomFrom(11)
    for (const { project } of samples) {
      const parts = Object.values(project.joints).flatMap(it => [it.id, ...it.seals.map(seal => seal.id)])
      const all = [
        ...parts,
        ...Object.keys(project.walls),
        ...Object.keys(project.frames),
        ...Object.keys(project.openings),
      ]
      for (const part of all) {
        for (const field of fieldsOf(project, part)) {
          const { min = 0, max = 100 } = field.allowed(project, part).bounds
          const value = random.between(min, max)
          const found = applyEdit(project, state(field.id, part, value))
          expect(found.ok && field.read(found.value, part)?.value, `${part} ${field.id}`).toBe(value)
        }
      }
    }
  })

  test('has a name of its own, in both languages', () => {
    expect(new Set(fields.map(it => it.id)).size).toBe(fields.length)
    fields.forEach(it => expect([it.name.en, it.name.de].every(name => name.length > 0)).toBe(true))
  })
})
