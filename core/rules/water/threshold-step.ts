import { exactly } from '../../units'
import { words } from '../../words'
import { toldAmount } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { boundsOf } from '../told-rules'

const top = toldAmount('opening.threshold-top', 'threshold_mm')
const outside = toldAmount('opening.threshold-outside', 'outside_mm')

/** Where step-free access is asked for, the threshold is no step from either side. */
export const thresholdStep = rule({
  id: 'threshold-step',
  about: 'threshold',
  title: words('Step at the threshold', 'Stufe an der Schwelle'),
  says: words(
    'A step-free threshold stands over the floor and over the surface outside by no more than wheels and feet get over.',
    'Eine stufenlose Schwelle steht über Fußboden und Belag nicht höher, als Räder und Füße überwinden.',
  ),
  why: words('A higher edge stops wheels and trips people.', 'An einer höheren Kante bleiben Räder hängen und stolpern Menschen.'),
  reads: { top_mm: top, outside_mm: outside },
  limit: 'threshold-step',
  band: [],
  applies: at =>
    at.opening.told?.stepFree?.value === 'yes' ||
    words('step-free access is not asked for', 'stufenloser Zugang ist nicht verlangt'),
  ask: () => [{ given: {} }],
  compare: ({ top_mm, outside_mm }, then) => ({
    kind: 'amount',
    actual: exactly(Math.max(Math.abs(top_mm), Math.abs(top_mm - outside_mm))),
    required: boundsOf(then, 'mm'),
  }),
  sum: ({ top_mm, outside_mm }) => [
    { sign: '', value: Math.abs(top_mm), unit: 'mm', says: words('from the floor inside', 'vom Fußboden innen') },
    { sign: '', value: Math.abs(top_mm - outside_mm), unit: 'mm', says: words('from the surface outside', 'vom Belag außen') },
  ],
  *remedies(_known, _then, at) {
    yield act(
      words('Bring floor, threshold and surface to one level', 'Fußboden, Schwelle und Belag auf eine Höhe bringen'),
      top.id,
      at.opening.id,
    )
  },
  examples: [
    {
      when: words('15 mm from both sides', '15 mm von beiden Seiten'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { top_mm: 15, outside_mm: 0 },
      verdict: 'met',
    },
    {
      when: words('50 mm from outside', '50 mm von außen'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { top_mm: 20, outside_mm: -30 },
      verdict: 'not-met',
    },
    {
      when: words('20 mm in Britain', '20 mm in Großbritannien'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { top_mm: 20, outside_mm: 0 },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
