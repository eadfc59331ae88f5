import { type Project } from '../../../core/detail'
import type { Problem } from '../../../core/units'
import { type Action, type Session, beginSession, dispatch } from '../../editor'

/** A session as it is now, and the one way to change it. */
export type Board = {
  readonly now: Session
  /** applies an action; the problems say why it was not done */
  readonly act: (action: Action) => readonly Problem[]
}

/** The one session of the window: under the hand, and as the panels round the section show it. */
export type Boards = Board & {
  /** while something moves it follows in short steps; at rest it is the very same session */
  readonly followed: Board
  /** whether the panels still show a moment ago */
  readonly isBehind: boolean
}

/** So long the panels may be behind the hand: less is not seen as waiting, and where frames take long some are spared. *Ours*. */
const behind_ms = 150

export const newBoard = (project: Project): Boards => {
  const begun = beginSession(project)
  let now: Session = $state.raw(begun)
  let followed: Session = $state.raw(begun)
  let following: ReturnType<typeof setTimeout> | undefined
  const isBehind = $derived(followed !== now)
  const follow = (): void => {
    clearTimeout(following)
    following = undefined
    followed = now
  }
  const act: Board['act'] = action => {
    const done = dispatch(now, action)
    now = done.session
    if (now.gesture === undefined) follow()
    else following ??= setTimeout(follow, behind_ms)
    return done.problems
  }
  return {
    get now() {
      return now
    },
    act,
    followed: {
      get now() {
        return followed
      },
      act,
    },
    get isBehind() {
      return isBehind
    },
  }
}
