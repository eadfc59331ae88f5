import { exactly } from '../../units'
import { words } from '../../words'
import { field } from '../readings/field'
import { frameMaterial } from '../readings/kinds'
import { lengthOf } from '../remedies/state'
import { rule } from '../rule'

/** A screw through a frame of PVC-U meets steel. */
export const steelCore = rule({
  id: 'steel-core',
  about: 'opening',
  title: words('Steel core at the screws', 'Stahlkern an den Schrauben'),
  says: words(
    'Where a fixing passes through PVC-U it meets a steel core of a least thickness.',
    'Wo eine Befestigung durch PVC-U geht, trifft sie auf einen Stahlkern von Mindestdicke.',
  ),
  why: words(
    'The plastic alone creeps round the screw; the frame works loose under wind.',
    'Der Kunststoff allein weicht um die Schraube aus; der Rahmen lockert sich im Wind.',
  ),
  reads: { steel_mm: field('frame.steel'), frame: frameMaterial },
  limit: 'steel-core',
  band: [],
  applies: ({ frame }) =>
    frame.material === 'pvc-white' || frame.material === 'pvc-coloured'
      ? true
      : words('the frame is not of PVC-U', 'der Rahmen ist nicht aus PVC-U'),
  ask: ({ frame }) => [{ given: { frame } }],
  compare: ({ steel_mm }, { least_mm }) => ({
    kind: 'amount',
    actual: exactly(steel_mm),
    required: { unit: 'mm', min: least_mm },
  }),
  sum: () => [],
  *remedies(_known, { least_mm }, at) {
    yield* lengthOf(field('frame.steel').name, 'frame.steel', at.frame.id, least_mm)
  },
  examples: [
    {
      when: words('white, with 1.5 mm of steel', 'weiß, mit 1,5 mm Stahl'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { steel_mm: 1.5, frame: 'pvc-white' },
      verdict: 'met',
    },
    {
      when: words('coloured, with 1.5 mm of steel', 'farbig, mit 1,5 mm Stahl'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { steel_mm: 1.5, frame: 'pvc-coloured' },
      verdict: 'advice',
    },
    {
      when: words('white, without a core', 'weiß, ohne Kern'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { steel_mm: 0, frame: 'pvc-white' },
      verdict: 'not-met',
    },
  ],
})
