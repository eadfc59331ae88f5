import { profileOf } from '../../detail'
import type { Term } from '../../movement'
import { isSome, words } from '../../words'
import { placed, type Reading } from '../reading'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** A frame that stands before the wall that bears it: how far, how heavy, held by what. */
type Forward = {
  readonly hasBrackets: boolean
  /** from the reference face to the middle of the frame */
  readonly offset_mm: number
  readonly mass_kg: number | undefined
  readonly lever_mm: number | undefined
}

const forward: Reading<Forward> = placed({
  id: 'opening.forward',
  name: words('Frame before the bearing layer', 'Rahmen vor der tragenden Schicht'),
  compute: ({ opening, frame }) => {
    const { fixings, asked, position_mm } = opening
    if (!isSome(fixings)) return undefined
    const brackets = fixings.filter(it => it.kind === 'bracket')
    return {
      hasBrackets: brackets.length > 0,
      offset_mm: -(position_mm.value + profileOf(frame).depth_mm / 2),
      mass_kg: asked?.mass_kg?.value,
      lever_mm: brackets.find(it => it.lever_mm)?.lever_mm?.value,
    }
  },
  beneath: ({ opening: { id, fixings } }) =>
    isSome(fixings) ? [] : [{ field: 'opening.fixings', part: id, stated: undefined }],
})

/** A frame that stands before the bearing layer is carried by brackets that are assessed for it. */
export const frameForward = rule({
  id: 'frame-forward',
  about: 'opening',
  title: words('Frame before the bearing layer', 'Rahmen vor der tragenden Schicht'),
  says: words(
    'A frame that stands before the bearing layer is carried by brackets or consoles assessed for wall and offset.',
    'Ein Rahmen vor der tragenden Schicht wird von Konsolen getragen, die für Wand und Auskragung zugelassen sind.',
  ),
  why: words(
    'Its weight pulls on the wall with a lever, all its life, and wind adds to it.',
    'Sein Gewicht zieht mit Hebelarm an der Wand, ein Leben lang, und der Wind kommt dazu.',
  ),
  reads: { forward },
  limit: 'frame-forward',
  band: [],
  applies: ({ opening }) =>
    opening.position_mm.value < 0
      ? true
      : words('the frame does not stand before the bearing layer', 'der Rahmen steht nicht vor der tragenden Schicht'),
  ask: () => [{ given: {} }],
  compare: known => ({
    kind: 'presence',
    there: known.forward.hasBrackets ? [brackets] : [],
    missing: known.forward.hasBrackets ? [] : [brackets],
  }),
  sum: known => tensionSum(known.forward),
  *remedies(_known, _then, at) {
    yield act(
      words(
        'Carry the frame by brackets assessed for this wall and offset',
        'Rahmen mit Konsolen tragen, die für diese Wand und Auskragung zugelassen sind',
      ),
      'opening.position',
      at.opening.id,
    )
  },
  caution: () => ({
    to: words('whoever assesses the brackets', 'wer die Konsolen bemisst'),
    handOver: [
      words('assessment of the bracket for wall and offset', 'Zulassung der Konsole für Wand und Auskragung'),
      words('wind on the element, added to its weight', 'Wind auf das Element, zusätzlich zum Gewicht'),
    ],
  }),
  examples: [
    {
      when: words('on consoles in the insulation', 'auf Konsolen in der Dämmung'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { forward: { hasBrackets: true, offset_mm: 145, mass_kg: 183, lever_mm: 120 } },
      verdict: 'refer',
    },
    {
      when: words('on screws only', 'nur auf Schrauben'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { forward: { hasBrackets: false, offset_mm: 60, mass_kg: undefined, lever_mm: undefined } },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore

const brackets = words('brackets or consoles', 'Konsolen')

/** Acceleration of gravity in m/s², and the factor on dead load (EN 1990, from memory). */
const gravity = 9.81
const deadLoad = 1.35

/** Tension that half of the weight, on one console, brings to its screw: the most loaded of two or three. */
const tensionSum = ({ offset_mm, mass_kg, lever_mm }: Forward): readonly Term[] => {
  const offset: Term = {
    sign: '',
    value: offset_mm,
    unit: 'mm',
    says: words('from the bearing layer to the middle of the frame', 'von der tragenden Schicht zur Rahmenmitte'),
  } // prettier-ignore
  if (mass_kg === undefined) return [offset]
  const half_N = (mass_kg * gravity) / 2
  const weight: Term = {
    sign: '',
    value: half_N,
    unit: 'N',
    says: words('half of the weight on one console', 'halbes Gewicht auf einer Konsole'),
  }
  if (lever_mm === undefined) return [offset, weight]
  return [
    weight,
    { sign: '×', value: deadLoad, unit: 'one', says: words('dead load', 'Eigenlast') },
    { ...offset, sign: '×' },
    { sign: '÷', value: lever_mm, unit: 'mm', says: words('lever of its screw', 'Hebelarm der Schraube') },
    {
      sign: '=',
      value: (deadLoad * half_N * offset_mm) / lever_mm,
      unit: 'N',
      says: words('tension, without wind', 'Zug, ohne Wind'),
    },
  ]
}
