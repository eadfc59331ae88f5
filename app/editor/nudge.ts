import type { Point } from '../../core/geometry'
import { nudged } from './drag'
import { type Grip, gripsOf } from './grips'
import type { Action, Session } from './session'

/** The way of an arrow key on the board, and how far one press goes. */
export type Nudge = { readonly towards: Point; readonly by_mm: number }

/** How far an arrow moves: plain, with Shift, with Alt. */
export const nudgeSteps_mm = { plain: 1, shift: 10, alt: 0.1 } as const

/**
 * The preview of a nudge of what is selected, or nothing where nothing of it can move that way. Pressed again and again
 * while the key is held, the previews are one gesture; the window settles it when the key comes up.
 */
export const nudge = (session: Session, { towards, by_mm }: Nudge): Action | undefined => {
  const { project, view, selection } = session
  const grip = gripsOf(project, view).find(
    it => selection.includes(it.part) && !it.isLocked && 0.5 < Math.abs(way(it, towards)),
  )
  if (grip === undefined) return undefined
  const { edits, says } = nudged(project, { grip, by_mm: Math.sign(way(grip, towards)) * by_mm })
  return { kind: 'preview', edits, says }
}

const way = ({ along }: Grip, towards: Point): number => along[0] * towards[0] + along[1] * towards[1]
