import { exactly } from '../../units'
import { words } from '../../words'
import { toldAmount } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { boundsOf } from '../told-rules'

const plumb = toldAmount('opening.plumb', 'plumb_mm_m')
const bow = toldAmount('opening.bow', 'bow_mm_m')

/** A frame that is fixed stands plumb, level and straight. */
export const frameTrue = rule({
  id: 'frame-true',
  about: 'opening',
  title: words('Frame plumb, level and straight', 'Rahmen lotrecht, waagrecht und gerade'),
  says: words(
    'After tightening the frame is plumb and level within a few millimetres per metre, and not bowed.',
    'Nach dem Anziehen steht der Rahmen auf wenige Millimeter je Meter lot- und waagrecht und ist nicht verwölbt.',
  ),
  why: words(
    'A screw pulls the frame to the wall where no block holds it off: sashes bind there.',
    'Eine Schraube zieht den Rahmen zur Wand, wo kein Klotz ihn abhält: Dort klemmen Flügel.',
  ),
  reads: { plumb_mm_m: plumb, bow_mm_m: bow },
  limit: 'frame-true',
  band: [],
  applies: () => true,
  ask: () => [{ given: { of: 'plumb' } }, { given: { of: 'bow' } }],
  compare: ({ plumb_mm_m, bow_mm_m }, then, { given }) => ({
    kind: 'amount',
    actual: exactly(given.of === 'plumb' ? plumb_mm_m : bow_mm_m),
    required: boundsOf(then, 'mm_m'),
  }),
  sum: ({ plumb_mm_m, bow_mm_m }) => [
    { sign: '', value: plumb_mm_m, unit: 'mm_m', says: plumb.name },
    { sign: '', value: bow_mm_m, unit: 'mm_m', says: bow.name },
  ],
  *remedies(_known, _then, at) {
    yield act(
      words('Loosen, pack beside every fixing, tighten and measure', 'Lösen, neben jeder Befestigung hinterlegen, anziehen und messen'),
      'opening.plumb',
      at.opening.id,
    )
  },
  examples: [
    {
      when: words('1 mm per metre, bowed by half of that', '1 mm je Meter, halb so viel verwölbt'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { plumb_mm_m: 1, bow_mm_m: 0.5 },
      verdict: 'met',
    },
    {
      when: words('1.8 mm per metre in Germany', '1,8 mm je Meter in Deutschland'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { plumb_mm_m: 1.8, bow_mm_m: 0.5 },
      verdict: 'not-met',
    },
    {
      when: words('plumb, but bowed', 'lotrecht, aber verwölbt'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { plumb_mm_m: 1, bow_mm_m: 2 },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
