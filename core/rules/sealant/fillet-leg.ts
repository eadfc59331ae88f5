import { exactly } from '../../units'
import { filled, words } from '../../words'
import { field } from '../readings/field'
import { hasValue } from '../readings/seals'
import { choose, lengthIn, stateIt } from '../remedies/fit'
import { rule } from '../rule'
import { boundsOf } from '../told-rules'

/** Both legs of a fillet bead are long enough to bond and to stretch. */
export const filletLeg = rule({
  id: 'fillet-leg',
  about: 'part',
  title: words('Legs of the fillet bead', 'Schenkel der Dreiecksfuge'),
  says: words(
    'A fillet bead bonds over at least 10 mm on the frame and on the reveal.',
    'Eine Dreiecksfuge haftet mindestens 10 mm am Rahmen und an der Leibung.',
  ),
  why: words(
    'A small triangle has no length to stretch: it peels from its corner.',
    'Ein kleines Dreieck hat keine Länge, sich zu dehnen: Es löst sich aus der Ecke.',
  ),
  reads: { frame_mm: field('fillet.leg-frame'), wall_mm: field('fillet.leg-wall') },
  limit: 'fillet-leg',
  band: [],
  applies: ({ seal }) =>
    (seal && hasValue(seal, 'fillet.leg-frame')) ||
    words('there is no fillet bead here', 'hier ist keine Dreiecksfuge'),
  ask: () => [{ given: {} }],
  compare: ({ frame_mm, wall_mm }, then) => ({
    kind: 'amount',
    actual: exactly(Math.min(frame_mm, wall_mm)),
    required: boundsOf(then, 'mm'),
  }),
  sum: ({ frame_mm, wall_mm }) => [
    { sign: '', value: frame_mm, unit: 'mm', says: field('fillet.leg-frame').name },
    { sign: '', value: wall_mm, unit: 'mm', says: field('fillet.leg-wall').name },
  ],
  *remedies({ frame_mm, wall_mm }, { least = 0 }, at) {
    if (!at.seal) return
    const part = at.seal.id
    const short = [
      ...(frame_mm < least ? ['fillet.leg-frame'] : []),
      ...(wall_mm < least ? ['fillet.leg-wall'] : []),
    ]
    yield* choose({
      edits: short.map(id => stateIt(id, part, least)),
      says: [filled(words('legs of {0}', 'Schenkel von {0}'), lengthIn(least))],
    })
  },
  examples: [
    {
      when: words('12 mm on both sides', '12 mm auf beiden Seiten'),
      practice: 'DE',
      joint: { planned_mm: 10 },
      known: { frame_mm: 12, wall_mm: 12 },
      verdict: 'met',
    },
    {
      when: words('6 mm on the frame', '6 mm am Rahmen'),
      practice: 'AT',
      joint: { planned_mm: 10 },
      known: { frame_mm: 6, wall_mm: 12 },
      verdict: 'not-met',
    },
  ],
})
