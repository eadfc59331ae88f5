import type { JointBand, Term } from '../movement'
import type { LimitKey, LimitShapes, Practice } from '../practice'
import type { JointState } from '../section'
import type { Some, Words } from '../words'
import type { ExampleJoint } from './example-band'
import type { Compared, Remedy, Verdict } from './finding'
import type { About, Place } from './place'
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
  readonly about: About
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
  /** what can be computed although a value is missing: it is printed with the answer that it is unknown */
  readonly soFar?: (known: Partial<ValuesOf<R>>, then: LimitShapes[L]['then']) => readonly Term[]
  /**
   * Candidates that reach what the first tier asks: work on site, then changes, best first. The check asks for as many
   * as it needs and keeps those changes that cure without breaking anything else; where none is left, it says so.
   */
  readonly remedies: (known: ValuesOf<R>, then: LimitShapes[L]['then'], at: Place) => Iterable<Remedy>
  /** turns *not met* into *refer* where somebody stands for an accepted exception */
  readonly excused?: (at: Place) => { readonly to: Words; readonly handOver: readonly Words[] } | undefined
  /** what is never plainly met: with its figures it goes to somebody who stands for it; what is not met stays so */
  readonly caution?: (known: ValuesOf<R>) => Caution | undefined
  readonly examples: Some<Example<R>>
}

/** Who has to stand for what a rule found, and what they need beside the figures. */
export type Caution = { readonly to: Words; readonly handOver: readonly Words[] }
