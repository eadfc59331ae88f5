import { isAlike } from './alike'
import { stillThere } from './selectable'
import { firstView } from './begin'
import type { Session, Step, View } from './session'
import type { Words } from '../../core/words'
import type { Project } from '../../core/detail'

/** How many steps back can be gone. Steps share what they have in common, so a long history costs little. *Ours.* */
export const historyDepth = 500

/** The present as a step to come back to. */
export const stepOf = ({ project, revision, selection }: Session, says: Words): Step => ({
  project,
  revision,
  selection,
  says,
})

/** The session with another project in it, which gets a revision of its own. */
export const withProject = (session: Session, project: Project): Session => ({
  ...session,
  view: viewIn(project, session.view),
  project,
  revision: session.newest + 1,
  newest: session.newest + 1,
  selection: stillThere(session.selection, project),
})

/** Makes the way from `before` to the present one step. A way that leads back to where it began is none. */
export const remembered = (session: Session, before: Step): Session =>
  isAlike(before.project, session.project)
    ? { ...session, project: before.project, revision: before.revision }
    : { ...session, past: [...session.past, before].slice(-historyDepth), future: [] }

/** One step back; the present waits in the future. */
export const undone = (session: Session): Session => {
  const step = session.past.at(-1)
  if (step === undefined) return session
  const past = session.past.slice(0, -1)
  return { ...stepInto(session, step), past, future: [stepOf(session, step.says), ...session.future] }
}

/** One step forward again. */
export const redone = (session: Session): Session => {
  const [step, ...future] = session.future
  if (step === undefined) return session
  return { ...stepInto(session, step), past: [...session.past, stepOf(session, step.says)], future }
}

/** The session with project, revision and selection of a step. */
export const stepInto = (session: Session, { project, revision, selection }: Step): Session => ({
  ...session,
  view: viewIn(project, session.view),
  project,
  revision,
  selection,
})

/** The view, or the first of a project that no longer has what was looked at. */
const viewIn = (project: Project, view: View): View =>
  Object.hasOwn(project.openings, view.opening) ? view : firstView(project)
