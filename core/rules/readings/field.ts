import { type Field, fieldOf } from '../../detail'

/** A value of the model by its name. Throws on a name that no field has: a rule that misspells it never loads. */
export const field = (id: string): Field<number> => {
  const found = fieldOf(id)
  if (!found) throw new Error(`A rule reads ${id}, and there is no such value`)
  return found
}
