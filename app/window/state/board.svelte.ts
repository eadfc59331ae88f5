import { type Project } from '../../../core/detail'
import type { Problem } from '../../../core/units'
import { type Action, type Session, beginSession, dispatch } from '../../editor'

/** The one session of the window and the one way to change it. */
export type Board = {
  readonly now: Session
  /** applies an action; the problems say why it was not done */
  readonly act: (action: Action) => readonly Problem[]
}

export const newBoard = (project: Project): Board => {
  let now: Session = $state.raw(beginSession(project))
  return {
    get now() {
      return now
    },
    act: action => {
      const done = dispatch(now, action)
      now = done.session
      return done.problems
    },
  }
}
