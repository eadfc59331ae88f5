import { exactly } from '../../units'
import { words } from '../../words'
import { placed, type Reading } from '../reading'
import { toldAmount } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { boundsOf } from '../told-rules'

const plumb = toldAmount('opening.plumb', 'plumb_mm_m')
const bow = toldAmount('opening.bow', 'bow_mm_m')
/** The longer edge of the frame, over which what is out of plumb adds up. */
const edge: Reading<number> = placed({
  id: 'opening.longer-edge',
  name: words('Longer edge of the frame', 'Längere Kante des Rahmens'),
  compute: at => Math.max(at.opening.width_mm.value, at.opening.height_mm.value),
})

const overEdge = words('over that edge', 'über diese Kante')

/** A frame that is fixed stands plumb, level and straight. */
export const frameTrue = rule({
  id: 'frame-true',
  about: 'opening',
  title: words('Frame plumb, level and straight', 'Rahmen lotrecht, waagrecht und gerade'),
  says: words(
    'After tightening the frame is plumb and level within a few millimetres per metre and over its whole edge, and not bowed.',
    'Nach dem Anziehen steht der Rahmen auf wenige Millimeter je Meter und über die ganze Kante lot- und waagrecht und ist nicht verwölbt.',
  ),
  why: words(
    'A screw pulls the frame to the wall where no block holds it off: sashes bind there.',
    'Eine Schraube zieht den Rahmen zur Wand, wo kein Klotz ihn abhält: Dort klemmen Flügel.',
  ),
  reads: { plumb_mm_m: plumb, bow_mm_m: bow, edge_mm: edge },
  limit: 'frame-true',
  band: [],
  applies: () => true,
  ask: () => [{ given: { of: 'plumb' } }, { given: { of: 'edge' } }, { given: { of: 'bow' } }],
  compare: ({ plumb_mm_m, bow_mm_m, edge_mm }, then, { given }) => ({
    kind: 'amount',
    actual: exactly({ plumb: plumb_mm_m, edge: (plumb_mm_m * edge_mm) / 1000, bow: bow_mm_m }[given.of]),
    required: boundsOf(then, given.of === 'edge' ? 'mm' : 'mm_m'),
  }),
  sum: ({ plumb_mm_m, bow_mm_m, edge_mm }) => [
    { sign: '', value: plumb_mm_m, unit: 'mm_m', says: plumb.name },
    { sign: '×', value: edge_mm, unit: 'mm', says: edge.name },
    { sign: '=', value: (plumb_mm_m * edge_mm) / 1000, unit: 'mm', says: overEdge },
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
      known: { plumb_mm_m: 1, bow_mm_m: 0.5, edge_mm: 1500 },
      verdict: 'met',
    },
    {
      when: words('1.8 mm per metre in Germany', '1,8 mm je Meter in Deutschland'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { plumb_mm_m: 1.8, bow_mm_m: 0.5, edge_mm: 1500 },
      verdict: 'not-met',
    },
    {
      when: words('1.4 mm per metre along an edge of 2.4 m', '1,4 mm je Meter an einer Kante von 2,4 m'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { plumb_mm_m: 1.4, bow_mm_m: 0.5, edge_mm: 2400 },
      verdict: 'not-met',
    },
    {
      when: words('plumb, but bowed', 'lotrecht, aber verwölbt'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { plumb_mm_m: 1, bow_mm_m: 2, edge_mm: 1500 },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
