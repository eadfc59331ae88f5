import { kindOf } from '../../seals'
import { exactly } from '../../units'
import { words } from '../../words'
import { field } from '../readings/field'
import { hasValue } from '../readings/seals'
import { choose, fitTape } from '../remedies/fit'
import { roomOf } from '../remedies/room'
import { rule } from '../rule'

/** A tape is chosen so that the planned joint lies in the lower half of its range: it is pressed well and has room to open. */
export const tapeLowerHalf = rule({
  id: 'tape-lower-half',
  about: 'part',
  title: words('Joint in the lower half of the tape', 'Fuge in der unteren Hälfte des Bands'),
  says: words(
    'The planned joint lies in the lower half of the printed range of the tape.',
    'Die geplante Fuge liegt in der unteren Hälfte des aufgedruckten Bereichs.',
  ),
  why: words(
    'The more a tape is pressed, the tighter it is, and the further the joint may still open.',
    'Je stärker ein Band gepresst ist, desto dichter ist es, und desto weiter darf die Fuge noch aufgehen.',
  ),
  reads: { least_mm: field('tape.least'), most_mm: field('tape.most') },
  limit: 'tape-lower-half',
  band: [],
  applies: ({ seal, band }) => {
    if (!seal || !hasValue(seal, 'tape.least')) return words('there is no tape here', 'hier ist kein Fugenband')
    const takes = kindOf(seal).takes(seal)
    const isInside =
      takes.by !== 'range' ||
      (takes.joint_mm.min <= band.moving_mm.min && band.moving_mm.max <= takes.joint_mm.max)
    return isInside
      ? true
      : words('the joint leaves the range of the tape', 'die Fuge verlässt den Einsatzbereich des Bands')
  },
  ask: () => [{ given: {}, state: 'planned' }],
  compare: ({ least_mm, most_mm }, { share }, _asked, { planned_mm }) => ({
    kind: 'amount',
    actual: exactly(planned_mm),
    required: { unit: 'mm', max: least_mm + share * (most_mm - least_mm) },
  }),
  sum: ({ least_mm, most_mm }) => [
    { sign: '', value: least_mm, unit: 'mm', says: words('tape from joint', 'Band ab Fuge') },
    { sign: '+', value: most_mm, unit: 'mm', says: words('tape to joint', 'Band bis Fuge') },
    { sign: '÷', value: 2, unit: 'one', says: words('middle of the range', 'Mitte des Bereichs') },
    { sign: '=', value: (least_mm + most_mm) / 2, unit: 'mm', says: words('at most', 'höchstens') },
  ],
  *remedies(_known, _then, at) {
    if (at.seal) yield* choose(fitTape(at.seal, roomOf(at)))
  },
  examples: [
    {
      when: words('a tape 10–18 in a joint planned at 14 mm', 'ein Band 10–18 in einer mit 14 mm geplanten Fuge'),
      practice: 'DE',
      joint: { planned_mm: 14 },
      known: { least_mm: 10, most_mm: 18 },
      verdict: 'met',
    },
    {
      when: words('the same in a joint planned at 16 mm', 'dasselbe in einer mit 16 mm geplanten Fuge'),
      practice: 'AT',
      joint: { planned_mm: 16 },
      known: { least_mm: 10, most_mm: 18 },
      verdict: 'advice',
    },
  ],
}) // prettier-ignore
