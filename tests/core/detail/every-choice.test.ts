import { describe, expect, test } from 'vitest'
import {
  applyEdit,
  choiceOf,
  choices,
  choicesOf,
  type Edit,
  fieldOf,
  knownChoice,
  type Project,
  samples,
} from '../../../core/detail'
import { sealKinds } from '../../../core/seals'
import { assumed, specified } from '../../../core/units'

const after = (project: Project, edit: Edit): Project => {
  const found = applyEdit(project, edit)
  if (!found.ok) throw new Error(found.problems[0].say.en)
  return found.value
}

/** The first sample that has a sill and fixings, with every kind of seal in each of its planes. */
const project = ((): Project => {
  const found = samples.find(({ project }) =>
    Object.values(project.openings).some(it => it.sill && it.fixings.length > 0),
  )
  if (found === undefined) throw new Error('no sample has a sill and fixings')
  const joint = Object.keys(found.project.joints)[0] ?? ''
  return sealKinds
    .flatMap(kind => kind.planes.map(plane => ({ kind: 'fill', joint, plane, seal: kind.kind }) as const))
    .reduce(after, found.project)
})()

const parts = [
  ...Object.keys(project.joints),
  ...Object.keys(project.openings),
  ...Object.values(project.walls).flatMap(it => it.layers.map(layer => layer.id)),
  ...Object.values(project.openings).flatMap(it => [...it.fixings.map(one => one.id), ...(it.sill ? [it.sill.id] : [])]),
  ...Object.values(project.joints).flatMap(it => it.seals.map(seal => seal.id)),
] // prettier-ignore

const places = parts.flatMap(part =>
  choicesOf(project, part).map(choice => [choice.id, part, choice] as const),
)

test('every choice has a name of its own, and a part that has it', () => {
  const ids = choices.map(it => it.id)
  expect(new Set(ids).size).toBe(ids.length)
  expect(ids.filter(id => fieldOf(id))).toEqual([])
  expect(ids.filter(id => !places.some(([choice]) => choice === id))).toEqual([])
})

describe.each(places)('%s of %s', (id, part, choice) => {
  const words = choice.allowed(project, part).choices
  const state = (to: string | number | undefined): Edit => ({
    kind: 'state',
    at: { field: id, part },
    to: typeof to === 'string' ? specified(to) : typeof to === 'number' ? specified(to) : undefined,
  })

  test('is stated in each of its words, and read as that', () => {
    for (const { value, name } of words) {
      expect(choice.schema.safeParse(value).success).toBe(true)
      expect([name.en, name.de]).not.toContain('')
      expect(choice.read(after(project, state(value)), part)).toEqual(specified(value))
    }
  })

  test('refuses a word that is not of its list, with the list, and a number', () => {
    for (const wrong of ['no such word', 'constructor', '', 1]) {
      const found = applyEdit(project, state(wrong))
      expect(found.ok).toBe(false)
      if (!found.ok) for (const { name } of words) expect(found.problems[0].say.en).toContain(name.en)
    }
  })

  test('is taken back, or kept where its part cannot do without', () => {
    const first = after(project, state(words[0].value))
    const back = after(first, state(undefined))
    expect([undefined, words[0].value]).toContain(choice.read(back, part)?.value)
  })

  test('is specified once somebody confirms it', () => {
    const at = { field: id, part }
    const guessed = after(project, { kind: 'state', at, to: assumed(words[0].value) })
    expect(knownChoice(guessed, at)?.basis).toBe(choice.isPlain ? 'specified' : 'assumed')
    expect(knownChoice(after(guessed, { kind: 'confirm', at }), at)).toEqual({ ...specified(words[0].value), origin: 'file' })
  }) // prettier-ignore
})

test('a word cannot be stated where a number is wanted', () => {
  const joint = Object.keys(project.joints)[0] ?? ''
  const found = applyEdit(project, { kind: 'state', at: { field: 'joint.planned', part: joint }, to: specified('12') }) // prettier-ignore
  expect(found.ok).toBe(false)
})

test('the class of a tape is one field, with the words of its kind', () => {
  const listOf = (kind: string) => {
    const seal = Object.values(project.joints).flatMap(it => it.seals).find(it => it.kind === kind) // prettier-ignore
    return choiceOf('tape.class')
      ?.allowed(project, seal?.id ?? '')
      .choices.map(it => it.value)
  }
  expect(listOf('impregnated-tape')).toEqual(['BG1', 'BG2', 'BGR'])
  expect(listOf('multifunction-tape')).toEqual(['MF1', 'MF2'])
})
