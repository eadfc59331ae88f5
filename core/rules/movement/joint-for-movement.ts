import { type JointBand, neededWidth_mm, neededWidthSum } from '../../movement'
import { lookUp, type Practice } from '../../practice'
import { exactly, inWords, writeQuantity } from '../../units'
import { filled, words } from '../../words'
import type { Remedy } from '../finding'
import type { Place } from '../place'
import { field } from '../readings/field'
import { frameMaterial, revealForm } from '../readings/kinds'
import { hasValue } from '../readings/seals'
import { stillSum } from '../readings/terms'
import { stateIt } from '../remedies/fit'
import { levelReveal, otherWidth, replaceSeal } from '../remedies/remedies'
import { rule } from '../rule'
import type { ValuesOf } from '../reading'

const reads = { share_pct: field('sealant.share'), frame: frameMaterial, reveal: revealForm }

/** A sealant joint is as wide as the movement of its frame needs, on the basis that the practice uses. */
export const jointForMovement = rule({
  id: 'joint-for-movement',
  about: 'part',
  title: words('Joint width for the movement', 'Fugenbreite für die Bewegung'),
  says: words(
    'The width follows from the movement of the frame and from the share of its width that the sealant takes.',
    'Die Breite folgt aus der Bewegung des Rahmens und dem Anteil der Breite, den der Dichtstoff aufnimmt.',
  ),
  why: words(
    'A table knows frames by kind; the sum knows this frame and this sealant. Where the table has no value it is the only proof.',
    'Eine Tabelle kennt Rahmen nach Art, die Rechnung kennt diesen Rahmen und diesen Dichtstoff. Fehlt der Tabellenwert, ist sie der einzige Nachweis.',
  ),
  reads,
  limit: 'joint-for-movement',
  band: ['still', 'size', 'movement'],
  applies: ({ seal }) =>
    seal && hasValue(seal, 'sealant.share')
      ? true
      : words('there is no sealant bead here', 'hier ist keine Dichtstofffuge'),
  ask: (known, band, practice) => [
    { given: { table: hasCell(known, band, practice) ? 'has-cell' : 'no-cell' }, state: 'narrowest' },
  ],
  compare: ({ share_pct }, { basis }, _asked, band) => ({
    kind: 'amount',
    actual: exactly(band.still_mm.min),
    required: { unit: 'mm', min: neededWidth_mm(band, share_pct, basis) },
  }),
  sum: ({ share_pct }, { basis }, _asked, band) => [
    ...stillSum(band, 'narrowest'),
    ...movementSum(band),
    ...neededWidthSum(band, share_pct, basis),
  ],
  *remedies({ share_pct }, { basis }, at) {
    const needed_mm = (share: number) => neededWidth_mm(at.band, share, basis)
    yield* levelReveal(at, it => at.joint.planned_mm.value - it >= needed_mm(share_pct))
    yield* betterSealant(at, share_pct, share => needed_mm(share) <= at.band.still_mm.min)
    yield* otherWidth(at, room => needed_mm(share_pct) <= room.still_mm.min)
    if (at.seal) yield* replaceSeal(at, at.seal)
  },
  examples: [
    {
      when: words(
        '1.44 mm each way, sealant of 25 %, 12 mm at the narrowest',
        '1,44 mm je Richtung, Dichtstoff 25 %, engste Stelle 12 mm',
      ),
      practice: 'DE',
      joint: { planned_mm: 12, moves_mm: 1.44, frame_mm: 1800 },
      known: { share_pct: 25, frame: 'pvc-white', reveal: 'butt' },
      verdict: 'met',
    },
    {
      when: words(
        'the same at 11 mm, while the table has a value',
        'dasselbe bei 11 mm, solange die Tabelle einen Wert hat',
      ),
      practice: 'DE',
      joint: { planned_mm: 11, moves_mm: 1.44, frame_mm: 1800 },
      known: { share_pct: 25, frame: 'pvc-white', reveal: 'butt' },
      verdict: 'advice',
    },
    {
      when: words(
        'a frame that is longer than the table goes, in a joint that is too narrow',
        'ein Rahmen, länger als die Tabelle reicht, in zu schmaler Fuge',
      ),
      practice: 'DE',
      joint: { planned_mm: 20, moves_mm: 3.6, frame_mm: 4500 },
      known: { share_pct: 25, frame: 'pvc-white', reveal: 'butt' },
      verdict: 'not-met',
    },
    {
      when: words('a sealant whose share nobody states', 'ein Dichtstoff, dessen Anteil niemand nennt'),
      practice: 'DE',
      joint: { planned_mm: 20, moves_mm: 1.44 },
      known: { frame: 'pvc-white', reveal: 'butt' },
      verdict: 'unknown',
    },
  ],
})

/** Whether a table of the practice has a width for this frame: then the sum only advises. */
const hasCell = ({ frame, reveal }: ValuesOf<typeof reads>, band: JointBand, practice: Practice): boolean =>
  lookUp(practice, 'least-joint', { frame, reveal, length_mm: band.frame_mm }) !== undefined ||
  lookUp(practice, 'perimeter-gap', { frame, length_mm: band.opening_mm }) !== undefined

/** How the movement each way comes about: the line of the band's sum. */
const movementSum = ({ widestSum }: JointBand) => widestSum.slice(2, 3)

/** Movement shares that sealants are classed by (ISO 11600), and no more: a class is a product that can be bought. */
const classes_pct = [12.5, 20, 25] as const

const betterSealant = (
  at: Place,
  now_pct: number,
  suits: (share_pct: number) => boolean,
): readonly Remedy[] => {
  const better = classes_pct.find(it => it > now_pct && suits(it))
  if (better === undefined || !at.seal) return []
  return [
    {
      kind: 'change',
      say: filled(
        words('Choose a sealant that takes {0}', 'Einen Dichtstoff wählen, der {0} aufnimmt'),
        inWords(language => writeQuantity(better, 'pct', language)),
      ),
      edits: [stateIt('sealant.share', at.seal.id, better)],
    },
  ]
}
