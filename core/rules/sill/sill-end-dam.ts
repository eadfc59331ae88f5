import { exactly } from '../../units'
import { words } from '../../words'
import { hasSill, ofSill, sillId } from '../readings/sill'
import { lengthOf } from '../remedies/state'
import { rule } from '../rule'

const size = ofSill('sill.end-dam', it => it.endDam_mm)

/** A sill is turned up at its ends. */
export const sillEndDam = rule({
  id: 'sill-end-dam',
  about: 'sill',
  title: words('End dams of the sill', 'Seitliche Aufkantung der Fensterbank'),
  says: words('The sill is turned up at both ends.', 'Die Fensterbank ist an beiden Enden aufgekantet.'),
  why: words(
    'Without an upstand wind drives water off the end and into the reveal.',
    'Ohne Aufkantung treibt Wind das Wasser am Ende in die Leibung.',
  ),
  reads: { size_mm: size },
  limit: 'sill-end-dam',
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
    yield* lengthOf(size.name, 'sill.end-dam', sillId(at), least_mm)
  },
  examples: [
    {
      when: words('20 mm', '20 mm hoch'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { size_mm: 20 },
      verdict: 'met',
    },
    {
      when: words('12 mm', '12 mm hoch'),
      practice: 'AT',
      joint: { planned_mm: 12 },
      known: { size_mm: 12 },
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
