import { placedAt } from '../../detail'
import { bendingResistance_N, factors, lever_mm, momentOf } from '../../load'
import { exactly } from '../../units'
import { type Words, words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import {
  designForce_N,
  designSum,
  type Duty,
  guardCaution,
  isHeld,
  sideDuty,
  type SideLoad,
  sideLoad,
} from '../readings/loads'
import { anchorBase, type Base } from '../readings/wall'
import { lookUp } from '../../practice'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** Screws and plugs bend across a joint; brackets are assessed as a whole, lugs give. */
const screws = (at: Place) =>
  placedAt(at.opening, at.side).filter(it => it.kind === 'frame-screw' || it.kind === 'frame-plug')

type Steel = { readonly core_mm: number; readonly steel_N_mm2: number }
const steel: Reading<Steel> = placed({
  id: 'fixing.core',
  name: words('Core and steel of the screw', 'Kern und Stahl der Schraube'),
  compute: at => {
    const [first] = screws(at)
    return first?.core_mm && first.steel_N_mm2
      ? { core_mm: first.core_mm.value, steel_N_mm2: first.steel_N_mm2.value }
      : undefined
  },
  beneath: at =>
    screws(at).slice(0, 1).flatMap(it => [
      { field: 'fixing.core', part: it.id, stated: it.core_mm },
      { field: 'fixing.steel', part: it.id, stated: it.steel_N_mm2 },
    ]),
}) // prettier-ignore

/** The factor on wind that this practice asks for, and whether a guard counts with it in full. */
type Factor = { readonly wind: number; readonly isInFull: boolean }
const factor: Reading<Factor> = placed<Factor>({
  id: 'opening.wind-factor',
  name: words('Factor on wind', 'Teilsicherheitsbeiwert Wind'),
  compute: at => lookUp(at.practice, 'fixing-load', {})?.then ?? { wind: factors.wind, isInFull: false },
})

/** How deep the screw is free within what holds it, in diameters: half of one in concrete, one in masonry (ETAG 001, annex C; masonry ours). */
const heldIn = ({ base }: Base): number => (base === 'concrete' ? 0.5 : 1)

/** A screw bears the wind across the widest joint, bending. */
export const fixingBending = rule({
  id: 'fixing-bending',
  about: 'side',
  title: words('Screw bending across the joint', 'Schraube auf Biegung in der Fuge'),
  says: words(
    'A screw that spans the joint bears the wind by bending, free to turn at the frame; it is free over no more than 30 mm.',
    'Eine Schraube, die die Fuge überspannt, trägt den Wind auf Biegung, am Rahmen frei drehbar, und liegt höchstens 30 mm frei.',
  ),
  why: words(
    'In a wide joint the screw is a cantilever: it yields before its plug does, and the frame works loose.',
    'In breiter Fuge ist die Schraube ein Kragarm: Sie gibt nach, bevor der Dübel nachgibt, und der Rahmen lockert sich.',
  ),
  reads: { load: sideLoad, steel, base: anchorBase, factor, duty: sideDuty },
  limit: 'fixing-bending',
  band: ['still', 'size', 'movement'],
  applies: (at): true | Words => {
    const held = isHeld(at)
    if (held !== true) return held
    return screws(at).length > 0 || placedAt(at.opening, at.side).length === 0
      ? true
      : words('no screw spans the joint here', 'hier überspannt keine Schraube die Fuge')
  },
  ask: () => [{ given: { of: 'bending' }, state: 'widest' }, { given: { of: 'length' }, state: 'widest' }],
  compare: (known, { restraint = 1, most_mm = Infinity }, { given }, { moving_mm }) =>
    given.of === 'length'
      ? { kind: 'amount', actual: exactly(moving_mm.max), required: { unit: 'mm', max: most_mm } }
      : {
          kind: 'amount',
          actual: exactly(designForce_N(known.factor.wind * known.load.force.force_N, known.duty.guard_N, known.factor.isInFull)),
          required: { unit: 'N', max: bendingResistance_N(bent(known, moving_mm.max), restraint) },
        },
  sum: (known, _then, _asked, { moving_mm }) => {
    const it = bent(known, moving_mm.max)
    return [
      ...designSum(known.load, { ...known.factor, guard_N: known.duty.guard_N }),
      { sign: '', value: momentOf(it) / 1000, unit: 'Nm', says: words('moment that the core bears', 'Moment, das der Kern trägt') },
      { sign: '÷', value: lever_mm(it), unit: 'mm', says: words('widest joint and its hold in the wall', 'breiteste Fuge und Einspannung in der Wand') },
      { sign: '=', value: bendingResistance_N(it, 1), unit: 'N', says: words('free to turn at the frame', 'am Rahmen frei drehbar') },
      { sign: '', value: bendingResistance_N(it, 2), unit: 'N', says: words('held at both ends, if proven', 'beidseitig eingespannt, wenn nachgewiesen') },
    ]
  },
  soFar: ({ load, factor: of, duty }) => (load && of && duty ? designSum(load, { ...of, guard_N: duty.guard_N }) : []),
  caution: ({ duty }) => (duty.isGuard ? guardCaution : undefined),
  *remedies(_known, _then, at) {
    yield act(
      words('Set more fixings, pack the joint beside them, or hold the frame by brackets', 'Mehr Befestigungen setzen, daneben hinterlegen oder mit Konsolen halten'),
      `fixing.count-${at.side}`,
      screws(at)[0]?.id ?? at.opening.id,
    )
  },
  examples: [
    {
      when: words('384 N across 15.7 mm in sand-lime brick', '384 N über 15,7 mm in Kalksandstein'),
      practice: 'DE',
      joint: { planned_mm: 13, tolerance_mm: 1, moves_mm: 1.68 },
      known: { load: aLoad(256), steel: usual(), base: { base: 'sand-lime', isKnown: true }, factor: usualFactor(), duty: plain() },
      verdict: 'met',
    },
    {
      when: words('759 N across 17.2 mm: only if it is held at both ends', '759 N über 17,2 mm: nur beidseitig eingespannt'),
      practice: 'DE',
      joint: { planned_mm: 14, tolerance_mm: 1, moves_mm: 2.16 },
      known: { load: aLoad(506), steel: usual(), base: { base: 'sand-lime', isKnown: true }, factor: usualFactor(), duty: plain() },
      verdict: 'advice',
    },
    {
      when: words('1695 N across 17.9 mm', '1695 N über 17,9 mm'),
      practice: 'AT',
      joint: { planned_mm: 15, tolerance_mm: 1, moves_mm: 1.92 },
      known: { load: aLoad(1130), steel: usual(), base: { base: 'perforated-brick', isKnown: true }, factor: usualFactor(), duty: plain() },
      verdict: 'not-met',
    },
    {
      when: words('little force, but 36 mm of free screw', 'wenig Kraft, aber 36 mm freie Schraube'),
      practice: 'UK',
      joint: { planned_mm: 34, moves_mm: 2 },
      known: { load: aLoad(60), steel: usual(), base: { base: 'solid-brick', isKnown: true }, factor: usualFactor(), duty: plain() },
      verdict: 'advice',
    },
  ],
}) // prettier-ignore

const bent = (known: { readonly steel: Steel; readonly base: Base }, joint_mm: number) => ({
  ...known.steel,
  joint_mm,
  held: heldIn(known.base),
})

/** A screw and a force of an example. Functions, because the examples above call them. */
function usual(): Steel {
  return { core_mm: 5.5, steel_N_mm2: 600 }
}
function usualFactor(): Factor {
  return { wind: 1.5, isInFull: false }
}
function plain(): Duty {
  return { guard_N: 0, isForward: false, isGuard: false }
}
function aLoad(force_N: number): SideLoad {
  const element = { width_mm: 1000, height_mm: 1000, mullions_mm: [], transoms_mm: [] }
  const wind = { area_m2: 1, outside: -1.4, pressure_Pa: 1000, inside: 0, edge_N_m: 500, element }
  return { wind, force: { at_mm: 500, tributary_mm: 2 * force_N, reaction_N: 0, force_N } }
}
