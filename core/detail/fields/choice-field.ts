import { z } from 'zod'
import type { Id } from '../../geometry'
import type { Stated } from '../../units'
import { type Some, type Words, words } from '../../words'
import type { ChoiceField, Word } from '../choice-field'
import type { PartKind } from '../field'
import type { Project } from '../model'

/** What a field of one word says of itself: its list holds for every part. */
export type OneChoice<W extends string> = {
  readonly id: string
  readonly name: Words
  readonly of: PartKind
  readonly choices: Some<Word & { readonly value: W }>
  readonly because: Words
  readonly surveyed?: true
  readonly isPlain?: true
  readonly has?: (project: Project, part: Id) => boolean
  readonly read: (project: Project, part: Id) => Stated<W> | undefined
  readonly write: (project: Project, part: Id, to: Stated<W> | undefined) => Project
}

export const choiceField = <W extends string>(it: OneChoice<W>): ChoiceField => {
  const { choices, because } = it
  const isOne = (to: Stated<string>): to is Stated<W> => choices.some(one => one.value === to.value)
  return {
    ...it,
    schema: z.enum(choices.map(one => one.value)),
    surveyed: it.surveyed ?? false,
    fallback: () => undefined,
    allowed: () => ({ choices, because }),
    write: (project, part, to) => (to === undefined || isOne(to) ? it.write(project, part, to) : project),
  }
}

/** The words of a closed list with the names that people know them by. */
export const wordsFrom = <W extends string>(
  values: Some<W>,
  nameOf: Readonly<Record<W, Words>>,
): Some<Word & { readonly value: W }> => {
  const [first, ...more] = values
  const word = (value: W) => ({ value, name: nameOf[value] })
  return [word(first), ...more.map(word)]
}

/** For what either is so or is not. */
export const yesOrNo = wordsFrom(['yes', 'no'], { yes: words('yes', 'ja'), no: words('no', 'nein') })
