import { exactly } from '../../units'
import { words } from '../../words'
import { field } from '../readings/field'
import { stillSum } from '../readings/terms'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { boundsOf } from '../told-rules'

/** A joint as it was measured keeps to what may be left of it, and to what the opening may have grown. */
export const surveyedJoint = rule({
  id: 'surveyed-joint',
  about: 'zone',
  title: words('Joint as measured', 'Fuge, wie gemessen'),
  says: words(
    'Where the opening was measured, the joint is nowhere narrower than its local least width, nor wider than the tolerance of the opening makes it.',
    'Wo die Öffnung gemessen ist, ist die Fuge nirgends schmaler als ihr örtliches Mindestmaß und nicht breiter, als die Toleranz der Öffnung sie macht.',
  ),
  why: words(
    'What is wider is no joint any more: it has to be walled up or filled with a profile.',
    'Was breiter ist, ist keine Fuge mehr: Es wird zugemauert oder mit einem Profil gefüllt.',
  ),
  reads: { planned_mm: field('joint.planned') },
  limit: 'surveyed-joint',
  band: ['still', 'size'],
  applies: ({ opening }) =>
    opening.survey !== undefined || words('the opening was not measured', 'die Öffnung ist nicht gemessen'),
  ask: (_known, { opening_mm }) => [
    { given: { end: 'narrowest', length_mm: opening_mm }, state: 'narrowest' },
    { given: { end: 'widest', length_mm: opening_mm }, state: 'widest' },
  ],
  compare: (_known, then, { given }, { still_mm }) => ({
    kind: 'amount',
    actual: exactly(given.end === 'narrowest' ? still_mm.min : still_mm.max),
    required: boundsOf(then, 'mm'),
  }),
  sum: (_known, _then, { given }, band) => stillSum(band, given.end),
  *remedies(_known, _then, at) {
    yield act(words('Level the reveal, or order another frame, then measure', 'Leibung ausgleichen oder anderen Rahmen bestellen, dann messen'), 'joint.planned', at.joint.id)
  },
  examples: [
    {
      when: words('14 to 16 mm', '14 bis 16 mm'),
      practice: 'AT',
      joint: { planned_mm: 15, tolerance_mm: 1 },
      known: { planned_mm: 15 },
      verdict: 'met',
    },
    {
      when: words('8 mm at its narrowest', '8 mm an der engsten Stelle'),
      practice: 'AT',
      joint: { planned_mm: 12, tolerance_mm: 4 },
      known: { planned_mm: 12 },
      verdict: 'not-met',
    },
    {
      when: words('45 mm at its widest beside a frame of 1 m', '45 mm an der breitesten Stelle neben 1 m Rahmen'),
      practice: 'AT',
      joint: { planned_mm: 35, tolerance_mm: 10 },
      known: { planned_mm: 35 },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
