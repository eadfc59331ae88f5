import { membersAt } from '../../detail'
import { bandOf } from '../../units'
import { words } from '../../words'
import { type Held, isOnBrackets, membersHeld } from '../readings/fixings'
import { act } from '../remedies/state'
import { rule } from '../rule'

/** Mullions and transoms have a fixing beside each of their ends. */
export const fixingAtMember = rule({
  id: 'fixing-at-member',
  about: 'side',
  title: words('Fixings beside mullions and transoms', 'Befestigung neben Pfosten und Riegeln'),
  says: words(
    'On either side of a mullion or transom a fixing stands within a band from it.',
    'Beiderseits eines Pfostens oder Riegels steht eine Befestigung in bestimmtem Abstand.',
  ),
  why: words(
    'The end of a mullion pushes on the frame with the wind of both panes; it is held where it pushes.',
    'Das Pfostenende drückt mit dem Wind beider Felder auf den Rahmen; gehalten wird es dort, wo es drückt.',
  ),
  reads: { held: membersHeld },
  limit: 'fixing-at-member',
  band: [],
  applies: at => {
    if (membersAt(at.opening, at.side).length === 0)
      return words('no mullion or transom ends here', 'hier endet kein Pfosten oder Riegel')
    return isOnBrackets(at)
      ? words('brackets stand here under what they carry', 'hier stehen Konsolen unter dem, was sie tragen')
      : true
  },
  ask: () => [{ given: {} }],
  compare: ({ held }, { from, least_mm, most_mm }) => {
    const [first = 0, ...more] = held.flatMap(it => distancesOf(it, from))
    return {
      kind: 'amount',
      actual: bandOf(first, ...more),
      required: { unit: 'mm', min: least_mm, ...(most_mm === undefined ? {} : { max: most_mm }) },
    }
  },
  sum: ({ held }, { from }) =>
    held.flatMap(it => distancesOf(it, from)).map(value => ({
      sign: '',
      value,
      unit: 'mm',
      says: from === 'edge' ? words('from its edge', 'ab seiner Kante') : words('from its axis', 'ab seiner Achse'),
    })),
  *remedies(_known, _then, at) {
    const [fixing] = at.opening.fixings
    if (!fixing) return
    yield act(
      words('Set a fixing on each side of the mullion', 'Beiderseits des Pfostens eine Befestigung setzen'),
      `fixing.count-${at.side}`,
      fixing.id,
    )
  },
  examples: [
    {
      when: words('115 mm from both edges of a transom', '115 mm ab beiden Kanten eines Riegels'),
      practice: 'DE',
      joint: { planned_mm: 25 },
      known: { held: [{ half_mm: 35, before_mm: 150, after_mm: 150 }] },
      verdict: 'met',
    },
    {
      when: words('nothing on one side for 400 mm', 'auf einer Seite auf 400 mm nichts'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { held: [{ half_mm: 35, before_mm: 150, after_mm: 400 }] },
      verdict: 'not-met',
    },
    {
      when: words('120 mm from the axis in Britain', '120 mm ab Achse in Großbritannien'),
      practice: 'UK',
      joint: { planned_mm: 5 },
      known: { held: [{ half_mm: 35, before_mm: 120, after_mm: 160 }] },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore

const distancesOf = (it: Held, from: 'edge' | 'axis'): readonly number[] =>
  [it.before_mm, it.after_mm].map(one => (from === 'edge' ? one - it.half_mm : one))
