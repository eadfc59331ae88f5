import type { Sill } from '../../detail'
import { exactly, type Stated } from '../../units'
import type { Some, Words } from '../../words'
import type { Place } from '../place'
import { hasSill, ofSill, sillId } from '../readings/sill'
import { lengthOf } from '../remedies/state'
import { type AnyRule, rule } from '../rule'

/** What a rule on a size of the sill says of itself: the field that it reads, and cases of that size in mm. */
type SillSize = {
  readonly id: 'sill-end-dam' | 'sill-overhang' | 'sill-throat' | 'sill-upstand'
  readonly field: string
  readonly of: (it: Sill) => Stated<number> | undefined
  readonly title: Words
  readonly says: Words
  readonly why: Words
  /** which sills it is asked of; absent: every one */
  readonly applies?: (at: Place) => true | Words
  readonly examples: Some<
    readonly [when: Words, practice: string, size_mm: number, AnyRule['examples'][number]['verdict']]
  >
}

/** A rule that a size of the sill is no smaller than the practice asks. */
export const sillSizeRule = ({ field, of, applies = hasSill, ...it }: SillSize): AnyRule => {
  const size = ofSill(field, of)
  const [first, ...more] = it.examples
  const example = ([when, practice, size_mm, verdict]: typeof first) => ({
    when,
    practice,
    joint: { planned_mm: 15 },
    known: { size_mm },
    verdict,
  })
  return rule({
    ...it,
    about: 'sill',
    reads: { size_mm: size },
    limit: it.id,
    band: [],
    applies,
    ask: () => [{ given: {} }],
    compare: ({ size_mm }, { least_mm }) => ({
      kind: 'amount',
      actual: exactly(size_mm),
      required: { unit: 'mm', min: least_mm },
    }),
    sum: () => [],
    *remedies(_known, { least_mm }, at) {
      yield* lengthOf(size.name, field, sillId(at), least_mm)
    },
    examples: [example(first), ...more.map(example)],
  })
}
