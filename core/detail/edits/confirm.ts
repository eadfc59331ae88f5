import { z } from 'zod'
import { ok, refused, type Result } from '../../units'
import { words } from '../../words'
import type { EditKind } from '../edit'
import { choiceOf, knownChoice } from '../fields/choices'
import { fieldOf, known } from '../fields/field-of'
import type { Project } from '../model'
import { fieldAt } from './state'

/** Makes an assumed value or word a specified one: somebody stands for it. */
export const confirm: EditKind<'confirm'> = {
  kind: 'confirm',
  schema: z.strictObject({ kind: z.literal('confirm'), at: fieldAt }),
  apply: (project, { at }): Result<Project> => {
    const value = known(project, at)
    const word = knownChoice(project, at)
    const field = fieldOf(at.field)
    const choice = choiceOf(at.field)
    if (field && value) return ok(field.write(project, at.part, { value: value.value, basis: 'specified' }))
    if (choice && word) return ok(choice.write(project, at.part, { value: word.value, basis: 'specified' }))
    return refused({
      at: `${at.part} ${at.field}`,
      say: words('there is no value to confirm', 'es gibt keinen Wert zu bestätigen'),
    })
  },
}
