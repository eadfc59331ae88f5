import { applyEdits, placedAt, sideFixings } from '../../detail'
import { exactly } from '../../units'
import { filled, words } from '../../words'
import type { Remedy } from '../finding'
import { alone, type Place } from '../place'
import { burglaryAsked, faceOf, fixingsOfSide } from '../readings/fixings'
import { frameMaterial } from '../readings/kinds'
import { choose, stateIt } from '../remedies/fit'
import { rule } from '../rule'
import { exampleSide } from './example-side'

/** Nowhere along a side is the frame free over more than a largest distance. */
export const fixingSpacing = rule({
  id: 'fixing-spacing',
  about: 'side',
  title: words('Spacing of fixings', 'Abstand der Befestigungen'),
  says: words(
    'The largest distance between two fixings of a side is at most what the frame stands.',
    'Der größte Abstand zweier Befestigungen einer Seite ist höchstens so groß, wie der Rahmen es verträgt.',
  ),
  why: words(
    'Between two fixings wind bends the frame; seals crack and sashes bind where it bends too far.',
    'Zwischen zwei Befestigungen biegt der Wind den Rahmen; biegt er ihn zu weit, reißen Dichtungen und klemmen Flügel.',
  ),
  reads: { side: fixingsOfSide, frame: frameMaterial, burglary: burglaryAsked },
  limit: 'fixing-spacing',
  band: [],
  applies: () => true,
  ask: ({ side, frame, burglary }) => [{ given: { frame, burglary, length_mm: side.length_mm } }],
  compare: ({ side }, { most_mm }) => ({
    kind: 'amount',
    actual: exactly(side.spacing_mm),
    required: { unit: 'mm', max: most_mm },
  }),
  sum: ({ side }) => [
    { sign: '', value: side.length_mm, unit: 'mm', says: words('length of the side', 'Länge der Seite') },
    { sign: '', value: side.axes_mm.length, unit: 'one', says: words('fixings', 'Befestigungen') },
    {
      sign: '=',
      value: side.spacing_mm,
      unit: 'mm',
      says: words('largest distance between axes', 'größter Abstand der Achsen'),
    },
  ],
  *remedies({ side }, { most_mm }, at) {
    yield* moreFixings(at, side.axes_mm.length, ({ spacing_mm }) => spacing_mm <= most_mm)
  },
  examples: [
    {
      when: words('three on a jamb of 1350 mm', 'drei an einer Leibung von 1350 mm'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { side: exampleSide([1350, 3]), frame: 'pvc-white', burglary: 'no' },
      verdict: 'met',
    },
    {
      when: words('three on a timber jamb of 2140 mm', 'drei an einer Holzleibung von 2140 mm'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { side: exampleSide([2140, 3]), frame: 'timber', burglary: 'no' },
      verdict: 'not-met',
    },
    {
      when: words('a head that nothing holds', 'ein Sturz, den nichts hält'),
      practice: 'AT',
      joint: { planned_mm: 20 },
      known: { side: exampleSide([2400, 0]), frame: 'pvc-white', burglary: 'no' },
      verdict: 'not-met',
    },
    {
      when: words(
        '650 mm apart on an element that resists burglary',
        '650 mm Abstand an einem einbruchhemmenden Element',
      ),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { side: exampleSide([1720, 3]), frame: 'pvc-white', burglary: 'yes' },
      verdict: 'not-met',
    },
  ],
})

/** More fixings on a side, until what is asked of them holds: no more than twenty. Nothing where nobody has counted them. */
export const moreFixings = (
  at: Place,
  now: number,
  suits: (side: NonNullable<ReturnType<typeof sideFixings>>) => boolean,
): readonly Remedy[] => {
  const [first] = placedAt(at.opening, at.side)
  if (!first || first.positions_mm?.[at.side]) return []
  const field = `fixing.count-${at.side}`
  const own = alone(at.project, at.opening)
  for (let count = now + 1; count <= 20; count++) {
    const edits = [stateIt(field, first.id, count)]
    const edited = applyEdits(own, edits)
    const opening = edited.ok ? edited.value.openings[at.opening.id] : undefined
    const side = opening && sideFixings(opening, at.side, faceOf(at))
    const says = [filled(words('{0} fixings on this side', '{0} Befestigungen an dieser Seite'), `${count}`)]
    if (side && suits(side)) return choose({ edits, says })
  }
  return []
}
