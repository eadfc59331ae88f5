import { z } from 'zod'
import type { Id } from '../../geometry'
import { type AnySeal, kindOf, type SealChoice, sealKinds } from '../../seals'
import type { Stated } from '../../units'
import type { ChoiceField } from '../choice-field'
import { sealOf } from '../find'
import type { Project } from '../model'
import { withSeal, withSealKey } from './tables'

/** One field for each word that kinds of seal state of themselves: a new kind brings its fields along. */
export const sealChoices: readonly ChoiceField[] = firstOfEach(sealKinds.flatMap(kind => kind.choices)).map(
  ({ id, name, choices, because }): ChoiceField => ({
    id,
    name,
    of: 'seal',
    schema: z.enum(wordsOf(id)),
    surveyed: false,
    read: (project, part) => {
      const found = choiceOf(project, part, id)
      return found && wordAt(found.seal, found.choice)
    },
    fallback: () => undefined,
    allowed: (project, part) => choiceOf(project, part, id)?.choice ?? { choices, because },
    write: (project, part, to) => {
      const key = choiceOf(project, part, id)?.choice.key
      return key === undefined ? project : withSeal(project, part, seal => withSealKey(seal, key, to))
    },
  }),
)

/** Several kinds may state the same word, each out of a list of its own: it is one field. */
function firstOfEach(all: readonly SealChoice[]): readonly SealChoice[] {
  return all.filter((it, i) => all.findIndex(other => other.id === it.id) === i)
}

/** Every word that any kind may state under a name. */
function wordsOf(id: string): readonly string[] {
  const lists = sealKinds.flatMap(kind => kind.choices.filter(it => it.id === id))
  return [...new Set(lists.flatMap(it => it.choices.map(one => one.value)))]
}

const choiceOf = (
  project: Project,
  part: Id,
  id: string,
): { readonly seal: AnySeal; readonly choice: SealChoice } | undefined => {
  const seal = sealOf(project, part)?.seal
  const choice = seal && kindOf(seal).choices.find(it => it.id === id)
  return seal && choice && { seal, choice }
}

const wordAt = (seal: AnySeal, choice: SealChoice): Stated<string> | undefined => {
  const found = seal[choice.key]
  // The kind's schema makes each listed choice a stated word.
  return typeof found === 'object' ? (found as Stated<string>) : undefined
}
