import { z } from 'zod'
import { bases, exactly, isInside, ok, refused, type Result, type Stated } from '../../units'
import { filled, listed, words } from '../../words'
import type { ChoiceField } from '../choice-field'
import type { EditKind } from '../edit'
import type { Field, FieldAt } from '../field'
import { choiceOf } from '../fields/choices'
import { fieldOf } from '../fields/field-of'
import type { Project } from '../model'
import { standing } from './standing'

export const fieldAt = z.strictObject({ field: z.string(), part: z.string() })

const said = { basis: z.enum(bases), note: z.string().max(500).exactOptional() }

/**
 * States a value or a word of any field, or takes the statement back. A value outside the allowed range is refused with
 * the range and its reason: no geometry exists for it. A word that is not of the list is refused with the list.
 */
export const state: EditKind<'state'> = {
  kind: 'state',
  schema: z.strictObject({
    kind: z.literal('state'),
    at: fieldAt,
    to: z
      .strictObject({ value: z.number(), ...said })
      .or(z.strictObject({ value: z.string().max(60), ...said }))
      .or(z.undefined()),
  }),
  apply: (project, { at, to }) => {
    const field = fieldOf(at.field)
    if (field) return stateNumber(project, field, at, to)
    const choice = choiceOf(at.field)
    if (choice) return stateWord(project, choice, at, to)
    return refused({ at: where(at), say: words('there is no such value', 'diesen Wert gibt es nicht') })
  },
}

const where = (at: FieldAt): string => `${at.part} ${at.field}`

const stateNumber = (
  project: Project,
  field: Field<number>,
  at: FieldAt,
  to: Stated<number> | Stated<string> | undefined,
): Result<Project> => {
  if (to === undefined) return ok(field.write(project, at.part, undefined))
  const { bounds, because } = field.allowed(project, at.part)
  if (!isNumber(to)) {
    return refused({
      at: where(at),
      say: words('a number is needed', 'eine Zahl wird gebraucht'),
      allowed: bounds,
    })
  }
  if (!isInside(exactly(to.value), bounds)) {
    const say = filled(
      words('{0} is outside the allowed range: {1}', '{0} liegt außerhalb des erlaubten Bereichs: {1}'),
      field.name,
      because,
    )
    return refused({ at: where(at), say, allowed: bounds })
  }
  return ok(field.write(project, at.part, to))
}

const stateWord = (
  project: Project,
  choice: ChoiceField,
  at: FieldAt,
  to: Stated<number> | Stated<string> | undefined,
): Result<Project> => {
  if (to === undefined) return ok(choice.write(project, at.part, undefined))
  const { choices } = choice.allowed(project, at.part)
  if (!isWord(to) || !choices.some(it => it.value === to.value)) {
    const names = listed(choices.map(it => it.name))
    return refused({
      at: where(at),
      say: filled(words('{0} is one of: {1}', '{0} ist eines von: {1}'), choice.name, names),
    })
  }
  return standing(choice.write(project, at.part, to))
}

const isNumber = (to: Stated<number> | Stated<string>): to is Stated<number> => Number.isFinite(to.value)
const isWord = (to: Stated<number> | Stated<string>): to is Stated<string> => typeof to.value === 'string'
