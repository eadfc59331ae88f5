import { profileOf, sideFixings } from '../../detail'
import { factors, mostLoadedSupport_N } from '../../load'
import type { Term } from '../../movement'
import { exactly } from '../../units'
import { isSome, words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { reactionsAt, windOn } from '../readings/loads'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** A frame that stands before the wall that bears it: how far, how heavy, held by what. */
type Forward = {
  readonly hasBrackets: boolean
  /** from the reference face to the middle of the frame */
  readonly offset_mm: number
  readonly mass_kg: number | undefined
  readonly lever_mm: number | undefined
  /** wind on the most loaded console, characteristic, in N; and what one is assessed for */
  readonly wind_N: number | undefined
  readonly resistance_N: number | undefined
}

const forward: Reading<Forward> = placed({
  id: 'opening.forward',
  name: words('Frame before the bearing layer', 'Rahmen vor der tragenden Schicht'),
  compute: at => {
    const { opening, frame } = at
    const { fixings, asked, position_mm } = opening
    if (!isSome(fixings)) return undefined
    const brackets = fixings.filter(it => it.kind === 'bracket')
    return {
      hasBrackets: brackets.length > 0,
      offset_mm: -(position_mm.value + profileOf(frame).depth_mm / 2),
      mass_kg: asked?.mass_kg?.value,
      lever_mm: brackets.find(it => it.lever_mm)?.lever_mm?.value,
      wind_N: windOnConsole_N(at),
      resistance_N: brackets.find(it => it.lever_mm)?.resistance_N?.value,
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
  compare: known => {
    const { hasBrackets, resistance_N } = known.forward
    const design_N = tension_N(known.forward)
    // with all figures known the force is held to the resistance; without, only that there are brackets
    return hasBrackets && design_N !== undefined && resistance_N !== undefined
      ? { kind: 'amount', actual: exactly(design_N), required: { unit: 'N', max: resistance_N } }
      : { kind: 'presence', there: hasBrackets ? [brackets] : [], missing: hasBrackets ? [] : [brackets] }
  },
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
      known: { forward: { hasBrackets: true, offset_mm: 145, mass_kg: 183, lever_mm: 120, wind_N: 483, resistance_N: 2500 } },
      verdict: 'refer',
    },
    {
      when: words('on consoles that are too weak for weight and wind', 'auf Konsolen, zu schwach für Gewicht und Wind'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { forward: { hasBrackets: true, offset_mm: 145, mass_kg: 183, lever_mm: 120, wind_N: 483, resistance_N: 2000 } },
      verdict: 'not-met',
    },
    {
      when: words('on screws only', 'nur auf Schrauben'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { forward: { hasBrackets: false, offset_mm: 60, mass_kg: undefined, lever_mm: undefined, wind_N: undefined, resistance_N: undefined } },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore

const brackets = words('brackets or consoles', 'Konsolen')

/** Tension that half of the weight brings to the screw of one console: the most loaded of two or three. */
const weightTension_N = ({ offset_mm, mass_kg, lever_mm }: Forward): number | undefined =>
  mass_kg === undefined || lever_mm === undefined
    ? undefined
    : (factors.dead * mostLoadedSupport_N(mass_kg) * offset_mm) / lever_mm

/** The same with the wind on that console; nothing while either is not known. */
const tension_N = (it: Forward): number | undefined => {
  const weight = weightTension_N(it)
  return weight === undefined || it.wind_N === undefined ? undefined : weight + factors.wind * it.wind_N
}

/** Wind on the most loaded console of the sill: the end of a mullion, and the edge up to the next ones. */
const windOnConsole_N = (at: Place): number | undefined => {
  const wind = windOn(at)
  const side = sideFixings(at.opening, 'sill', profileOf(at.frame).face_mm)
  if (!wind || !side) return undefined
  const reaction_N = Math.max(0, ...reactionsAt(at, 'sill').map(it => it.reaction_N))
  return reaction_N + (wind.edge_N_m * side.spacing_mm) / 1000
}

const tensionSum = (it: Forward): readonly Term[] => {
  const { offset_mm, mass_kg, lever_mm, wind_N } = it
  const offset: Term = {
    sign: '',
    value: offset_mm,
    unit: 'mm',
    says: words('from the bearing layer to the middle of the frame', 'von der tragenden Schicht zur Rahmenmitte'),
  } // prettier-ignore
  if (mass_kg === undefined) return [offset]
  const weight: Term = {
    sign: '',
    value: mostLoadedSupport_N(mass_kg),
    unit: 'N',
    says: words('half of the weight on one console', 'halbes Gewicht auf einer Konsole'),
  }
  const pull_N = weightTension_N(it)
  if (lever_mm === undefined || pull_N === undefined) return [offset, weight]
  const both_N = tension_N(it)
  return [
    weight,
    { sign: '×', value: factors.dead, unit: 'one', says: words('dead load', 'Eigenlast') },
    { ...offset, sign: '×' },
    { sign: '÷', value: lever_mm, unit: 'mm', says: words('lever of its screw', 'Hebelarm der Schraube') },
    { sign: '=', value: pull_N, unit: 'N', says: words('tension, without wind', 'Zug, ohne Wind') },
    ...(both_N === undefined || wind_N === undefined
      ? []
      : [
          { sign: '+', value: factors.wind * wind_N, unit: 'N', says: words('wind on it, design value', 'Wind darauf, Bemessungswert') } as const,
          { sign: '=', value: both_N, unit: 'N', says: words('tension with wind', 'Zug mit Wind') } as const,
        ]),
  ]
} // prettier-ignore
