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
  partsOf,
  site,
  zonesOf,
} from '../../core/detail'
import type { Id } from '../../core/geometry'
import { type Result, inWords, ok, readQuantity, refused, specified, writeQuantity } from '../../core/units'
import { type Words, filled, same, words } from '../../core/words'

/** A value of a project that was asked for by name: whose it is, what it is called, and how a typed text is read. */
export type NamedValue = {
  readonly part: Id
  readonly called: Words
  readonly read: (typed: string) => Result<Typed>
}

/** What was typed, ready to be stated, and in words. */
export type Typed = { readonly to: Extract<Edit, { kind: 'state' }>['to']; readonly says: Words }

/** Finds a value by its name, and by its part where several have it. Refused with what there is. */
export const namedValue = (project: Project, name: string, part: unknown): Result<NamedValue> => {
  const field = fieldOf(name)
  if (field)
    return of(
      partsWith(project, id => fieldsOf(project, id).includes(field)),
      part,
      numberOf(project, field),
    )
  const choice = choiceOf(name)
  if (choice)
    return of(
      partsWith(project, id => choicesOf(project, id).includes(choice)),
      part,
      wordOf(project, choice),
    )
  const known = [...fields, ...choices].map(it => it.id).join(', ')
  return refused({ at: '', say: filled(noValue, known) })
}

const of = (
  parts: readonly Id[],
  asked: unknown,
  value: (part: Id) => Omit<NamedValue, 'part'>,
): Result<NamedValue> => {
  const named = parts.join(', ')
  if (typeof asked === 'string' && !parts.includes(asked))
    return refused({ at: asked, say: filled(otherPart, named) })
  const [first, ...others] = typeof asked === 'string' ? [asked] : parts
  if (first === undefined) return refused({ at: '', say: noPart })
  return others.length === 0
    ? ok({ part: first, ...value(first) })
    : refused({ at: '', say: filled(whichPart, named) })
}

const numberOf =
  (project: Project, field: Field<number>) =>
  (part: Id): Omit<NamedValue, 'part'> => ({
    called: field.name,
    read: typed => {
      const read = readQuantity(typed, { unit: field.unit, allowed: field.allowed(project, part).bounds })
      if (!read.ok) return read
      if (read.value.asks) return refused({ at: '', say: filled(ambiguous, same(typed)) })
      const { value } = read.value
      return ok({
        to: specified(value),
        says: inWords(language => writeQuantity(value, field.unit, language)),
      })
    },
  })

const wordOf =
  (project: Project, choice: ChoiceField) =>
  (part: Id): Omit<NamedValue, 'part'> => ({
    called: choice.name,
    read: typed => {
      const list = choice.allowed(project, part).choices
      const word = list.find(it => [it.value, it.name.en, it.name.de].some(said => isSameWord(said, typed)))
      return word
        ? ok({ to: specified(word.value), says: word.name })
        : refused({
            at: '',
            say: filled(otherWord, same(typed.slice(0, 60)), list.map(it => it.value).join(', ')),
          })
    },
  })

const isSameWord = (a: string, b: string): boolean => a.toLowerCase() === b.trim().toLowerCase()

const partsWith = (project: Project, has: (id: Id) => boolean): readonly Id[] => {
  const tables = [project.walls, project.frames, project.joints, project.openings]
  const parts = zonesOf(project).flatMap(place => partsOf(project, place).map(it => it.id))
  return [...new Set([site, ...tables.flatMap(it => Object.keys(it)), ...parts])].filter(has)
}

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
