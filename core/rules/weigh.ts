import type { JointBand, Term } from '../movement'
import { type LimitKey, lookUp, type Practice, type Tier } from '../practice'
import type { Citation } from '../sources'
import { marginOf, isInside } from '../units'
import { type Compared, type Verdict, verdicts } from './finding'
import type { Readings, ValuesOf } from './reading'
import type { Asked, Caution, Rule } from './rule-shape'

/** A comparison with its limit and its verdict; without a row of the practice there is neither. */
export type Weighed<L extends LimitKey> =
  | { readonly verdict: 'refer'; readonly asked: Asked<L>; readonly compared?: undefined }
  | {
      readonly verdict: 'met' | 'advice' | 'not-met' | 'refer'
      readonly asked: Asked<L>
      readonly compared: Compared
      readonly cite: Citation
      /** the first tier: what remedies aim at */
      readonly wanted: Tier<L>['then']
      readonly sum: () => readonly Term[]
      /** why it is referred although it is met */
      readonly caution?: Caution
    }

/** Holds what is known against the practice at every end that the rule asks about; the worst counts. */
export const weigh = <R extends Readings, L extends LimitKey>(
  it: Rule<R, L>,
  known: ValuesOf<R>,
  band: JointBand,
  practice: Practice,
): Weighed<L> => {
  const [first, ...more] = it.ask(known, band, practice)
  const at = (asked: Asked<L>) => weighOne(it, known, band, practice, asked)
  const found = more.reduce<Weighed<L>>((worst, asked) => worseOf(worst, at(asked)), at(first))
  return cautious(found, it.caution?.(known))
}

/** What would be met, or advice, is referred where a rule is never plainly met; the figures stay. */
const cautious = <L extends LimitKey>(found: Weighed<L>, caution: Caution | undefined): Weighed<L> =>
  caution && found.compared && found.verdict !== 'not-met' ? { ...found, verdict: 'refer', caution } : found

const weighOne = <R extends Readings, L extends LimitKey>(
  it: Rule<R, L>,
  known: ValuesOf<R>,
  band: JointBand,
  practice: Practice,
  asked: Asked<L>,
): Weighed<L> => {
  const row = lookUp(practice, it.limit, asked.given)
  if (!row) return { verdict: 'refer', asked }
  const against = (tier: Tier<L>, verdict: 'met' | Tier<L>['ifBroken']): Weighed<L> => ({
    verdict,
    asked,
    compared: governed(it.compare(known, tier.then, asked, band), asked),
    cite: tier.cite,
    wanted: row.then,
    sum: () => it.sum(known, tier.then, asked, band),
  })
  if (holds(it.compare(known, row.then, asked, band))) return against(row, 'met')
  if (!row.last) return against(row, row.ifBroken)
  return holds(it.compare(known, row.last.then, asked, band))
    ? against(row, row.ifBroken)
    : against(row.last, row.last.ifBroken)
}

/** Whether what was found is what is asked for. */
export const holds = (it: Compared): boolean => {
  if (it.kind === 'amount') return isInside(it.actual, it.required)
  if (it.kind === 'grade') return it.actual >= it.required
  return it.missing.length === 0
}

/** How far an amount stays inside its bounds, negative outside; nothing for other comparisons. */
export const marginIn = (it: Compared): number | undefined =>
  it.kind === 'amount' ? marginOf(it.actual, it.required) : undefined

const governed = <L extends LimitKey>(it: Compared, asked: Asked<L>): Compared =>
  it.kind === 'amount' && asked.state ? { ...it, governs: asked.state } : it

const worseOf = <L extends LimitKey>(a: Weighed<L>, b: Weighed<L>): Weighed<L> => {
  const rank = severity(b.verdict) - severity(a.verdict)
  if (rank !== 0) return rank < 0 ? b : a
  return shortfall(b) < shortfall(a) ? b : a
}

const severity = (it: Verdict): number => verdicts.indexOf(it)
const shortfall = <L extends LimitKey>(it: Weighed<L>): number =>
  (it.compared && marginIn(it.compared)) ?? Infinity
