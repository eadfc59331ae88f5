import type { Problem } from '../../units'
import type { HeatCase } from '../case'
import type { Solution } from '../solution'
import { type Moving, moveTo, startMoving } from './moving'

/** A question to the worker: which revision of the model it belongs to, and the case. */
export type HeatRequest = { readonly revision: number; readonly case: HeatCase }

/** An answer names its revision, so that an older one is never taken for fresh. */
export type HeatAnswer =
  | {
      readonly revision: number
      readonly ok: true
      readonly how: 'new' | 'followed' | 'remeshed'
      readonly solution: Solution
    }
  | { readonly revision: number; readonly ok: false; readonly problems: readonly Problem[] }

/** What a desk needs of its surroundings: when to do the next piece of work, and where answers go. */
export type DeskSurroundings = {
  /** Runs work after whatever has already arrived, so that a request that was overtaken is never begun. */
  readonly later: (work: () => void) => void
  readonly answer: (it: HeatAnswer) => void
}

/**
 * A desk for a worker: requests that were overtaken are dropped, and the field of the last one is the start of the next.
 * Answers come in ascending revisions; every last request is answered.
 */
export const heatDesk = ({
  later,
  answer,
}: DeskSurroundings): { readonly ask: (request: HeatRequest) => void } => {
  let waiting: HeatRequest | undefined
  let moving: Moving | undefined
  const work = () => {
    const request = waiting
    waiting = undefined
    if (!request) return
    const frame = moving ? moveTo(moving, request.case) : first(request.case)
    moving = frame.ok ? frame.value.moving : undefined
    answer(
      frame.ok
        ? {
            revision: request.revision,
            ok: true,
            how: frame.value.how,
            solution: frame.value.moving.solution,
          }
        : { revision: request.revision, ok: false, problems: frame.problems },
    )
  }
  return {
    ask: request => {
      const isIdle = waiting === undefined
      if (waiting && request.revision < waiting.revision) return
      waiting = request
      if (isIdle) later(work)
    },
  }
}

const first = (it: HeatCase) => {
  const started = startMoving(it)
  return started.ok ? { ok: true as const, value: { how: 'new' as const, moving: started.value } } : started
}
