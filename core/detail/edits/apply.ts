import { ok, type Result } from '../../units'
import type { Edit, EditKind, Edits } from '../edit'
import type { Project } from '../model'
import { editKinds } from './all'

/** Applies one edit. Refused: the project stays as it is, and every problem is said. */
export const applyEdit = (project: Project, edit: Edit): Result<Project> => {
  // The list is keyed by kind, so the kind of this edit takes this edit; TypeScript does not correlate the two.
  const kind = editKinds[edit.kind] as EditKind<keyof Edits>
  return kind.apply(project, edit as never)
}

/** Applies edits one after the other; the first that is refused refuses them all. */
export const applyEdits = (project: Project, edits: readonly Edit[]): Result<Project> =>
  edits.reduce<Result<Project>>((so, edit) => (so.ok ? applyEdit(so.value, edit) : so), ok(project))
