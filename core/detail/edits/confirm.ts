import { z } from 'zod'
import { ok, refused } from '../../units'
import { words } from '../../words'
import type { EditKind } from '../edit'
import { fieldOf, known } from '../fields/field-of'
import { fieldAt } from './state'

/** Makes an assumed value a specified one: somebody stands for it. */
export const confirm: EditKind<'confirm'> = {
  kind: 'confirm',
  schema: z.strictObject({ kind: z.literal('confirm'), at: fieldAt }),
  apply: (project, { at }) => {
    const value = known(project, at)
    const field = fieldOf(at.field)
    if (field === undefined || value === undefined) {
      return refused({
        at: `${at.part} ${at.field}`,
        say: words('there is no value to confirm', 'es gibt keinen Wert zu bestätigen'),
      })
    }
    return ok(field.write(project, at.part, { value: value.value, basis: 'specified' }))
  },
}
