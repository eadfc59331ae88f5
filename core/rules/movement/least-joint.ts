import { exactly } from '../../units'
import { words } from '../../words'
import { hasBead } from '../readings/seals'
import { frameMaterial, revealForm } from '../readings/kinds'
import { stillSum } from '../readings/terms'
import { levelReveal, otherWidth, replaceBead } from '../remedies/remedies'
import { rule } from '../rule'

/** A sealant joint is at least as wide as the table asks for the length of its frame. */
export const leastJoint = rule({
  id: 'least-joint',
  about: 'zone',
  title: words('Least joint width by frame', 'Mindestbreite der Fuge nach Rahmen'),
  says: words(
    'A joint with elastic sealant has a least width by frame material, length of the frame and form of the reveal.',
    'Eine Fuge mit elastischem Dichtstoff hat eine Mindestbreite nach Rahmenwerkstoff, Rahmenlänge und Form der Leibung.',
  ),
  why: words(
    'The longer and the darker the frame, the more it moves; a narrow bead is stretched beyond what it takes.',
    'Je länger und dunkler der Rahmen, desto mehr bewegt er sich; ein schmaler Dichtstoff wird überdehnt.',
  ),
  reads: { frame: frameMaterial, reveal: revealForm },
  limit: 'least-joint',
  band: ['still', 'size'],
  applies: ({ joint }) =>
    hasBead(joint) ? true : words('there is no sealant in this joint', 'in dieser Fuge ist kein Dichtstoff'),
  ask: ({ frame, reveal }, { frame_mm }) => [
    { given: { frame, reveal, length_mm: frame_mm }, state: 'narrowest' },
  ],
  compare: (_known, { least_mm }, _asked, { still_mm }) => ({
    kind: 'amount',
    actual: exactly(still_mm.min),
    required: { unit: 'mm', min: least_mm },
  }),
  sum: (_known, _then, _asked, band) => stillSum(band, 'narrowest'),
  *remedies(_known, { least_mm }, at) {
    yield* levelReveal(at, it => at.joint.planned_mm.value - it >= least_mm)
    yield* otherWidth(at, room => least_mm <= room.still_mm.min)
    yield* replaceBead(at)
  },
  examples: [
    {
      when: words(
        'white PVC-U, 2.4 m long, in a joint of 15 mm',
        'weißes PVC-U, 2,4 m lang, in einer Fuge von 15 mm',
      ),
      practice: 'DE',
      joint: { planned_mm: 15, frame_mm: 2400 },
      known: { frame: 'pvc-white', reveal: 'butt' },
      verdict: 'met',
    },
    {
      when: words(
        'the same planned at 15 mm and built up to 2 mm narrower',
        'dasselbe, mit 15 mm geplant und bis 2 mm schmaler gebaut',
      ),
      practice: 'DE',
      joint: { planned_mm: 15, tolerance_mm: 2, frame_mm: 2400 },
      known: { frame: 'pvc-white', reveal: 'butt' },
      verdict: 'not-met',
    },
    {
      when: words(
        'coloured PVC-U, 3 m long: the table has no value',
        'farbiges PVC-U, 3 m lang: die Tabelle hat keinen Wert',
      ),
      practice: 'DE',
      joint: { planned_mm: 25, frame_mm: 3000 },
      known: { frame: 'pvc-coloured', reveal: 'butt' },
      verdict: 'refer',
    },
  ],
})
