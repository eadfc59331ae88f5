import { type Project } from '../../../core/detail'
import type { Problem } from '../../../core/units'
import { type Action, type Session, beginSession, dispatch } from '../../editor'
import { type Clock, followInTurns } from './in-turns'

/** A session as it is now, and the one way to change it. */
export type Board = {
  readonly now: Session
  /** applies an action; the problems say why it was not done */
  readonly act: (action: Action) => readonly Problem[]
}

/**
 * The panels that follow the hand, in the order of their turns: each in a frame of its own while something moves. All
 * round takes its turn with the fields; what is in no panel of these, with the parts.
 */
export const turns = ['parts', 'verdicts', 'fields', 'slice'] as const
export type Turn = (typeof turns)[number]

/** The same for each of them. */
export const inEachTurn = <T>(of: (turn: Turn) => T): Readonly<Record<Turn, T>> => ({
  parts: of('parts'),
  verdicts: of('verdicts'),
  fields: of('fields'),
  slice: of('slice'),
})

/** The one session of the window: under the hand, and as the panels round the section show it. */
export type Boards = Board & {
  /** while something moves they follow in short steps; at rest all of them are the very same session */
  readonly followed: Readonly<Record<Turn, Board>>
  /** whether a panel still shows a moment ago */
  readonly isBehind: boolean
}

/** So long the panels stand still between two of their rounds: less is not seen as waiting, and where frames take long some are spared. *Ours*. */
const behind_ms = 150

export const newBoard = (project: Project, clock: Clock = ofWindow): Boards => {
  const begun = beginSession(project)
  let now: Session = $state.raw(begun)
  const act: Board['act'] = action => {
    const done = dispatch(now, action)
    now = done.session
    if (now.gesture === undefined) following.rests(now)
    else following.moved(now)
    return done.problems
  }
  const follower = () => {
    let shown: Session = $state.raw(begun)
    return {
      board: {
        get now() {
          return shown
        },
        act,
      },
      show: (it: Session) => {
        shown = it
      },
    }
  }
  const followers = inEachTurn(follower)
  const following = followInTurns(
    turns.map(it => followers[it].show),
    { clock, behind_ms },
  )
  const isBehind = $derived(turns.some(it => followers[it].board.now !== now))
  return {
    get now() {
      return now
    },
    act,
    followed: inEachTurn(it => followers[it].board),
    get isBehind() {
      return isBehind
    },
  }
}

const ofWindow: Clock = {
  after: (ms, work) => {
    const waiting = setTimeout(work, ms)
    return () => clearTimeout(waiting)
  },
  inFrame: work => {
    const frame = requestAnimationFrame(work)
    return () => cancelAnimationFrame(frame)
  },
}
