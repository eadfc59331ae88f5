import { rodSizes_mm } from '../../seals'
import { around, exactly, isInside } from '../../units'
import { words } from '../../words'
import { atBothEnds } from '../at-both-ends'
import { hasBreaker } from '../readings/breaker'
import { hasValue, rodDiameter } from '../readings/seals'
import { stillSum } from '../readings/terms'
import { choose, fitRod } from '../remedies/fit'
import { levelReveal, otherWidth, replaceSeal } from '../remedies/remedies'
import { roomOf } from '../remedies/room'
import { oversize_pct, oversizes, rodSize } from '../remedies/sizes'
import { rule } from '../rule'

/** The rod behind a bead is thicker than the joint is wide, so that it holds and gives the bead its back. */
export const backingRod = rule({
  id: 'backing-rod',
  about: 'part',
  title: words('Backing rod against the joint', 'Rundschnur zur Fugenbreite'),
  says: words(
    'The backing rod is about a quarter thicker than the joint is wide, at its narrowest and at its widest.',
    'Die Rundschnur ist etwa ein Viertel dicker als die Fuge breit, an der engsten und an der breitesten Stelle.',
  ),
  why: words(
    'A thin rod slips when the sealant is tooled, and the bead gets too deep. A thick one is squeezed and springs out.',
    'Eine dünne Schnur verrutscht beim Abglätten, und die Fuge wird zu tief. Eine dicke wird gequetscht und springt heraus.',
  ),
  reads: { rod_mm: rodDiameter },
  limit: 'backing-oversize',
  band: ['still'],
  applies: ({ seal }) => {
    if (!seal || !hasValue(seal, 'sealant.rod'))
      return words('there is no sealant bead here', 'hier ist keine Dichtstofffuge')
    return hasBreaker(seal)
      ? words('a bond breaker stands in for the rod', 'ein Trennstreifen ersetzt die Rundschnur')
      : true
  },
  ask: (_known, { still_mm }) => atBothEnds(still_mm, width_mm => ({ width_mm })),
  compare: ({ rod_mm }, { share_pct }, { width_mm = 0 }) => ({
    kind: 'amount',
    actual: exactly(width_mm > 0 ? (100 * rod_mm) / width_mm : Infinity),
    required: { unit: 'pct', ...share_pct },
  }),
  sum: ({ rod_mm }, _then, { state, width_mm = 0 }, band) => [
    ...stillSum(band, state === 'widest' ? 'widest' : 'narrowest'),
    { sign: '', value: rod_mm, unit: 'mm', says: words('diameter of the rod', 'Durchmesser der Schnur') },
    { sign: '÷', value: width_mm, unit: 'mm', says: words('width of the joint', 'Breite der Fuge') },
    { sign: '=', value: (100 * rod_mm) / width_mm, unit: 'pct', says: words('of the width', 'der Breite') },
  ],
  *remedies(_known, _then, at) {
    const { seal, practice, joint } = at
    if (!seal) return
    const hasRod = (tolerance_mm: number): boolean => {
      const still_mm = around(joint.planned_mm.value, tolerance_mm)
      return oversizes(still_mm.max, practice).some(within =>
        rodSizes_mm.some(rod => isInside(oversize_pct(rod, still_mm), within)),
      )
    }
    yield* levelReveal(at, hasRod)
    yield* choose(fitRod(seal, roomOf(at), practice))
    yield* otherWidth(at, room => rodSize(room, practice).suits)
    yield* replaceSeal(at, seal)
  },
  examples: [
    {
      when: words('a rod of 25 mm in a joint of 20 mm', 'eine Schnur von 25 mm in einer Fuge von 20 mm'),
      practice: 'DE',
      joint: { planned_mm: 20 },
      known: { rod_mm: 25 },
      verdict: 'met',
    },
    {
      when: words(
        'a rod of 20 mm in a joint of 14 to 18 mm: just tight enough at its widest',
        'eine Schnur von 20 mm in einer Fuge von 14 bis 18 mm: an der breitesten Stelle eben fest',
      ),
      practice: 'DE',
      joint: { planned_mm: 16, tolerance_mm: 2 },
      known: { rod_mm: 20 },
      verdict: 'advice',
    },
    {
      when: words('a rod as thick as the joint is wide', 'eine Schnur so dick wie die Fuge breit'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { rod_mm: 15 },
      verdict: 'not-met',
    },
    {
      when: words('no rod', 'keine Schnur'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { rod_mm: 0 },
      verdict: 'not-met',
    },
    {
      when: words(
        'a British gap of 5 mm, for which no size is set',
        'eine britische Fuge von 5 mm, für die keine Größe gilt',
      ),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { rod_mm: 6 },
      verdict: 'refer',
    },
  ],
})
