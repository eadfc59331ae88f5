import { exactly } from '../../units'
import { words } from '../../words'
import { atBothEnds } from '../at-both-ends'
import { frameMaterial } from '../readings/kinds'
import { stillSum } from '../readings/terms'
import { levelReveal, otherWidth } from '../remedies/remedies'
import { rule } from '../rule'

/** The gap round a frame lies between a least and a greatest width, by frame and size of the opening. */
export const perimeterGap = rule({
  id: 'perimeter-gap',
  about: 'zone',
  title: words('Gap round the frame', 'Fuge um den Rahmen'),
  says: words(
    'The gap has a least width by frame material and size of the opening, and a greatest one.',
    'Die Fuge hat eine Mindestbreite nach Rahmenwerkstoff und Öffnungsgröße und eine Höchstbreite.',
  ),
  why: words(
    'Too narrow and the frame has no room to move; too wide and neither bead nor trim covers it for long.',
    'Zu eng, und der Rahmen kann sich nicht bewegen; zu breit, und weder Dichtstoff noch Leiste decken sie auf Dauer.',
  ),
  reads: { frame: frameMaterial },
  limit: 'perimeter-gap',
  band: ['still', 'size'],
  applies: () => true,
  ask: ({ frame }, { still_mm, opening_mm }) =>
    atBothEnds(still_mm, () => ({ frame, length_mm: opening_mm })),
  compare: (_known, { least_mm, most_mm }, { width_mm = 0 }) => ({
    kind: 'amount',
    actual: exactly(width_mm),
    required: { unit: 'mm', min: least_mm, max: most_mm },
  }),
  sum: (_known, _then, { state }, band) => stillSum(band, state === 'widest' ? 'widest' : 'narrowest'),
  *remedies(_known, { least_mm, most_mm }, at) {
    yield* levelReveal(at, it => least_mm + 2 * it <= most_mm)
    yield* otherWidth(at, ({ still_mm }) => least_mm <= still_mm.min && still_mm.max <= most_mm)
  },
  examples: [
    {
      when: words(
        'white PVC-U in an opening of 1.2 m, 6 to 8 mm',
        'weißes PVC-U in einer Öffnung von 1,2 m, 6 bis 8 mm',
      ),
      practice: 'UK',
      joint: { planned_mm: 7, tolerance_mm: 1, frame_mm: 1186 },
      known: { frame: 'pvc-white' },
      verdict: 'met',
    },
    {
      when: words(
        'coloured PVC-U in an opening of 3.6 m, 10 mm',
        'farbiges PVC-U in einer Öffnung von 3,6 m, 10 mm',
      ),
      practice: 'UK',
      joint: { planned_mm: 10, frame_mm: 3580 },
      known: { frame: 'pvc-coloured' },
      verdict: 'not-met',
    },
    {
      when: words('a German joint of 15 mm', 'eine deutsche Fuge von 15 mm'),
      practice: 'UK',
      joint: { planned_mm: 15, frame_mm: 1200 },
      known: { frame: 'timber' },
      verdict: 'not-met',
    },
    {
      when: words('an opening of more than 4.5 m', 'eine Öffnung über 4,5 m'),
      practice: 'UK',
      joint: { planned_mm: 10, frame_mm: 4600 },
      known: { frame: 'timber' },
      verdict: 'refer',
    },
  ],
})
