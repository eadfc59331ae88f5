import { z } from 'zod'
import { bases, isInside, ok, refused, exactly } from '../../units'
import { filled, words } from '../../words'
import type { EditKind } from '../edit'
import { fieldOf } from '../fields/field-of'

export const fieldAt = z.strictObject({ field: z.string(), part: z.string() })

/**
 * States a value of any field, or takes the statement back. A value outside the allowed range is refused with the
 * range and its reason: no geometry exists for it.
 */
export const state: EditKind<'state'> = {
  kind: 'state',
  schema: z.strictObject({
    kind: z.literal('state'),
    at: fieldAt,
    to: z
      .strictObject({ value: z.number(), basis: z.enum(bases), note: z.string().max(500).exactOptional() })
      .or(z.undefined()),
  }),
  apply: (project, { at, to }) => {
    const field = fieldOf(at.field)
    const where = `${at.part} ${at.field}`
    if (field === undefined)
      return refused({ at: where, say: words('there is no such value', 'diesen Wert gibt es nicht') })
    if (to === undefined) return ok(field.write(project, at.part, undefined))
    const { bounds, because } = field.allowed(project, at.part)
    if (!Number.isFinite(to.value)) {
      return refused({
        at: where,
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
      return refused({ at: where, say, allowed: bounds })
    }
    return ok(field.write(project, at.part, to))
  },
}
