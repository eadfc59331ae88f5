import { exactly } from '../../units'
import { words } from '../../words'
import { field } from '../readings/field'
import { hasValue } from '../readings/seals'
import { lengthOf } from '../remedies/state'
import { rule } from '../rule'

/** A membrane over a joint has slack: its loop is longer than the joint opens. */
export const membraneSlack = rule({
  id: 'membrane-slack',
  about: 'part',
  title: words('Slack of the membrane', 'Schlaufe der Folie'),
  says: words(
    'The loop of a membrane is at least as long as the joint opens, and usually 5 to 10 mm.',
    'Die Schlaufe einer Folie ist mindestens so lang, wie die Fuge aufgeht, üblich sind 5 bis 10 mm.',
  ),
  why: words(
    'A taut membrane tears or peels off when the frame shrinks in the cold.',
    'Eine gespannte Folie reißt oder löst sich, wenn der Rahmen bei Kälte schrumpft.',
  ),
  reads: { slack_mm: field('membrane.slack') },
  limit: 'membrane-slack',
  band: ['size', 'movement'],
  applies: ({ seal }) =>
    seal && hasValue(seal, 'membrane.slack')
      ? true
      : words('there is no membrane here', 'hier ist keine Folie'),
  ask: () => [{ given: {}, state: 'widest' }],
  compare: ({ slack_mm }, { least_mm }, _asked, { opens_mm }) => ({
    kind: 'amount',
    actual: exactly(slack_mm),
    required: { unit: 'mm', min: Math.max(least_mm, opens_mm) },
  }),
  sum: ({ slack_mm }, _then, _asked, { opens_mm }) => [
    { sign: '', value: slack_mm, unit: 'mm', says: words('length in the loop', 'Länge in der Schlaufe') },
    { sign: '', value: opens_mm, unit: 'mm', says: words('the joint opens by', 'die Fuge geht auf um') },
  ],
  *remedies(_known, { least_mm }, at) {
    if (!at.seal) return
    const loop_mm = Math.max(least_mm, Math.ceil(at.band.opens_mm))
    yield* lengthOf(field('membrane.slack').name, 'membrane.slack', at.seal.id, loop_mm + spare_mm)
    yield* lengthOf(field('membrane.slack').name, 'membrane.slack', at.seal.id, loop_mm + 3 * spare_mm)
  },
  examples: [
    {
      when: words(
        'a loop of 8 mm on a joint that opens by 1.7 mm',
        'eine Schlaufe von 8 mm an einer Fuge, die 1,7 mm aufgeht',
      ),
      practice: 'DE',
      joint: { planned_mm: 12, moves_mm: 1.68 },
      known: { slack_mm: 8 },
      verdict: 'met',
    },
    {
      when: words('a loop of 3 mm on the same joint', 'eine Schlaufe von 3 mm an derselben Fuge'),
      practice: 'AT',
      joint: { planned_mm: 12, moves_mm: 1.68 },
      known: { slack_mm: 3 },
      verdict: 'advice',
    },
    {
      when: words('a loop shorter than the joint opens', 'eine Schlaufe, kürzer als die Fuge aufgeht'),
      practice: 'UK',
      joint: { planned_mm: 12, moves_mm: 2.2 },
      known: { slack_mm: 2 },
      verdict: 'not-met',
    },
    {
      when: words('a membrane that is laid taut', 'eine gespannt verlegte Folie'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { slack_mm: 0 },
      verdict: 'not-met',
    },
  ],
})

/** A loop is laid by hand: a few millimetres more than the least, within what is usual. Ours. */
const spare_mm = 2
