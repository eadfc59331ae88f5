import type { Edit, Project } from '../../core/detail'
import type { Id } from '../../core/geometry'
import type { Side } from '../../core/kinds'
import type { Problem } from '../../core/units'
import type { Some, Words } from '../../core/words'

/**
 * A state of the work that undo or redo can come back to. `says` is what lies between it and the present:
 * in the past what undo takes back, in the future what redo does again.
 */
export type Step = {
  readonly project: Project
  readonly revision: number
  readonly selection: readonly Id[]
  readonly says: Words
}

/** Which cut of which opening is on the board, and how it is looked at. */
export type View = {
  readonly opening: Id
  readonly side: Side
  /** the zone of the side; absent: its first */
  readonly zone?: Id
  /** model point in the middle of the board; absent: fit the whole */
  readonly at?: readonly [x_mm: number, y_mm: number]
  /** screen pixels per model millimetre at device ratio 1; absent: fit the whole */
  readonly zoom?: number
}

/**
 * All that the editor knows, in one immutable value. Everything else is derived from it.
 * `revision` names the model that an answer belongs to: an answer to another one is shown as such, never as fresh.
 * Undo brings a project back together with its revision, so what was saved or computed then is right again.
 */
export type Session = {
  readonly project: Project
  readonly revision: number
  /** the highest revision that was ever given: none is given twice */
  readonly newest: number
  readonly savedRevision: number
  readonly selection: readonly Id[]
  readonly view: View
  /** oldest first */
  readonly past: readonly Step[]
  /** next to redo first */
  readonly future: readonly Step[]
  /** while something is dragged: the state before it began */
  readonly gesture?: { readonly before: Step }
}

/**
 * Everything that can be done to a session. `preview` is a step of a gesture, said from where the gesture began;
 * `settle` makes the gesture one undo step, `abandon` takes it back. `saved` names the revision that was written,
 * because work goes on while a file is written. `fit` shows the whole cut again.
 */
export type Action =
  | { readonly kind: 'edit'; readonly edits: Some<Edit>; readonly says: Words }
  | { readonly kind: 'preview'; readonly edits: Some<Edit>; readonly says: Words }
  | { readonly kind: 'settle' | 'abandon' | 'undo' | 'redo' | 'fit' }
  | { readonly kind: 'saved'; readonly revision: number }
  | { readonly kind: 'select'; readonly parts: readonly Id[] }
  | { readonly kind: 'look'; readonly view: Partial<View> }
  | { readonly kind: 'open'; readonly project: Project }

/** The session after an action, and what kept the action from being done. */
export type Dispatched = { readonly session: Session; readonly problems: readonly Problem[] }

/** Applies an action. A refused edit leaves the session as it was and says every problem. */
export type Dispatch = (session: Session, action: Action) => Dispatched

/** What a worker answers (heat, vapour, proposals), with the revision that was asked about. */
export type Answer<T> = { readonly revision: number; readonly value: T }
