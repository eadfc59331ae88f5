import type { JointBand, Term } from '../movement'
import type { LimitKey, LimitShapes, Practice } from '../practice'
import type { JointState } from '../section'
import type { Some, Words } from '../words'
import type { ExampleJoint } from './example-band'
import type { Compared, Remedy, Verdict } from './finding'
import type { Place } from './place'
import type { Readings, ValuesOf } from './reading'

/** What a rule asks of a practice. A rule on a width asks once for each end of the joint. */
export type Asked<L extends LimitKey> = {
  readonly given: LimitShapes[L]['given']
  readonly state?: JointState
  readonly width_mm?: number
}

/** Which parts of the joint band a rule reads: the still width, the size of frame and opening, the movement. */
export type BandUse = 'still' | 'size' | 'movement'

/** A case in words with the verdict that it has: a page of the manual and a test at once. */
export type Example<R extends Readings> = {
  readonly when: Words
  readonly practice: string
  readonly joint: ExampleJoint
  /** a value that is left out is missing */
  readonly known: Partial<ValuesOf<R>>
  readonly verdict: Verdict
}

/**
 * A rule: what it says, what it reads, which limit, how it compares, what cures. The numbers and their source come from
 * the practice. The check adds *unknown* (a value is missing), *refer* (no row), verdict, margin and what it rests on.
 */
export type Rule<R extends Readings, L extends LimitKey> = {
  readonly id: string
  /** a rule about a part is asked of each seal that it applies to, and once without one where there is none */
  readonly about: 'part' | 'zone'
  readonly title: Words
  readonly says: Words
  readonly why: Words
  readonly reads: R
  readonly limit: L
  readonly band: readonly BandUse[]
  readonly applies: (at: Place) => true | Words
  readonly ask: (known: ValuesOf<R>, band: JointBand, practice: Practice) => Some<Asked<L>>
  readonly compare: (
    known: ValuesOf<R>,
    then: LimitShapes[L]['then'],
    asked: Asked<L>,
    band: JointBand,
  ) => Compared
  readonly sum: (
    known: ValuesOf<R>,
    then: LimitShapes[L]['then'],
    asked: Asked<L>,
    band: JointBand,
  ) => readonly Term[]
  /** candidates, best first, that reach what the first tier asks; the check keeps those that cure without breaking anything else */
  readonly remedies: (known: ValuesOf<R>, then: LimitShapes[L]['then'], at: Place) => Some<Remedy>
  /** turns *not met* into *refer* where somebody stands for an accepted exception */
  readonly excused?: (at: Place) => { readonly to: Words; readonly handOver: readonly Words[] } | undefined
  readonly examples: Some<Example<R>>
}
