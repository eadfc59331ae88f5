import { type FrameBay, neededIn, type SideFixings } from '../../detail'
import { exactly } from '../../units'
import { isSome, type Some, words } from '../../words'
import { burglaryAsked, fixingsOfSide, isOnBrackets } from '../readings/fixings'
import { frameMaterial } from '../readings/kinds'
import { rule } from '../rule'
import { exampleSide } from './example-side'
import { moreFixings } from './fixing-spacing'

/** Each bay between corners, mullions and transoms has fixings enough. */
export const fixingCount = rule({
  id: 'fixing-count',
  about: 'side',
  title: words('Fixings in each bay', 'Befestigungen je Feld'),
  says: words(
    'Between corners, mullions and transoms each bay has two fixings, and as many more as the largest distance asks for.',
    'Zwischen Ecken, Pfosten und Riegeln hat jedes Feld zwei Befestigungen und so viele mehr, wie der größte Abstand verlangt.',
  ),
  why: words(
    'A mullion brings the wind of two panes to the frame: without fixings on both its sides it pushes the frame out.',
    'Ein Pfosten bringt den Wind zweier Felder auf den Rahmen: Ohne Befestigung beiderseits drückt er ihn hinaus.',
  ),
  reads: { side: fixingsOfSide, frame: frameMaterial, burglary: burglaryAsked },
  limit: 'fixing-spacing',
  band: [],
  applies: at =>
    isOnBrackets(at)
      ? words('brackets stand here under what they carry', 'hier stehen Konsolen unter dem, was sie tragen')
      : true,
  ask: ({ side, frame, burglary }) => [{ given: { frame, burglary, length_mm: side.length_mm } }],
  compare: ({ side }, { most_mm, least }) => {
    const bay = shortest(side, most_mm, least)
    return {
      kind: 'amount',
      actual: exactly(bay?.axes_mm.length ?? 0),
      required: { unit: 'one', min: bay ? neededIn(bay, most_mm, least) : least },
    }
  },
  sum: ({ side }, { most_mm, least }) => {
    const bay = shortest(side, most_mm, least)
    if (!bay) return []
    return [
      { sign: '', value: bay.to_mm - bay.from_mm, unit: 'mm', says: words('length of the bay', 'Feldlänge') },
      {
        sign: '−',
        value: bay.first_mm,
        unit: 'mm',
        says: words('to the first axis', 'bis zur ersten Achse'),
      },
      {
        sign: '−',
        value: bay.last_mm,
        unit: 'mm',
        says: words('from the last axis', 'ab der letzten Achse'),
      },
      { sign: '÷', value: most_mm, unit: 'mm', says: words('largest distance', 'größter Abstand') },
      {
        sign: '=',
        value: neededIn(bay, most_mm, least),
        unit: 'one',
        says: words('rounded up, and one more', 'aufgerundet, und eine mehr'),
      },
    ]
  },
  *remedies({ side }, { most_mm, least }, at) {
    yield* moreFixings(at, side.axes_mm.length, ({ bays }) =>
      bays.every(bay => neededIn(bay, most_mm, least) <= bay.axes_mm.length),
    )
  },
  examples: [
    {
      when: words(
        'a head of 2100 mm with a mullion, two in each bay',
        'ein Sturz von 2100 mm mit Pfosten, zwei je Feld',
      ),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { side: exampleSide([1050, 2], [1050, 2]), frame: 'pvc-white', burglary: 'no' },
      verdict: 'met',
    },
    {
      when: words('the same with one in one of the bays', 'derselbe mit nur einer in einem Feld'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { side: exampleSide([1050, 2], [1050, 1]), frame: 'pvc-white', burglary: 'no' },
      verdict: 'not-met',
    },
    {
      when: words('one on an Austrian side of 450 mm', 'eine an einer österreichischen Seite von 450 mm'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { side: exampleSide([450, 1]), frame: 'timber', burglary: 'no' },
      verdict: 'met',
    },
  ],
})

/** The bay that lacks most, or has least to spare. */
const shortest = (side: SideFixings, most_mm: number, least: number): FrameBay | undefined => {
  const spare = (bay: FrameBay) => bay.axes_mm.length - neededIn(bay, most_mm, least)
  const bays: readonly FrameBay[] = side.bays
  return isSome(bays) ? leastOf(bays, spare) : undefined
}

const leastOf = <T>([first, ...more]: Some<T>, of: (it: T) => number): T =>
  more.reduce((best, it) => (of(it) < of(best) ? it : best), first)
