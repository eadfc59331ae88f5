import type { Term } from '../../movement'
import { depthsAt } from '../../movement'
import type { BeadDepth } from '../../practice'
import { around, exactly } from '../../units'
import { words } from '../../words'
import { atBothEnds } from '../at-both-ends'
import { field } from '../readings/field'
import { hasValue } from '../readings/seals'
import { stillSum } from '../readings/terms'
import { choose, fitDepth } from '../remedies/fit'
import { levelReveal, otherWidth, replaceSeal } from '../remedies/remedies'
import { roomOf } from '../remedies/room'
import { depthsIn } from '../remedies/sizes'
import { rule } from '../rule'

/** A bead is half as deep as its joint is wide, at the narrow and at the wide end of the joint. */
export const sealantDepth = rule({
  id: 'sealant-depth',
  about: 'part',
  title: words('Depth of the sealant bead', 'Tiefe der Dichtstofffuge'),
  says: words(
    'A bead is about half as deep as its joint is wide.',
    'Eine Dichtstofffuge ist etwa halb so tief wie breit.',
  ),
  why: words(
    'A deep bead is stiff: it tears itself off the flanks when the joint opens. A thin one has too little bond.',
    'Eine tiefe Fuge ist steif: Sie reißt von den Flanken ab, wenn sich die Fuge öffnet. Eine dünne haftet zu wenig.',
  ),
  reads: { depth_mm: field('sealant.depth') },
  limit: 'sealant-depth',
  band: ['still'],
  applies: ({ seal }) =>
    seal && hasValue(seal, 'sealant.depth')
      ? true
      : words('there is no sealant bead here', 'hier ist keine Dichtstofffuge'),
  ask: (_known, { still_mm }) => atBothEnds(still_mm, width_mm => ({ width_mm })),
  compare: ({ depth_mm }, then, { width_mm = 0 }) => ({
    kind: 'amount',
    actual: exactly(depth_mm),
    required: boundsOf(then, width_mm),
  }),
  sum: (_known, then, { state, width_mm = 0 }, band) => [
    ...stillSum(band, state === 'widest' ? 'widest' : 'narrowest'),
    ...shareTerms(then, width_mm),
  ],
  *remedies(_known, _then, at) {
    const { seal, practice, joint } = at
    if (!seal) return
    const hasDepth = (tolerance_mm: number): boolean => {
      const { min, max } = depthsIn(around(joint.planned_mm.value, tolerance_mm), practice)
      return min <= max
    }
    yield* levelReveal(at, hasDepth)
    yield* choose(fitDepth(seal, roomOf(at), practice))
    yield* otherWidth(at)
    yield* replaceSeal(at, seal)
  },
  examples: [
    {
      when: words('a 20 mm joint, 10 mm deep', 'eine 20 mm breite Fuge, 10 mm tief'),
      practice: 'DE',
      joint: { planned_mm: 20 },
      known: { depth_mm: 10 },
      verdict: 'met',
    },
    {
      when: words('a 15 mm joint, 15 mm deep', 'eine 15 mm breite Fuge, 15 mm tief'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { depth_mm: 15 },
      verdict: 'not-met',
    },
    {
      when: words(
        'a joint of 12 to 18 mm, 9 mm deep: too deep where it is narrow',
        'eine Fuge von 12 bis 18 mm, 9 mm tief: an der engen Stelle zu tief',
      ),
      practice: 'DE',
      joint: { planned_mm: 15, tolerance_mm: 3 },
      known: { depth_mm: 9 },
      verdict: 'not-met',
    },
    {
      when: words('8 mm wide and 10 mm deep in Britain', '8 mm breit und 10 mm tief in Großbritannien'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { depth_mm: 10 },
      verdict: 'advice',
    },
    {
      when: words('5 mm deep in Britain', '5 mm tief in Großbritannien'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { depth_mm: 5 },
      verdict: 'not-met',
    },
    {
      when: words('a bead whose depth nobody states', 'eine Fuge, deren Tiefe niemand nennt'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: {},
      verdict: 'unknown',
    },
  ],
})

const boundsOf = (then: BeadDepth, width_mm: number) => {
  const { min, max } = depthsAt(width_mm, then)
  return { unit: 'mm', min, ...(max === Infinity ? {} : { max }) } as const
}

const shareTerms = ({ share, within_mm }: BeadDepth, width_mm: number): readonly Term[] =>
  share === undefined
    ? []
    : [
        { sign: '×', value: share, unit: 'one', says: words('of the width', 'der Breite') },
        {
          sign: '=',
          value: share * width_mm,
          unit: 'mm',
          says:
            within_mm === undefined
              ? words('wanted depth', 'gewünschte Tiefe')
              : words(`wanted depth, ±${within_mm} mm`, `gewünschte Tiefe, ±${within_mm} mm`),
        },
      ]
