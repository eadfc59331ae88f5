import { exactly } from '../../units'
import { words } from '../../words'
import { type EdgeDistance, edgeDistance, embedment, noBracket, ofFixing } from '../readings/fixings'
import { isBaseOf } from '../readings/wall'
import { lengthOf } from '../remedies/state'
import { rule } from '../rule'

const diameter = ofFixing('fixing.diameter', it => it.diameter_mm)

/** In timber the thread and the distance from the edge follow from the diameter of the screw. */
export const screwInTimber = rule({
  id: 'screw-in-timber',
  about: 'fixing',
  title: words('Screw in timber', 'Schraube in Holz'),
  says: words(
    'In timber a screw has six diameters of thread and stands four to seven diameters from the edge.',
    'In Holz sitzt eine Schraube mit sechs Durchmessern Gewinde und vier bis sieben Durchmesser vom Rand.',
  ),
  why: words(
    'A short thread pulls out; near the edge the timber splits along its grain.',
    'Kurzes Gewinde reißt aus, nahe am Rand spaltet das Holz längs der Faser.',
  ),
  reads: { thread_mm: embedment, diameter_mm: diameter, edge: edgeDistance },
  limit: 'screw-in-timber',
  band: [],
  applies: at =>
    isBaseOf(at, ['timber']) ? noBracket(at) : words('the wall bears with no timber here', 'hier trägt kein Holz'),
  ask: () => [{ given: { of: 'thread' } }, { given: { of: 'edge' } }],
  compare: ({ thread_mm, diameter_mm, edge }, { diameters, least_mm }, { given }) => ({
    kind: 'amount',
    actual: exactly(given.of === 'thread' ? thread_mm : edge.least_mm),
    required: { unit: 'mm', min: Math.max(least_mm, diameters * diameter_mm) },
  }),
  sum: ({ diameter_mm }, { diameters }) => [
    { sign: '', value: diameter_mm, unit: 'mm', says: words('diameter of the screw', 'Durchmesser der Schraube') },
    { sign: '×', value: diameters, unit: 'one', says: words('diameters', 'Durchmesser') },
    { sign: '=', value: diameters * diameter_mm, unit: 'mm', says: words('asked for', 'verlangt') },
  ],
  *remedies({ thread_mm, diameter_mm, edge }, { diameters }, at) {
    if (!at.fixing) return
    const least_mm = diameters * diameter_mm
    if (thread_mm < least_mm) yield* lengthOf(embedment.name, 'fixing.embedment', at.fixing.id, least_mm)
    const to_mm = edge.position_mm + Math.max(0, least_mm - edge.outer_mm)
    const name = words('frame from the bearing layer', 'Rahmen ab tragender Schicht')
    if (edge.outer_mm < least_mm) yield* lengthOf(name, 'opening.position', at.opening.id, to_mm)
  },
  examples: [
    {
      when: words('7.5 mm thick, 45 mm deep, 55 mm from the edge', '7,5 mm dick, 45 mm tief, 55 mm vom Rand'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { thread_mm: 45, diameter_mm: 7.5, edge: away(55) },
      verdict: 'met',
    },
    {
      when: words('40 mm from the edge: more than four diameters', '40 mm vom Rand: mehr als vier Durchmesser'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { thread_mm: 60, diameter_mm: 7.5, edge: away(40) },
      verdict: 'advice',
    },
    {
      when: words('30 mm deep', '30 mm tief'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { thread_mm: 30, diameter_mm: 7.5, edge: away(60) },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore

/** An axis in a wall of 160 mm timber. A function, because the examples above call it. */
function away(outer_mm: number): EdgeDistance {
  return {
    position_mm: outer_mm - 40,
    axis_mm: 40,
    bearing_mm: 160,
    outer_mm,
    inner_mm: 160 - outer_mm,
    least_mm: outer_mm,
  }
}
