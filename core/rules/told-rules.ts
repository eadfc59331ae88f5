import type { Told } from '../detail'
import { exactly, type Unit } from '../units'
import { listed, type Some, type Words, words } from '../words'
import type { Accepted, Bounded } from '../practice'
import type { LimitKey, LimitShapes } from '../practice'
import type { About, Place } from './place'
import type { Reading } from './reading'
import { wordName } from './readings/told'
import { act } from './remedies/state'
import { type AnyRule, rule } from './rule'
import type { Caution } from './rule-shape'

type Keys<Then> = {
  [K in LimitKey]: LimitShapes[K] extends { given: Record<never, never>; then: Then } ? K : never
}[LimitKey]

/** What rules on one told word or amount say of themselves. */
type Saying = {
  readonly about?: About
  readonly title: Words
  readonly says: Words
  readonly why: Words
  /** work on site that cures, before the value is told anew */
  readonly cure: Words
  readonly applies?: (at: Place) => true | Words
}

/** A rule on one word that is told: it is one of those that the practice accepts. */
export const wordRule = <L extends Extract<Keys<Accepted>, LimitKey>>(
  it: Saying & {
    readonly id: L
    readonly word: Reading<string>
    readonly caution?: (word: string) => Caution | undefined
    readonly examples: Some<
      readonly [when: Words, practice: string, word: string | undefined, verdict: Shown]
    >
  },
): AnyRule =>
  rule<{ readonly word: Reading<string> }, L>({
    id: it.id,
    about: it.about ?? 'opening',
    title: it.title,
    says: it.says,
    why: it.why,
    reads: { word: it.word },
    limit: it.id,
    band: [],
    applies: it.applies ?? (() => true),
    // These limits depend on nothing: the empty record is all that is given.
    ask: () => [{ given: {} as LimitShapes[L]['given'] }],
    compare: ({ word }, then) => {
      const { accepted } = then as Accepted
      return {
        kind: 'presence',
        there: [wordName(it.word.id, word)],
        missing: accepted.includes(word) ? [] : [either(accepted.map(one => wordName(it.word.id, one)))],
      }
    },
    sum: () => [],
    *remedies(_known, _then, at) {
      yield act(it.cure, it.word.id, at.opening.id)
    },
    ...(it.caution ? { caution: ({ word }) => it.caution?.(word) } : {}),
    examples: shown(it.examples, word => ({ word })),
  })

/** A rule on one amount that is told: it stays within what the practice says. */
export const amountRule = <L extends Extract<Keys<Bounded>, LimitKey>>(
  it: Saying & {
    readonly id: L
    readonly amount: Reading<number>
    readonly unit: Unit
    readonly examples: Some<readonly [when: Words, practice: string, amount: number | undefined, verdict: Shown]>
  },
): AnyRule =>
  rule<{ readonly amount: Reading<number> }, L>({
    id: it.id,
    about: it.about ?? 'opening',
    title: it.title,
    says: it.says,
    why: it.why,
    reads: { amount: it.amount },
    limit: it.id,
    band: [],
    applies: it.applies ?? (() => true),
    // These limits depend on nothing: the empty record is all that is given.
    ask: () => [{ given: {} as LimitShapes[L]['given'] }],
    compare: ({ amount }, then) => ({
      kind: 'amount',
      actual: exactly(amount),
      required: boundsOf(then as Bounded, it.unit),
    }),
    sum: () => [],
    *remedies(_known, _then, at) {
      yield act(it.cure, it.amount.id, at.opening.id)
    },
    examples: shown(it.examples, amount => ({ amount })),
  }) // prettier-ignore

type Shown = AnyRule['examples'][number]['verdict']

/** What is asked as bounds of an amount. */
export const boundsOf = ({ least, most }: Bounded, unit: Unit) => ({
  unit,
  ...(least === undefined ? {} : { min: least }),
  ...(most === undefined ? {} : { max: most }),
})

/** "free or covered" */
const either = (all: readonly Words[]): Words =>
  all.length < 2
    ? listed(all)
    : { en: all.map(it => it.en).join(' or '), de: all.map(it => it.de).join(' oder ') }

const shown = <V, K extends object>(
  [first, ...more]: Some<readonly [when: Words, practice: string, value: V | undefined, verdict: Shown]>,
  known: (value: V) => K,
) => {
  const one = ([when, practice, value, verdict]: typeof first) => ({
    when,
    practice,
    joint: { planned_mm: 15 },
    known: value === undefined ? {} : known(value),
    verdict,
  })
  return [one(first), ...more.map(one)] as const
}

/** Whether a word of that name is told of an opening; a rule that asks for a proof applies only then. */
export const isTold = (at: Place, key: keyof Told): boolean => at.opening.told?.[key] !== undefined

export const nobodyTold = words('nobody has told of it', 'niemand hat es genannt')
