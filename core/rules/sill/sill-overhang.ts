import { exactly } from '../../units'
import { words } from '../../words'
import { hasSill, ofSill, sillId } from '../readings/sill'
import { lengthOf } from '../remedies/state'
import { rule } from '../rule'

const size = ofSill('sill.overhang', it => it.overhang_mm)

/** A sill throws water clear of the wall. */
export const sillOverhang = rule({
  id: 'sill-overhang',
  about: 'sill',
  title: words('Overhang of the sill', 'Überstand der Fensterbank'),
  says: words(
    'The drip edge stands out from the finished face of the wall.',
    'Die Tropfkante steht über die fertige Wandfläche vor.',
  ),
  why: words(
    'Water that drips along the wall soils it and soaks its upper edge.',
    'Wasser, das an der Wand abläuft, verschmutzt sie und durchfeuchtet ihre Oberkante.',
  ),
  reads: { size_mm: size },
  limit: 'sill-overhang',
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
    yield* lengthOf(size.name, 'sill.overhang', sillId(at), least_mm)
  },
  examples: [
    {
      when: words('40 mm', '40 mm Überstand'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { size_mm: 40 },
      verdict: 'met',
    },
    {
      when: words('25 mm in Austria', '25 mm in Österreich'),
      practice: 'AT',
      joint: { planned_mm: 12 },
      known: { size_mm: 25 },
      verdict: 'advice',
    },
    {
      when: words('20 mm in Britain', '20 mm in Großbritannien'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { size_mm: 20 },
      verdict: 'not-met',
    },
  ],
})
