import { kindOf } from '../../seals'
import { exactly } from '../../units'
import { words } from '../../words'
import { atBothEnds } from '../at-both-ends'
import { field } from '../readings/field'
import { hasValue } from '../readings/seals'
import { choose, fitTape } from '../remedies/fit'
import { levelReveal, otherWidth, replaceSeal } from '../remedies/remedies'
import { roomAt, usesOf } from '../remedies/room'
import { tapeRange_mm } from '../remedies/sizes'
import { rule } from '../rule'

/** A tape seals as long as the joint stays within the range that is printed on it. */
export const tapeRange = rule({
  id: 'tape-range',
  about: 'part',
  title: words('Tape within its printed range', 'Fugenband im Einsatzbereich'),
  says: words(
    'The joint stays within the printed range of the tape, at its narrowest and at its widest, movement included.',
    'Die Fuge bleibt an der engsten und an der breitesten Stelle samt Bewegung im aufgedruckten Bereich des Bands.',
  ),
  why: words(
    'In a wider joint the tape is not pressed and lets rain through; in a narrower one it is crushed and does not come back.',
    'In einer breiteren Fuge ist das Band nicht gepresst und lässt Regen durch, in einer engeren wird es zerdrückt und stellt sich nicht zurück.',
  ),
  reads: { least_mm: field('tape.least'), most_mm: field('tape.most') },
  limit: 'tape-range',
  band: ['still', 'size', 'movement'],
  applies: ({ seal }) =>
    seal && hasValue(seal, 'tape.least') ? true : words('there is no tape here', 'hier ist kein Fugenband'),
  ask: (_known, { moving_mm }) => atBothEnds(moving_mm, () => ({})),
  compare: ({ least_mm, most_mm }, _then, { width_mm = 0 }) => ({
    kind: 'amount',
    actual: exactly(width_mm),
    required: { unit: 'mm', min: least_mm, max: most_mm },
  }),
  sum: (_known, _then, { state }, band) => (state === 'widest' ? band.widestSum : band.narrowestSum),
  *remedies(_known, _then, at) {
    const { seal } = at
    if (!seal) return
    const uses = usesOf(at)
    const ranges_mm = kindOf(seal).ranges_mm ?? []
    const planned_mm = at.joint.planned_mm.value
    yield* levelReveal(at, it => tapeRange_mm(roomAt(at, uses, planned_mm, it), ranges_mm).suits)
    yield* choose(fitTape(seal, roomAt(at, uses, planned_mm)))
    yield* otherWidth(at, room => tapeRange_mm(room, ranges_mm).suits)
    yield* replaceSeal(at, seal)
  },
  examples: [
    {
      when: words(
        'a tape 8–15 in a joint of 9.7 to 13.3 mm',
        'ein Band 8–15 in einer Fuge von 9,7 bis 13,3 mm',
      ),
      practice: 'DE',
      joint: { planned_mm: 11.5, tolerance_mm: 1.5, moves_mm: 0.3 },
      known: { least_mm: 8, most_mm: 15 },
      verdict: 'met',
    },
    {
      when: words(
        'the same tape in a joint that opens to 15.3 mm in the cold',
        'dasselbe Band in einer Fuge, die bei Kälte auf 15,3 mm öffnet',
      ),
      practice: 'DE',
      joint: { planned_mm: 12.5, tolerance_mm: 2.5, moves_mm: 0.3 },
      known: { least_mm: 8, most_mm: 15 },
      verdict: 'not-met',
    },
    {
      when: words('a tape without a printed range', 'ein Band ohne aufgedruckten Bereich'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: {},
      verdict: 'unknown',
    },
  ],
})
