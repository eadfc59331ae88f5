import type { LimitKey, Practice } from '../practice'
import type { Words } from '../words'
import { exampleBand } from './example-band'
import type { Verdict } from './finding'
import { judge, type Judgement } from './judge'
import type { About, Place } from './place'
import type { Reading, Readings, ValuesOf } from './reading'
import type { Example, Rule } from './rule-shape'
import { weigh } from './weigh'

/** A rule whose inner types nobody outside needs. */
export type AnyRule = {
  readonly id: string
  readonly about: About
  readonly title: Words
  readonly says: Words
  readonly why: Words
  readonly limit: LimitKey
  readonly reads: readonly Reading<unknown>[]
  readonly judge: (at: Place) => Judgement
  /** whether what it finds may have to be referred although it is met */
  readonly isCautious: boolean
  readonly examples: readonly {
    readonly when: Words
    readonly practice: string
    readonly verdict: Verdict
    /** what the rule says of the example under a practice */
    readonly found: (practice: Practice) => Verdict
  }[]
}

/** Closes a rule over its types. */
export const rule = <R extends Readings, L extends LimitKey>(it: Rule<R, L>): AnyRule => ({
  id: it.id,
  about: it.about,
  title: it.title,
  says: it.says,
  why: it.why,
  limit: it.limit,
  reads: Object.values(it.reads),
  judge: at => judge(it, at),
  isCautious: it.caution !== undefined,
  examples: it.examples.map(example => ({
    when: example.when,
    practice: example.practice,
    verdict: example.verdict,
    found: practice => foundIn(it, example, practice),
  })),
})

const foundIn = <R extends Readings, L extends LimitKey>(
  it: Rule<R, L>,
  example: Example<R>,
  practice: Practice,
): Verdict => {
  const band = exampleBand(example.joint)
  const known = complete(it.reads, example.known)
  return known ? weigh(it, known, band, practice).verdict : 'unknown'
}

const complete = <R extends Readings>(reads: R, known: Partial<ValuesOf<R>>): ValuesOf<R> | undefined =>
  // With every key of the readings there, a partial record of their values is the whole one.
  Object.keys(reads).every(key => key in known) ? (known as ValuesOf<R>) : undefined
