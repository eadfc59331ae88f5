import { exactly } from '../../units'
import { words } from '../../words'
import { hasSill, ofSill, sillId } from '../readings/sill'
import { lengthOf } from '../remedies/state'
import { rule } from '../rule'

const size = ofSill('sill.throat', it => it.throat_mm)

/** A sill has a groove below its edge that water drips from. */
export const sillThroat = rule({
  id: 'sill-throat',
  about: 'sill',
  title: words('Drip groove of the sill', 'Abtropfnut der Fensterbank'),
  says: words(
    'The groove below the front edge lies clear of the wall.',
    'Die Nut unter der Vorderkante liegt frei vor der Wand.',
  ),
  why: words(
    'Without it water creeps back along the underside.',
    'Ohne sie kriecht Wasser an der Unterseite zurück.',
  ),
  reads: { size_mm: size },
  limit: 'sill-throat',
  band: [],
  applies: hasSill,
  ask: () => [{ given: {} }],
  compare: ({ size_mm }, { least_mm }) => ({
    kind: 'amount',
    actual: exactly(size_mm),
    required: { unit: 'mm', min: least_mm },
  }),
  sum: () => [],
  *remedies(_known, { least_mm }, at) {
    yield* lengthOf(size.name, 'sill.throat', sillId(at), least_mm)
  },
  examples: [
    {
      when: words('10 mm clear', '10 mm frei'),
      practice: 'UK',
      joint: { planned_mm: 12 },
      known: { size_mm: 10 },
      verdict: 'met',
    },
    {
      when: words('5 mm clear', '5 mm frei'),
      practice: 'UK',
      joint: { planned_mm: 12 },
      known: { size_mm: 5 },
      verdict: 'not-met',
    },
  ],
})
