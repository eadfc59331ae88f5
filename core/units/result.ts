import type { Some, Words } from '../words'
import type { Bounds } from './band'

/** One thing that is wrong with an input: where, what, and the range that would be taken. */
export type Problem = { readonly at: string; readonly say: Words; readonly allowed?: Bounds }

/** The answer to an input: a value, or every problem that was found. */
export type Result<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: Some<Problem> }

export const ok = <T>(value: T): Result<T> => ({ ok: true, value })

export const refused = (
  first: Problem,
  ...more: readonly Problem[]
): { readonly ok: false; readonly problems: Some<Problem> } => ({
  ok: false,
  problems: [first, ...more],
})
