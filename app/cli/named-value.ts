import {
  type ChoiceField,
  type Edit,
  type Field,
  type Project,
  choiceOf,
  choices,
  choicesOf,
  fieldOf,
  fields,
  fieldsOf,
  partIds,
} from '../../core/detail'
import type { Id } from '../../core/geometry'
import { type Result, inWords, readQuantity, refused, specified, writeQuantity } from '../../core/units'
import { type Words, filled, same, words } from '../../core/words'
import { type Change, done } from './change-project'
import type { NamedValue } from './named'
import { listOf, lists } from './named-list'
import { namedText, textNames } from './named-text'

/** Finds a value by its name, and by its part where several have it. Refused with what there is. */
export const namedValue = (project: Project, name: string, part: unknown): Result<NamedValue> => {
  const text = namedText(project, name, part)
  if (text) return text
  const list = listOf(name)
  if (list) return ofPart(partsWith(project, list.has), part, id => list.at(id))
  const field = fieldOf(name)
  if (field) return ofPart(partsWith(project, (it, id) => fieldsOf(it, id).includes(field), part), part, id => numberAt(project, field, id)) // prettier-ignore
  const choice = choiceOf(name)
  if (choice) return ofPart(partsWith(project, (it, id) => choicesOf(it, id).includes(choice), part), part, id => wordAt(project, choice, id)) // prettier-ignore
  const known = [...fields, ...choices, ...lists].map(it => it.id)
  return refused({ at: '', say: filled(noValue, [...known, ...textNames].join(', ')) })
}

/** The parts that have a value; one that is asked for may be a place that nobody has named yet, as along a flank. */
export const partsWith = (
  project: Project,
  has: (project: Project, id: Id) => boolean,
  asked?: unknown,
): readonly Id[] => {
  const parts = partIds(project)
  const more = typeof asked === 'string' && !parts.includes(asked) ? [asked] : []
  return [...parts, ...more].filter(id => has(project, id))
}

const ofPart = (
  parts: readonly Id[],
  asked: unknown,
  value: (part: Id) => Result<NamedValue>,
): Result<NamedValue> => {
  const named = parts.join(', ')
  if (typeof asked === 'string' && !parts.includes(asked))
    return refused({ at: asked, say: filled(otherPart, named) })
  const [first, ...others] = typeof asked === 'string' ? [asked] : parts
  if (first === undefined) return refused({ at: '', say: noPart })
  return others.length === 0 ? value(first) : refused({ at: '', say: filled(whichPart, named) })
}

const numberAt = (project: Project, field: Field<number>, part: Id): Result<NamedValue> => {
  const stateAs = (to: StateTo, says: Words) => stated(field.id, part, to, filled(is, part, field.name, says))
  return {
    ok: true,
    value: {
      read: typed => {
        const read = readQuantity(typed, { unit: field.unit, allowed: field.allowed(project, part).bounds })
        if (!read.ok) return read
        if (read.value.asks) return refused({ at: '', say: filled(ambiguous, same(typed)) })
        const { value } = read.value
        return stateAs(
          specified(value),
          inWords(language => writeQuantity(value, field.unit, language)),
        )
      },
      clear: () => stateAs(undefined, notStated),
    },
  }
}

const wordAt = (project: Project, choice: ChoiceField, part: Id): Result<NamedValue> => {
  const stateAs = (to: StateTo, says: Words) =>
    stated(choice.id, part, to, filled(is, part, choice.name, says))
  return {
    ok: true,
    value: {
      read: typed => {
        const list = choice.allowed(project, part).choices
        const word = list.find(it => [it.value, it.name.en, it.name.de].some(said => isSameWord(said, typed)))
        return word
          ? stateAs(specified(word.value), word.name)
          : refused({
              at: '',
              say: filled(otherWord, same(typed.slice(0, 60)), list.map(it => it.value).join(', ')),
            })
      },
      clear: () => stateAs(undefined, notStated),
    },
  }
}

type StateTo = Extract<Edit, { kind: 'state' }>['to']

const stated = (field: string, part: Id, to: StateTo, says: Words): Result<Change> =>
  done([{ kind: 'state', at: { field, part }, to }], says)

const isSameWord = (a: string, b: string): boolean => a.toLowerCase() === b.trim().toLowerCase()

const is = same('{0}: {1} {2}')
const notStated = words('not stated', 'nicht genannt')
const noValue = words('there is no such value; there are {0}', 'diesen Wert gibt es nicht; es gibt {0}')
const noPart = words('no part of this project has this value', 'kein Teil dieses Projekts hat diesen Wert')
const otherPart = words(
  'this part does not have the value; these do: {0}',
  'dieses Teil hat den Wert nicht; diese haben ihn: {0}',
)
const whichPart = words(
  'several parts have this value; choose with --part: {0}',
  'mehrere Teile haben diesen Wert; mit --part wählen: {0}',
)
const ambiguous = words(
  '“{0}” may be thousands or decimals; write 1200 or 1.2',
  '„{0}“ kann Tausender oder Dezimalen meinen; bitte 1200 oder 1,2 schreiben',
)
const otherWord = words('“{0}” is not among {1}', '„{0}“ gehört nicht zu {1}')
