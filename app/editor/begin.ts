import type { Project } from '../../core/detail'
import type { Session, View } from './session'

/** A session that begins with a project as it was opened: nothing to undo, nothing unsaved. */
export const beginSession = (project: Project, revision = 1): Session => ({
  project,
  revision,
  newest: revision,
  savedRevision: revision,
  selection: [],
  view: firstView(project),
  past: [],
  future: [],
})

/** Whether there is work that no file holds. */
export const isUnsaved = (session: Session): boolean => session.revision !== session.savedRevision

/** The left jamb of the first opening: the cut that says most about a joint. */
export const firstView = (project: Project): View => ({
  opening: Object.keys(project.openings)[0] ?? '',
  side: 'left',
})
