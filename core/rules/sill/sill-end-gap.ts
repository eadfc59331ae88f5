import { exactly } from '../../units'
import { words } from '../../words'
import { hasSill, ofSill, sillId, sillKind, sillLength } from '../readings/sill'
import { lengthOf } from '../remedies/state'
import { rule } from '../rule'

const gap = ofSill('sill.end-gap', it => it.endGap_mm)

/** The gap at the ends of a sill takes what the sill grows. */
export const sillEndGap = rule({
  id: 'sill-end-gap',
  about: 'sill',
  title: words('Gap at the ends of the sill', 'Fuge an den Enden der Fensterbank'),
  says: words(
    'Between end dam and render a gap takes the movement of half the sill, and is no smaller than it can be sealed.',
    'Zwischen Aufkantung und Putz nimmt eine Fuge die Bewegung der halben Fensterbank auf und ist nicht kleiner, als man sie dichten kann.',
  ),
  why: words(
    'A metal sill that grows against the render cracks it, and rain follows the crack.',
    'Eine Metallbank, die gegen den Putz wächst, reißt ihn auf, und Regen folgt dem Riss.',
  ),
  reads: { gap_mm: gap, length_mm: sillLength, sill: sillKind },
  limit: 'sill-end-gap',
  band: [],
  applies: hasSill,
  ask: ({ sill }) => [{ given: { sill } }],
  compare: ({ gap_mm, length_mm }, { least_mm, movement_mm_m }) => ({
    kind: 'amount',
    actual: exactly(gap_mm),
    required: { unit: 'mm', min: Math.max(least_mm, endMovement_mm(length_mm, movement_mm_m)) },
  }),
  sum: ({ length_mm }, { movement_mm_m }) => [
    { sign: '', value: length_mm / 2, unit: 'mm', says: words('half of the sill', 'halbe Fensterbank') },
    { sign: '×', value: movement_mm_m, unit: 'mm_m', says: words('its movement', 'ihre Bewegung') },
    {
      sign: '=',
      value: endMovement_mm(length_mm, movement_mm_m),
      unit: 'mm',
      says: words('movement of each end', 'Bewegung je Ende'),
    },
  ],
  *remedies({ length_mm }, { least_mm, movement_mm_m }, at) {
    const to_mm = Math.max(least_mm, Math.ceil(endMovement_mm(length_mm, movement_mm_m)))
    yield* lengthOf(gap.name, 'sill.end-gap', sillId(at), to_mm)
  },
  examples: [
    {
      when: words('5 mm at an aluminium sill of 2.1 m', '5 mm an einer Aluminiumbank von 2,1 m'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { gap_mm: 5, length_mm: 2100, sill: 'metal' },
      verdict: 'met',
    },
    {
      when: words('3.5 mm', '3,5 mm Fuge'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { gap_mm: 3.5, length_mm: 1600, sill: 'metal' },
      verdict: 'advice',
    },
    {
      when: words('2 mm', '2 mm Fuge'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { gap_mm: 2, length_mm: 2426, sill: 'metal' },
      verdict: 'not-met',
    },
  ],
})

const endMovement_mm = (length_mm: number, movement_mm_m: number): number =>
  ((length_mm / 2) * movement_mm_m) / 1000
