import type { Edit, FieldAt } from '../detail'
import type { Id } from '../geometry'
import type { Side } from '../kinds'
import type { Term } from '../movement'
import type { JointState } from '../section'
import type { Citation } from '../sources'
import type { Band, Bounds } from '../units'
import type { Some, Words } from '../words'

/** What a finding is about. */
export type Where = {
  readonly opening: Id
  readonly side?: Side
  readonly zone?: Id
  readonly part?: Id
  readonly corner?: readonly [Side, Side]
}

/** What was held against what. The margin is computed from this, never typed. */
export type Compared =
  | {
      readonly kind: 'amount'
      readonly actual: Band
      readonly required: Bounds
      readonly governs?: JointState
    }
  | {
      readonly kind: 'grade'
      readonly scale: readonly Words[]
      readonly actual: number
      readonly required: number
    }
  | { readonly kind: 'presence'; readonly there: readonly Words[]; readonly missing: readonly Words[] }

/** What cures a finding: a change of design values in one click, or work on site and the value to measure again. */
export type Remedy =
  | { readonly kind: 'change'; readonly say: Words; readonly edits: Some<Edit> }
  | { readonly kind: 'act'; readonly say: Words; readonly thenState: FieldAt }

export const verdicts = ['not-met', 'unknown', 'refer', 'advice', 'met'] as const
export type Verdict = (typeof verdicts)[number]

export type Outcome =
  | { readonly verdict: 'met'; readonly compared: Compared }
  | { readonly verdict: 'advice' | 'not-met'; readonly compared: Compared; readonly remedies: Some<Remedy> }
  | {
      readonly verdict: 'refer'
      readonly compared?: Compared
      readonly to: Words
      readonly handOver: readonly Words[]
    }
  | { readonly verdict: 'unknown'; readonly missing: Some<FieldAt> }

/** The answer of one rule at one place: a small proof with its sum, its source, and what it rests on. */
export type Finding = {
  readonly rule: string
  readonly title: Words
  readonly where: Where
  readonly cite?: Citation
  readonly sum: readonly Term[]
  readonly restsOn: readonly FieldAt[]
} & Outcome

/** A rule that does not apply, and why: silence is never approval. */
export type NotApplicable = {
  readonly rule: string
  readonly title: Words
  readonly where: Where
  readonly because: Words
}

export type Report = {
  readonly findings: readonly Finding[]
  readonly notApplicable: readonly NotApplicable[]
}
