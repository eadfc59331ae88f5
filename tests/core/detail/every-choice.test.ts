import { describe, expect, test } from 'vitest'
import {
  applyEdit,
  choiceOf,
  choices,
  choicesOf,
  type Edit,
  fieldOf,
  knownChoice,
  partIds,
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

/** The first sample with one more block, and with every kind of seal in each of its planes. */
const project = ((): Project => {
  const found = samples[0]?.project
  if (found === undefined) throw new Error('there are no samples')
  const [opening = ''] = Object.keys(found.openings)
  const [joint = ''] = Object.keys(found.joints)
  const edits: readonly Edit[] = [
    { kind: 'add', into: opening, part: 'block' },
    ...sealKinds.flatMap(kind => kind.planes.map((plane): Edit => ({ kind: 'fill', joint, plane, seal: kind.kind }))),
  ]
  return edits.reduce(after, found)
})() // prettier-ignore

/** The same under a box. */
const boxed = after(project, { kind: 'add', into: Object.keys(project.openings)[0] ?? '', part: 'box' })

/** The same with a threshold in the place of its sill. */
const walkedThrough = [
  { kind: 'remove', part: Object.values(project.openings)[0]?.sill?.id ?? '' } as const,
  { kind: 'add', into: Object.keys(project.openings)[0] ?? '', part: 'threshold' } as const,
].reduce(after, project)

/** The same behind a nib, whose gap a seal may close. */
const behindNib = after(project, {
  kind: 'state',
  at: { field: 'reveal.form', part: Object.keys(project.walls)[0] ?? '' },
  to: specified('inner-rebate'),
})

const placesIn = (project: Project, only = '') =>
  partIds(project).flatMap(part =>
    choicesOf(project, part)
      .filter(it => it.id.startsWith(only))
      .map(choice => [choice.id, part, choice, project] as const),
  )
const places = [
  ...placesIn(project),
  ...placesIn(boxed, 'box.'),
  ...placesIn(behindNib, 'seal.gap'),
  ...placesIn(walkedThrough, 'threshold.'),
]

test('every choice has a name of its own, and a part that has it', () => {
  const ids = choices.map(it => it.id)
  expect(new Set(ids).size).toBe(ids.length)
  expect(ids.filter(id => fieldOf(id))).toEqual([])
  expect(ids.filter(id => !places.some(([choice]) => choice === id))).toEqual([])
})

describe.each(places)('%s of %s', (id, part, choice, project) => {
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
