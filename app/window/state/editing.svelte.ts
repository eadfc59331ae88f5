import type { Id } from '../../../core/geometry'

/** What is being done to a part beyond its values: its name is typed, the practice is edited. Nothing of it is in the file. */
export type Editing = {
  /** the part whose name is being typed in the list; empty: none */
  renaming: Id | ''
  /** the dialog of the practice is open; with a rule, at the limit of that rule */
  practice: { readonly limit: string } | undefined
  /** groups of fields that somebody opened or folded away, by their name */
  folds: Record<string, boolean>
  /** totals of walls that somebody named though the layers add up to something else */
  references: Record<Id, number>
  /** what was copied in this window last: where a clipboard may not be read, this is pasted */
  copied: string
}

export const newEditing = (): Editing => {
  const it: Editing = $state({ renaming: '', practice: undefined, folds: {}, references: {}, copied: '' })
  return it
}
