import { exactly } from '../../units'
import { words } from '../../words'
import { hasMetalSill, sillId, sillKind, sillLength } from '../readings/sill'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** A metal sill is no longer than its ends can take in movement. */
export const sillLengthRule = rule({
  id: 'sill-length',
  about: 'sill',
  title: words('Length of a metal sill', 'Länge der Metallfensterbank'),
  says: words(
    'A metal sill is made in pieces with an expansion joint where it is longer than one piece may be.',
    'Eine längere Metallfensterbank wird in Stücken mit Dehnungsstoß ausgeführt.',
  ),
  why: words(
    'A long sheet bulges in the sun, tears its seals and rattles.',
    'Ein langes Blech beult sich in der Sonne, reißt an seinen Dichtungen und klappert.',
  ),
  reads: { length_mm: sillLength, sill: sillKind },
  limit: 'sill-length',
  band: [],
  applies: hasMetalSill,
  ask: ({ sill }) => [{ given: { sill } }],
  compare: ({ length_mm }, { most_mm }) => ({
    kind: 'amount',
    actual: exactly(length_mm),
    required: { unit: 'mm', max: most_mm },
  }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(
      words('Divide the sill with an expansion joint', 'Fensterbank mit Dehnungsstoß teilen'),
      'sill.length',
      sillId(at),
    )
  },
  examples: [
    {
      when: words('2.4 m in one piece', '2,4 m in einem Stück'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { length_mm: 2426, sill: 'metal' },
      verdict: 'met',
    },
    {
      when: words('3.6 m in one piece', '3,6 m in einem Stück'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { length_mm: 3600, sill: 'metal' },
      verdict: 'not-met',
    },
  ],
})
