import type { Term } from '../movement'
import type { Judgement } from './judge'
import { type Asking, remembering } from './remember'

/** What rules have answered, and how their sums came about, by what they looked at. */
export type Memory = {
  readonly judgements: Asking<Judgement>
  readonly sums: Asking<readonly Term[]>
}

/** A memory with nothing in it. One that is kept from check to check makes the next one ask only what a change touches. */
export const emptyMemory = (): Memory => ({
  judgements: remembering((rule, at) => rule.judge(at)),
  sums: remembering((rule, at) => sumOf(rule.judge(at))),
})

/** The sum of an answer, written out. */
export const sumOf = (found: Judgement): readonly Term[] => ('sum' in found ? found.sum() : [])
