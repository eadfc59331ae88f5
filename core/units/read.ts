import { type Words, filled, words } from '../words'
import { type Bounds, exactly, isInside } from './band'
import { type Sum, longestText, sumOf } from './read-sum'
import { type Problem, type Result, ok, refused } from './result'
import type { Unit } from './unit'
import { inWords, writeBounds, writeQuantity } from './write'

/** What a typed text is read as. */
export type Reading<T> = {
  readonly value: T
  /** the value as it was understood, for the line below the field */
  readonly understood: Words
  /** what was typed does not say the same at a glance: the line below the field is wanted */
  readonly differs: boolean
  /** what was put right on the way */
  readonly notes: readonly Words[]
  /** what has to be confirmed before the value is taken */
  readonly asks?: Words
}

/** What a field takes: the unit it is kept in, what is allowed, and where a problem is reported. */
export type Wanted = { readonly unit: Unit; readonly allowed?: Bounds; readonly at?: string }

/**
 * Reads a typed quantity into the unit that is wanted: `12,5`, `1200+2*15`, `1,18 m`, `46 7/16 in`, `5' 2 1/2"`.
 * Both decimal marks are read in every language. `1.200` is 1.2 and asks, because it may have been meant as 1200.
 * Refused with the allowed range: what is no sum, what does not end, what lies outside.
 */
export const readQuantity = (text: string, wanted: Wanted): Result<Reading<number>> => {
  if (isRange(text)) return refused(problem(oneValue, wanted))
  const sum = sumOf(text, wanted.unit)
  if ('refusal' in sum) return refused(problem(sum.refusal, wanted))
  const outside = outsideOf(sum.value, wanted)
  if (outside !== undefined) return refused(outside)
  const understood = inWords(language => writeQuantity(sum.value, wanted.unit, language))
  return ok({ value: sum.value, understood, differs: !sum.isPlain, notes: [], ...asking(understood, [sum]) })
}

/** Largest size that is read, in any unit: a thousand kilometres. *Ours*, far beyond every allowed range. */
export const largest = 1e9

/** A problem with a typed text, at the place of its field. */
export const problem = (say: Words, { at = '', allowed }: Wanted): Problem => ({
  at,
  say,
  ...(allowed && { allowed }),
})

/** The problem of a value that is not allowed, or nothing. */
export const outsideOf = (value: number, wanted: Wanted): Problem | undefined => {
  const { unit, allowed } = wanted
  const understood = inWords(language => writeQuantity(value, unit, language))
  if (largest < Math.abs(value)) return problem(tooLarge, wanted)
  if (allowed === undefined || isInside(exactly(value), allowed)) return undefined
  const range = inWords(language => writeBounds(allowed, language))
  return problem(filled(outside, understood, range), wanted)
}

/** Asks back where a decimal mark may have been meant to group thousands. */
export const asking = (understood: Words, sums: readonly Sum[]): { readonly asks?: Words } =>
  sums.some(it => it.maybeThousands) ? { asks: filled(words('{0}?', '{0}?'), understood) } : {}

/** Two values with something between them that only a range has. */
const isRange = (text: string): boolean =>
  text.length <= longestText && /\.\.|…|±|\d\s*(?:to|bis)\s/i.test(text)

const oneValue = words('one value is asked for, not a range', 'gefragt ist ein Wert, kein Bereich')
const tooLarge = words('too large a number', 'die Zahl ist zu groß')
const outside = words(
  '{0} is outside what is possible here: {1}',
  '{0} liegt außerhalb des hier Möglichen: {1}',
)
