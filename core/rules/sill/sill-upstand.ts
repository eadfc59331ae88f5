import { exactly } from '../../units'
import { words } from '../../words'
import { hasMetalSill, ofSill, sillId } from '../readings/sill'
import { lengthOf } from '../remedies/state'
import { rule } from '../rule'

const size = ofSill('sill.upstand', it => it.upstand_mm)

/** A metal sill is turned up against the frame. */
export const sillUpstand = rule({
  id: 'sill-upstand',
  about: 'sill',
  title: words('Upstand of the sill at the frame', 'Hintere Aufkantung der Fensterbank'),
  says: words(
    'A metal sill is turned up against the frame and fixed there.',
    'Eine Metallfensterbank ist am Rahmen aufgekantet und dort befestigt.',
  ),
  why: words(
    'Wind drives the water on a sill towards the frame. Without an upstand it runs under the frame into the joint.',
    'Wind treibt das Wasser auf der Fensterbank zum Rahmen. Ohne Aufkantung läuft es unter dem Rahmen in die Fuge.',
  ),
  reads: { size_mm: size },
  limit: 'sill-upstand',
  band: [],
  applies: hasMetalSill,
  ask: () => [{ given: {} }],
  compare: ({ size_mm }, { least_mm }) => ({
    kind: 'amount',
    actual: exactly(size_mm),
    required: { unit: 'mm', min: least_mm },
  }),
  sum: () => [],
  *remedies(_known, { least_mm }, at) {
    yield* lengthOf(size.name, 'sill.upstand', sillId(at), least_mm)
  },
  examples: [
    {
      when: words('25 mm', '25 mm hoch'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { size_mm: 25 },
      verdict: 'met',
    },
    {
      when: words('no upstand', 'keine Aufkantung'),
      practice: 'AT',
      joint: { planned_mm: 12 },
      known: { size_mm: 0 },
      verdict: 'not-met',
    },
    {
      when: words('16 mm', '16 mm hoch'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { size_mm: 16 },
      verdict: 'advice',
    },
  ],
})
