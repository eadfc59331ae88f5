// Compiled with the other tests, never run: each line that must not compile is marked, and a mark without its error
// does not compile either.
import { z } from 'zod'
import type { Edit, EditKinds, EditOf, Project, Readable } from '../../core/detail'
import type { View, Writers } from '../../core/drawing'
import type { FrameMaterial } from '../../core/kinds'
import type { Practice } from '../../core/practice'
import { lookUp } from '../../core/practice'
import type { Finding, Outcome, Remedy } from '../../core/rules'
import type { Reading, ValuesOf } from '../../core/rules/reading'
import type { Rule } from '../../core/rules/rule-shape'
import type { SealKind } from '../../core/seals'
import { type Result, type Stated, ok, refused, specified, stated } from '../../core/units'
import { type Some, words } from '../../core/words'

declare const practice: Practice
declare const project: Project
declare const view: View

// What a schema of a stated value reads is a stated value.
const depth = stated(z.number().positive().max(100))
export const fromFile: Stated<number> = depth.parse({ value: 8, basis: 'assumed' })
// @ts-expect-error a value without the way it came to be known
export const bare: Stated<number> = { value: 8 }
// @ts-expect-error a note that is there but undefined: an absent note is left out
export const emptyNote: Stated<number> = { value: 8, basis: 'assumed', note: undefined }

// @ts-expect-error words in one language only
export const half = words('joint')
// @ts-expect-error a list that must not be empty
export const none: Some<string> = []

const nothing = { kind: 'presence', there: [], missing: [] } as const
// @ts-expect-error not met without a remedy
export const hopeless: Outcome = { verdict: 'not-met', compared: nothing }
// @ts-expect-error not met with an empty list of remedies
export const noWay: Outcome = { verdict: 'not-met', compared: nothing, remedies: [] }
// @ts-expect-error unknown names what is missing
export const silent: Outcome = { verdict: 'unknown' }
// @ts-expect-error met says what was compared
export const justMet: Outcome = { verdict: 'met' }
const actual = { min: 1, max: 1 }
export const margin: Outcome = {
  verdict: 'met',
  // @ts-expect-error a margin is computed, never typed
  compared: { kind: 'amount', actual, required: { unit: 'mm' }, margin: 3 },
}
// @ts-expect-error work on site carries no edit
export const lie: Remedy = { kind: 'act', say: words('level the reveal', 'Leibung abgleichen'), edits: [] }
// @ts-expect-error a change without an edit
export const idle: Remedy = { kind: 'change', say: words('do nothing', 'nichts tun'), edits: [] }
// @ts-expect-error no such verdict
export const pass: Outcome['verdict'] = 'passed'
export const fine: Finding = {
  rule: 'r',
  title: words('a rule', 'eine Regel'),
  where: { opening: 'o-1' },
  sum: [],
  restsOn: [],
  verdict: 'unknown',
  missing: [{ field: 'f', part: 'p-1' }],
}

// @ts-expect-error a writer that forgets views and pictures
export const forgetful: Writers<string> = {
  path: () => '',
  area: () => '',
  text: () => '',
  dimension: () => '',
  leader: () => '',
  symbol: () => '',
}
// @ts-expect-error a view does not stand in a view
export const nested: View['marks'] = [view]

// @ts-expect-error an edit kind without its file
export const kinds: EditKinds = {
  remove: { kind: 'remove', schema: z.custom<EditOf<'remove'>>(), apply: it => ok(it) },
}
// @ts-expect-error no such edit
export const odd: Edit = { kind: 'set-joint-width', width_mm: 22 }
// @ts-expect-error a value is stated with its basis
export const baseless: Edit = { kind: 'state', at: { field: 'f', part: 'p' }, to: 22 }

// @ts-expect-error a rule reads values, it does not write them
export const writing: Readable<number>['write'] = undefined
// @ts-expect-error a project is never changed in place
project.title.name = 'another'
// @ts-expect-error nor are its tables
project.walls['w-1'] = undefined

// A limit is asked with what it depends on, and gives what belongs to it.
export const least: number | undefined = lookUp(practice, 'least-joint', {
  frame: 'timber',
  reveal: 'butt',
  length_mm: 1200,
})?.then.least_mm
// @ts-expect-error a limit is asked with all that it depends on
lookUp(practice, 'least-joint', { frame: 'timber' })
// @ts-expect-error another limit gives another kind of answer
export const misfit: number | undefined = lookUp(practice, 'tape-range', {})?.then.least_mm
// @ts-expect-error no such limit
lookUp(practice, 'widest-joint', {})

// @ts-expect-error a refusal names at least one problem
export const unexplained: Result<number> = { ok: false, problems: [] }
// @ts-expect-error a result is looked at before its value is used
export const hasty: number = refused({ at: '', say: words('no', 'nein') }).value
export const stating: Edit = { kind: 'state', at: { field: 'f', part: 'p' }, to: specified(22) }

// A rule: what it reads, asks and compares fit each other and its limit.
type LeastJoint = Rule<Record<never, never>, 'least-joint'>
declare const known: ValuesOf<{ readonly least_mm: Reading<number>; readonly frame: Reading<FrameMaterial> }>
declare const leastJoint: LeastJoint
export const reads: readonly [number, FrameMaterial] = [known.least_mm, known.frame]
// @ts-expect-error a rule reads only what it lists
export const unread: number = known.most_mm
// @ts-expect-error what a rule asks fits the limit that it names
export const otherLimit: Rule<Record<never, never>, 'tape-range'> = leastJoint
// @ts-expect-error a rule does not judge itself: it compares, and the check gives the verdict
export const ownVerdict: ReturnType<LeastJoint['compare']> = { verdict: 'met' }
// @ts-expect-error a rule that does not apply says why
export const noReason: ReturnType<LeastJoint['applies']> = false
// @ts-expect-error a rule has examples
export const untried: LeastJoint['examples'] = []

// A kind of seal is sure of its own values, and says all that a joint asks of it.
type Bead = {
  readonly kind: 'bead'
  readonly id: string
  readonly plane: 'outer'
  readonly depth_mm: Stated<number>
}
declare const bead: SealKind<Bead>
export const ownDepth: Parameters<typeof bead.takes>[0]['depth_mm'] = specified(8)
// @ts-expect-error another kind's name
export const misnamed: SealKind<Bead>['kind'] = 'tape'
// @ts-expect-error a fresh seal has every value that its kind needs
export const unfinished: ReturnType<typeof bead.fresh> = { kind: 'bead', id: 's-1', plane: 'outer' }
// @ts-expect-error what movement it takes is always said, even if it is none
export const speechless: ReturnType<typeof bead.takes> = undefined
