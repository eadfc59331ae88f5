import { profileOf, placedAt, sideFixings } from '../../detail'
import { combined, factors } from '../../load'
import type { Term } from '../../movement'
import { exactly } from '../../units'
import { words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { guardOn, type SideLoad, sideLoad, sideLoadSum } from '../readings/loads'
import { anchorBase, type Base, weakBase } from '../readings/wall'
import { act } from '../remedies/state'
import { rule } from '../rule'
import type { Caution } from '../rule-shape'

/** Assessed resistance of the weakest fixing of the side; it never falls back. */
const resistance: Reading<number> = placed({
  id: 'fixing.resistance',
  name: words('Assessed resistance of one fixing', 'Zugelassener Widerstand je Befestigung'),
  compute: at => {
    const all = ofSide(at).map(it => it.resistance_N?.value)
    const known = all.flatMap(it => it ?? [])
    return known.length === all.length && known.length > 0 ? Math.min(...known) : undefined
  },
  beneath: at => ofSide(at).map(it => ({ field: 'fixing.resistance', part: it.id, stated: it.resistance_N })),
})

const ofSide = (at: Place) => placedAt(at.opening, at.side)

/** What of the duty of the element counts: a guard on the jamb, a frame before the wall. */
type Duty = { readonly guard_N: number; readonly isForward: boolean; readonly isGuard: boolean }
const duty: Reading<Duty> = placed({
  id: 'opening.duty',
  name: words('Guard, and place before the wall', 'Absturzsicherung und Lage vor der Wand'),
  compute: at => ({
    guard_N:
      factors.guard *
      guardOn(at, sideFixings(at.opening, at.side, profileOf(at.frame).face_mm)?.axes_mm ?? []),
    isForward: at.opening.position_mm.value < 0,
    isGuard: at.opening.asked?.guarding?.value === 'yes',
  }),
})

/** The most loaded fixing of a side bears its wind, and a guard with it. */
export const fixingLoad = rule({
  id: 'fixing-load',
  about: 'side',
  title: words('Force on a fixing', 'Kraft auf eine Befestigung'),
  says: words(
    'The most loaded fixing of each side bears wind by its share of the edge, what mullions bring to it, and a guard.',
    'Die höchstbelastete Befestigung jeder Seite trägt ihren Anteil am Wind, was Pfosten dorthin bringen, und eine Umwehrung.',
  ),
  why: words(
    'Spacing tables know usual windows in usual walls. A tall window in a weak wall pulls its screws out.',
    'Abstandstabellen kennen übliche Fenster in üblichen Wänden. Ein hohes Fenster in schwacher Wand zieht seine Schrauben heraus.',
  ),
  reads: { load: sideLoad, resistance_N: resistance, base: anchorBase, duty },
  limit: 'fixing-load',
  band: [],
  applies: () => true,
  ask: () => [{ given: {} }],
  compare: ({ load, resistance_N, duty: { guard_N } }, { wind, isInFull }) => ({
    kind: 'amount',
    actual: exactly(designForce_N(wind * load.force.force_N, guard_N, isInFull)),
    required: { unit: 'N', max: resistance_N },
  }),
  sum: ({ load, duty: { guard_N } }, { wind, isInFull }) => sumOf(load, wind, guard_N, isInFull),
  soFar: ({ load, duty: of }, { wind, isInFull }) => (load && of ? sumOf(load, wind, of.guard_N, isInFull) : []),
  *remedies(_known, _then, at) {
    yield act(
      words('Set more fixings, or brackets of a higher resistance', 'Mehr Befestigungen setzen oder Konsolen mit höherem Widerstand'),
      'fixing.resistance',
      ofSide(at)[0]?.id ?? at.opening.id,
    )
  },
  caution: ({ base, duty: of }) => cautionFor(base, of),
  examples: [
    {
      when: words('384 N on screws of 600 N in concrete', '384 N auf Schrauben von 600 N in Beton'),
      practice: 'DE',
      joint: { planned_mm: 12 },
      known: { load: aLoad(256), resistance_N: 600, base: { base: 'concrete', isKnown: true }, duty: plain() },
      verdict: 'met',
    },
    {
      when: words('the same on plugs of 300 N', 'dasselbe auf Dübeln von 300 N'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { load: aLoad(256), resistance_N: 300, base: { base: 'concrete', isKnown: true }, duty: plain() },
      verdict: 'not-met',
    },
    {
      when: words('enough in aerated concrete', 'ausreichend in Porenbeton'),
      practice: 'DE',
      joint: { planned_mm: 25 },
      known: { load: aLoad(256), resistance_N: 600, base: { base: 'aerated-concrete', isKnown: true }, duty: plain() },
      verdict: 'refer',
    },
    {
      when: words('wind and guard in full are too much, one after the other they are not', 'Wind und Holm zugleich sind zu viel, nacheinander nicht'),
      practice: 'DE',
      joint: { planned_mm: 25 },
      known: { load: aLoad(385), resistance_N: 780, base: { base: 'concrete', isKnown: true }, duty: { ...plain(), guard_N: 234, isGuard: true } },
      verdict: 'not-met',
    },
    {
      when: words('nobody knows what the screw holds', 'niemand weiß, was die Schraube hält'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { load: aLoad(256), base: { base: 'solid-brick', isKnown: true }, duty: plain() },
      verdict: 'unknown',
    },
  ],
}) // prettier-ignore

/** What governs of wind and guard: by EN 1990 the worse of both leads, or both in full where the practice asks so. */
const designForce_N = (wind_N: number, guard_N: number, isInFull: boolean): number => {
  const { guardLeads, windLeads, inFull } = combined(wind_N, guard_N)
  return isInFull ? inFull : Math.max(guardLeads, windLeads)
}

const sumOf = (load: SideLoad, wind: number, guard_N: number, isInFull: boolean): readonly Term[] => {
  const sum = sideLoadSum(load, wind)
  if (guard_N === 0) return sum
  const { guardLeads, windLeads, inFull } = combined(wind * load.force.force_N, guard_N)
  return [
    ...sum,
    { sign: '', value: guard_N, unit: 'N', says: words('guard on the nearer fixing, design value', 'Holm auf der näheren Befestigung, Bemessungswert') },
    { sign: '', value: guardLeads, unit: 'N', says: words('guard leads, wind with it', 'Holm führt, Wind dazu') },
    { sign: '', value: windLeads, unit: 'N', says: words('wind leads, guard with it', 'Wind führt, Holm dazu') },
    { sign: '', value: inFull, unit: 'N', says: isInFull ? words('both in full, which is asked here', 'beide voll, was hier verlangt ist') : words('both in full', 'beide voll') },
  ]
} // prettier-ignore

const cautionFor = (base: Base, { isForward, isGuard }: Duty): Caution | undefined => {
  if (isGuard) return { to: engineer, handOver: [words('proof of the fixing for guarding', 'Nachweis der Befestigung für die Absturzsicherung')] }
  if (isForward) return { to: engineer, handOver: [words('assessment of the brackets for wall and offset', 'Zulassung der Konsolen für Wand und Auskragung')] }
  return weakBase(base)
} // prettier-ignore
const engineer = words('a structural engineer', 'eine Tragwerksplanerin, ein Tragwerksplaner')

/** A force on a fixing of an example. Functions and values that the examples above call. */
function aLoad(force_N: number): SideLoad {
  const element = { width_mm: 1000, height_mm: 1000, mullions_mm: [], transoms_mm: [] }
  const wind = { area_m2: 1, outside: -1.4, pressure_Pa: 1000, inside: 0, edge_N_m: 500, element }
  return { wind, force: { at_mm: 500, tributary_mm: 2 * force_N, reaction_N: 0, force_N } }
}
function plain(): Duty {
  return { guard_N: 0, isForward: false, isGuard: false }
}
