import { placedAt } from '../../detail'
import { exactly } from '../../units'
import { words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import {
  designForce_N,
  designSum,
  type Duty,
  engineer,
  guardCaution,
  isHeld,
  sideDuty,
  type SideLoad,
  sideLoad,
} from '../readings/loads'
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
  reads: { load: sideLoad, resistance_N: resistance, base: anchorBase, duty: sideDuty },
  limit: 'fixing-load',
  band: [],
  applies: isHeld,
  ask: () => [{ given: {} }],
  compare: ({ load, resistance_N, duty: { guard_N } }, { wind, isInFull }) => ({
    kind: 'amount',
    actual: exactly(designForce_N(wind * load.force.force_N, guard_N, isInFull)),
    required: { unit: 'N', max: resistance_N },
  }),
  sum: ({ load, duty: { guard_N } }, { wind, isInFull }) => designSum(load, { wind, guard_N, isInFull }),
  soFar: ({ load, duty: of }, { wind, isInFull }) => (load && of ? designSum(load, { wind, guard_N: of.guard_N, isInFull }) : []),
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

const cautionFor = (base: Base, { isForward, isGuard }: Duty): Caution | undefined => {
  if (isGuard) return guardCaution
  return isForward
    ? {
        to: engineer,
        handOver: [
          words(
            'assessment of the brackets for wall and offset',
            'Zulassung der Konsolen für Wand und Auskragung',
          ),
        ],
      }
    : weakBase(base)
}

/** A force on a fixing of an example. Functions and values that the examples above call. */
function aLoad(force_N: number): SideLoad {
  const element = { width_mm: 1000, height_mm: 1000, mullions_mm: [], transoms_mm: [] }
  const wind = { area_m2: 1, outside: -1.4, pressure_Pa: 1000, inside: 0, edge_N_m: 500, element }
  return { wind, force: { at_mm: 500, tributary_mm: 2 * force_N, reaction_N: 0, force_N } }
}
function plain(): Duty {
  return { guard_N: 0, isForward: false, isGuard: false }
}
