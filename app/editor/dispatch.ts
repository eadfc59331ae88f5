import { applyEdits } from '../../core/detail'
import { beginSession } from './begin'
import { redone, remembered, stepInto, stepOf, undone, withProject } from './history'
import { stillThere } from './selectable'
import type { Action, Dispatch, Dispatched, Session, View } from './session'

/** The one way in which a session changes. */
export const dispatch: Dispatch = (session, action) => {
  switch (action.kind) {
    case 'edit':
      return edited(settled(session), action)
    case 'preview':
      return previewed(session, action)
    case 'settle':
      return fine(settled(session))
    case 'abandon':
      return fine(abandoned(session))
    case 'undo':
      // Whoever takes back while dragging means the drag.
      return fine(session.gesture ? abandoned(session) : undone(session))
    case 'redo':
      return fine(session.gesture ? session : redone(session))
    case 'saved':
      return fine({ ...session, savedRevision: action.revision })
    case 'select':
      return fine({ ...session, selection: stillThere(action.parts, session.project) })
    case 'look':
      return fine({ ...session, view: lookedAt(session, action.view) })
    case 'fit':
      return fine({ ...session, view: wholeCut(session.view) })
    case 'open':
      return fine(beginSession(action.project, session.newest + 1))
  }
}

type Change = Extract<Action, { readonly kind: 'edit' | 'preview' }>

const fine = (session: Session): Dispatched => ({ session, problems: [] })

const edited = (session: Session, { edits, says }: Change): Dispatched => {
  const project = applyEdits(session.project, edits)
  if (!project.ok) return { session, problems: project.problems }
  return fine(remembered(withProject(session, project.value), stepOf(session, says)))
}

/** The edits of a gesture are said from where it began, so that a drag of many moves adds nothing up. */
const previewed = (session: Session, { edits, says }: Change): Dispatched => {
  const before = { ...(session.gesture?.before ?? stepOf(session, says)), says }
  const project = applyEdits(before.project, edits)
  if (!project.ok) return { session, problems: project.problems }
  return fine({ ...withProject(session, project.value), gesture: { before } })
}

const settled = (session: Session): Session => {
  const { gesture, ...rest } = session
  return gesture ? remembered(rest, gesture.before) : session
}

const abandoned = (session: Session): Session => {
  const { gesture, ...rest } = session
  return gesture ? stepInto(rest, gesture.before) : session
}

/** Another cut is shown whole, unless it is said how to look at it. */
const lookedAt = ({ view, project }: Session, asked: Partial<View>): View => {
  const opening =
    asked.opening !== undefined && project.openings[asked.opening] ? asked.opening : view.opening
  const side = asked.side ?? view.side
  const isSameSide = opening === view.opening && side === view.side
  const isSameCut = isSameSide && (asked.zone === undefined || asked.zone === view.zone)
  return { ...(isSameCut ? view : {}), ...asked, opening, side }
}

/** The same cut, looked at as a whole. */
const wholeCut = ({ opening, side, zone }: View): View => ({
  opening,
  side,
  ...(zone === undefined ? {} : { zone }),
})
