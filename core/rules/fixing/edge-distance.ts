import { exactly } from '../../units'
import { words } from '../../words'
import { type EdgeDistance, edgeDistance as edge, fixingKind, noBracket } from '../readings/fixings'
import { anchorBase, isBaseOf, weakBase } from '../readings/wall'
import { act, lengthOf } from '../remedies/state'
import { rule } from '../rule'

/** Fixings keep off the arris of the bearing layer: their distance follows from where the frame stands. */
export const edgeDistanceRule = rule({
  id: 'edge-distance',
  about: 'fixing',
  title: words('Edge distance of fixings', 'Randabstand der Befestigung'),
  says: words(
    'The axis of a fixing keeps a least distance from the nearest free arris of the bearing layer.',
    'Die Achse einer Befestigung hält einen Mindestabstand von der nächsten freien Kante der tragenden Schicht.',
  ),
  why: words(
    'Near the arris a screw breaks out a wedge of masonry; nobody sees it behind the insulation.',
    'Nahe der Kante bricht die Schraube einen Keil aus dem Mauerwerk; hinter der Dämmung sieht es niemand.',
  ),
  reads: { edge, base: anchorBase, fixing: fixingKind },
  limit: 'edge-distance',
  band: [],
  applies: at =>
    isBaseOf(at, ['timber'])
      ? words('in timber it follows from the diameter', 'in Holz folgt er aus dem Durchmesser')
      : noBracket(at),
  ask: ({ base, fixing }) => [{ given: { base: base.base, fixing } }],
  compare: (known, { least_mm }) => ({
    kind: 'amount',
    actual: exactly(known.edge.least_mm),
    required: { unit: 'mm', min: least_mm },
  }),
  sum: known => [
    {
      sign: '',
      value: known.edge.position_mm,
      unit: 'mm',
      says: words('frame behind the outer arris', 'Rahmen hinter der Außenkante'),
    },
    { sign: '+', value: known.edge.axis_mm, unit: 'mm', says: words('axis in the frame', 'Achse im Rahmen') },
    {
      sign: '=',
      value: known.edge.outer_mm,
      unit: 'mm',
      says: words('from the outer arris', 'ab Außenkante'),
    },
    {
      sign: '',
      value: known.edge.inner_mm,
      unit: 'mm',
      says: words('from the inner arris', 'ab Innenkante'),
    },
  ],
  *remedies(known, { least_mm }, at) {
    yield act(
      words(
        'Hold the frame by brackets that reach further into the wall',
        'Rahmen mit Konsolen halten, die weiter in die Wand greifen',
      ),
      'opening.position',
      at.opening.id,
    )
    const { outer_mm, inner_mm, position_mm } = known.edge
    const to_mm =
      outer_mm < inner_mm ? position_mm + least_mm - outer_mm : position_mm - (least_mm - inner_mm)
    const name = words('frame from the bearing layer', 'Rahmen ab tragender Schicht')
    yield* lengthOf(name, 'opening.position', at.opening.id, to_mm)
  },
  caution: ({ base }) => weakBase(base),
  examples: [
    {
      when: words(
        'a screw 70 mm from the arris of sand-lime brick',
        'eine Schraube 70 mm von der Kante des Kalksandsteins',
      ),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { edge: away(70), base: { base: 'sand-lime', isKnown: true }, fixing: 'frame-screw' },
      verdict: 'met',
    },
    {
      when: words(
        'a frame flush with the wall, its screws 40 mm from the arris',
        'ein wandbündiger Rahmen, die Schrauben 40 mm von der Kante',
      ),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { edge: away(40), base: { base: 'sand-lime', isKnown: true }, fixing: 'frame-screw' },
      verdict: 'not-met',
    },
    {
      when: words('50 mm in solid brick', '50 mm in Vollziegel'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { edge: away(50), base: { base: 'solid-brick', isKnown: true }, fixing: 'frame-screw' },
      verdict: 'advice',
    },
    {
      when: words('178 mm in perforated brick', '178 mm in Hochlochziegel'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { edge: away(178), base: { base: 'perforated-brick', isKnown: true }, fixing: 'frame-screw' },
      verdict: 'refer',
    },
  ],
})

/** An axis in a thick wall at a distance from its outer arris. A function, because the examples above call it. */
function away(outer_mm: number): EdgeDistance {
  const bearing_mm = 365
  const inner_mm = bearing_mm - outer_mm
  return { position_mm: outer_mm - 40, axis_mm: 40, bearing_mm, outer_mm, inner_mm, least_mm: outer_mm }
}
