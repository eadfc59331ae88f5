import { exactly } from '../../units'
import { words } from '../../words'
import { placed, type Reading } from '../reading'
import { toldAmount } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { boundsOf, isTold } from '../told-rules'

/** Fall outside; where nobody states it, the smaller guards hold. */
const fall: Reading<number> = placed({
  id: 'opening.fall',
  name: words('Fall outside', 'Absturzhöhe außen'),
  compute: at => at.opening.asked?.fall_mm?.value ?? 0,
})

/** A guard is high enough for the fall behind it. */
export const guardHeight = rule({
  id: 'guard-height',
  about: 'opening',
  title: words('Height of the guard', 'Höhe der Umwehrung'),
  says: words('A guard is as high as the fall behind it asks.', 'Eine Umwehrung ist so hoch, wie die Absturzhöhe es verlangt.'),
  why: words('Over a low guard a grown person tips.', 'Über eine niedrige Umwehrung kippt ein erwachsener Mensch.'),
  reads: { guard_mm: toldAmount('opening.guard-height', 'guard_mm'), fall_mm: fall },
  limit: 'guard-height',
  band: [],
  applies: at => isTold(at, 'guard_mm') || words('no guard is stated', 'keine Umwehrung ist genannt'),
  ask: ({ fall_mm }) => [{ given: { fall_mm } }],
  compare: ({ guard_mm }, then) => ({ kind: 'amount', actual: exactly(guard_mm), required: boundsOf(then, 'mm') }),
  sum: ({ fall_mm }) => [{ sign: '', value: fall_mm, unit: 'mm', says: fall.name }],
  *remedies(_known, _then, at) {
    yield act(words('Raise the guard', 'Umwehrung erhöhen'), 'opening.guard-height', at.opening.id)
  },
  caution: () => ({
    to: words('a structural engineer', 'eine Tragwerksplanerin, ein Tragwerksplaner'),
    handOver: [words('guard and its fixing', 'Umwehrung und ihre Befestigung')],
  }),
  examples: [
    {
      when: words('0.90 m over a fall of 6.2 m', '0,90 m über 6,2 m Absturzhöhe'),
      practice: 'DE',
      joint: { planned_mm: 25 },
      known: { guard_mm: 900, fall_mm: 6200 },
      verdict: 'refer',
    },
    {
      when: words('0.90 m over a fall of 14 m', '0,90 m über 14 m Absturzhöhe'),
      practice: 'DE',
      joint: { planned_mm: 25 },
      known: { guard_mm: 900, fall_mm: 14_000 },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
