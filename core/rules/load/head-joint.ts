import { kindOf } from '../../seals'
import { exactly } from '../../units'
import { words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { stillSum } from '../readings/terms'
import { toldAmount } from '../readings/told'
import { otherWidth } from '../remedies/remedies'
import { levelReveal } from '../remedies/remedies'
import { rule } from '../rule'

/** What the seals of a joint ask of its width when it is pressed together: a share of it, or a least width. */
type Pressed = { readonly share_pct?: number; readonly least_mm?: number }

const takenAt = ({ joint }: Place): Pressed => {
  const all = joint.seals.map(it => kindOf(it).takes(it))
  const shares = all.flatMap(it => (it.by === 'share' ? [it.share_pct] : []))
  const leasts = all.flatMap(it => (it.by === 'range' ? [it.joint_mm.min] : []))
  return {
    ...(shares.length > 0 ? { share_pct: Math.min(...shares) } : {}),
    ...(leasts.length > 0 ? { least_mm: Math.max(...leasts) } : {}),
  }
}
const pressed: Reading<Pressed> = placed({
  id: 'joint.takes',
  name: words('What the seals take', 'Was die Dichtungen aufnehmen'),
  compute: takenAt,
})

/** The joint at the head takes the sag of the lintel beside the movement of the frame. */
export const headJoint = rule({
  id: 'head-joint',
  about: 'zone',
  title: words('Head joint under the lintel', 'Sturzfuge unter dem Sturz'),
  says: words(
    'What the lintel sags after the frame is set, and what the frame grows, stays within what the seals of the head joint take.',
    'Was der Sturz nach dem Einbau absinkt und der Rahmen wächst, bleibt in dem, was die Dichtungen der Sturzfuge aufnehmen.',
  ),
  why: words(
    'A lintel that comes down on the frame bends it; no sash opens after that.',
    'Ein Sturz, der auf den Rahmen kommt, verbiegt ihn; danach geht kein Flügel mehr auf.',
  ),
  reads: { sag_mm: toldAmount('opening.lintel-sag', 'lintel_mm'), takes: pressed },
  limit: 'head-joint',
  band: ['still', 'size', 'movement'],
  applies: at => {
    if (at.side !== 'head') return words('no lintel lies above this joint', 'über dieser Fuge liegt kein Sturz')
    if (at.opening.told?.lintel_mm?.value === 0) return words('the lintel does not sag', 'der Sturz sinkt nicht ab')
    const { share_pct, least_mm } = takenAt(at)
    return share_pct === undefined && least_mm === undefined
      ? words('no seal here takes movement', 'keine Dichtung nimmt hier Bewegung auf')
      : true
  },
  ask: () => [{ given: {}, state: 'narrowest' }],
  compare: ({ sag_mm, takes }, _then, _asked, { still_mm, opens_mm, closes_mm }) => ({
    kind: 'amount',
    actual: exactly(still_mm.min),
    required: { unit: 'mm', min: neededFor(sag_mm, takes, opens_mm, closes_mm) },
  }),
  sum: ({ sag_mm, takes }, _then, _asked, band) => [
    ...stillSum(band, 'narrowest'),
    { sign: '', value: sag_mm, unit: 'mm', says: words('sag of the lintel', 'Durchbiegung des Sturzes') },
    { sign: '+', value: band.closes_mm, unit: 'mm', says: words('the frame grows', 'der Rahmen wächst') },
    ...(takes.least_mm === undefined ? [] : [{ sign: '+', value: takes.least_mm, unit: 'mm', says: words('least width of the tape', 'kleinste Breite des Bands') } as const]),
    { sign: '=', value: neededFor(sag_mm, takes, band.opens_mm, band.closes_mm), unit: 'mm', says: words('needed width', 'nötige Breite') },
  ],
  *remedies({ sag_mm, takes }, _then, at) {
    const needed_mm = neededFor(sag_mm, takes, at.band.opens_mm, at.band.closes_mm)
    yield* levelReveal(at, it => needed_mm <= at.joint.planned_mm.value - it)
    yield* otherWidth(at, ({ still_mm }) => needed_mm <= still_mm.min)
  },
  examples: [
    {
      when: words('14 mm with a tape from 10 mm on, a sag of 2 mm', '14 mm mit einem Band ab 10 mm, 2 mm Durchbiegung'),
      practice: 'AT',
      joint: { planned_mm: 15, tolerance_mm: 1, moves_mm: 0.75, frame_mm: 1500 },
      known: { sag_mm: 2, takes: { least_mm: 10 } },
      verdict: 'met',
    },
    {
      when: words('a sag of 8.8 mm on a bead of 25 % in 20 mm', '8,8 mm Durchbiegung auf Dichtstoff von 25 % in 20 mm'),
      practice: 'DE',
      joint: { planned_mm: 20, moves_mm: 1.82, frame_mm: 1400 },
      known: { sag_mm: 8.8, takes: { share_pct: 25 } },
      verdict: 'not-met',
    },
    {
      when: words('in Britain', 'in Großbritannien'),
      practice: 'UK',
      joint: { planned_mm: 8, frame_mm: 1400 },
      known: { sag_mm: 4, takes: { share_pct: 25 } },
      verdict: 'refer',
    },
  ],
}) // prettier-ignore

/** A bead takes a share of its width for all movement; a tape is pressed to no less than its least width. */
const neededFor = (
  sag_mm: number,
  { share_pct, least_mm }: Pressed,
  opens_mm: number,
  closes_mm: number,
): number =>
  Math.max(
    share_pct === undefined ? 0 : (100 * (sag_mm + opens_mm + closes_mm)) / share_pct,
    least_mm === undefined ? 0 : sag_mm + closes_mm + least_mm,
  )
