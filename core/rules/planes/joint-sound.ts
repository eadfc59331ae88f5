import { exactly } from '../../units'
import { words } from '../../words'
import { placed, type Reading } from '../reading'
import { toldAmount } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { isTold } from '../told-rules'

const ofJoint: Reading<number | 'not-told'> = placed<number | 'not-told'>({
  id: 'opening.joint-sound',
  name: words('Sound value of the joint', 'Schalldämmmaß der Fuge'),
  compute: at => at.opening.told?.jointSound_dB?.value ?? 'not-told',
})

/** A joint that has to keep sound out is stated to do so. */
export const jointSound = rule({
  id: 'joint-sound',
  about: 'opening',
  title: words('Sound value of the joint', 'Schalldämmung der Fuge'),
  says: words(
    'Where the job asks for a sound value of the joint, seals on both sides and a full fill reach it.',
    'Wo der Auftrag ein Schalldämmmaß der Fuge verlangt, erreichen es Dichtungen auf beiden Seiten und volle Füllung.',
  ),
  why: words(
    'A good window in an open joint is as loud as the joint.',
    'Ein gutes Fenster in offener Fuge ist so laut wie die Fuge.',
  ),
  reads: { asked_dB: toldAmount('opening.sound-asked', 'sound_dB'), joint_dB: ofJoint },
  limit: 'joint-sound',
  band: [],
  applies: at =>
    isTold(at, 'sound_dB') || words('no sound value is asked for', 'kein Schalldämmmaß ist verlangt'),
  ask: () => [{ given: {} }],
  compare: ({ asked_dB, joint_dB }) => ({
    kind: 'amount',
    actual: exactly(joint_dB === 'not-told' ? asked_dB : joint_dB),
    required: { unit: 'dB', min: asked_dB },
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(
      words('Choose seals and a fill with a tested sound value', 'Dichtungen und Füllung mit geprüftem Schalldämmmaß wählen'),
      'opening.joint-sound',
      at.opening.id,
    )
  },
  // without a value of the joint nobody can say whether it reaches what is asked
  caution: ({ joint_dB }) =>
    joint_dB === 'not-told'
      ? {
          to: words('whoever tests the sound of joints', 'wer Fugen auf Schall prüft'),
          handOver: [words('sound value of the joint as built', 'Schalldämmmaß der ausgeführten Fuge')],
        }
      : undefined,
  examples: [
    {
      when: words('45 dB asked, 48 dB tested', '45 dB verlangt, 48 dB geprüft'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { asked_dB: 45, joint_dB: 48 },
      verdict: 'met',
    },
    {
      when: words('45 dB asked, 40 dB tested', '45 dB verlangt, 40 dB geprüft'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { asked_dB: 45, joint_dB: 40 },
      verdict: 'not-met',
    },
    {
      when: words('45 dB asked, nothing known of the joint', '45 dB verlangt, nichts zur Fuge bekannt'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { asked_dB: 45, joint_dB: 'not-told' },
      verdict: 'refer',
    },
  ],
}) // prettier-ignore
