import { kindOf } from '../../seals'
import { exactly } from '../../units'
import { type Words, words } from '../../words'
import type { Place } from '../place'
import { placed, type Reading } from '../reading'
import { hasValue } from '../readings/seals'
import { toldAmount } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { boundsOf } from '../told-rules'

type Worked = 'sealant' | 'bonded'

/** How a seal is worked: gunned, or bonded as a film; others are not asked. */
const workedAs = ({ seal }: Place): Worked | undefined => {
  if (!seal) return undefined
  if (hasValue(seal, 'sealant.depth') || hasValue(seal, 'fillet.mu')) return 'sealant'
  return kindOf(seal).values.some(it => it.id.endsWith('bond-wall')) ? 'bonded' : undefined
}
const worked: Reading<Worked> = placed({
  id: 'seal.worked',
  name: words('How the seal is worked', 'Verarbeitung der Dichtung'),
  compute: workedAs,
})

/** Sealants and membranes are worked neither too cold nor too hot. */
export const workTemperature = rule({
  id: 'work-temperature',
  about: 'part',
  title: words('Temperature of the work', 'Temperatur bei der Verarbeitung'),
  says: words(
    'Sealants are gunned between +5 and +40 °C, membranes bonded from +5 °C on.',
    'Dichtstoff wird zwischen +5 und +40 °C verarbeitet, Folien ab +5 °C verklebt.',
  ),
  why: words(
    'On a cold flank lies water that nobody sees; on a hot one the joint is as wide as it will ever be.',
    'Auf kalter Flanke liegt Wasser, das niemand sieht; bei Hitze steht die Fuge am Ende ihrer Bewegung.',
  ),
  reads: { work_C: toldAmount('opening.work-temperature', 'work_C'), worked },
  limit: 'work-temperature',
  band: [],
  applies: (at): true | Words =>
    workedAs(at) ? true : words('nothing is gunned or bonded here', 'hier wird nichts gespritzt oder verklebt'),
  ask: known => [{ given: { of: known.worked } }],
  compare: ({ work_C }, then) => ({ kind: 'amount', actual: exactly(work_C), required: boundsOf(then, 'C') }),
  sum: () => [],
  *remedies(_known, _then, at) {
    yield act(
      words('Wait for other weather, or tent and warm the opening', 'Anderes Wetter abwarten oder Öffnung einhausen und wärmen'),
      'opening.work-temperature',
      at.opening.id,
    )
  },
  examples: [
    {
      when: words('a bead at 12 °C', 'Dichtstoff bei 12 °C'),
      practice: 'AT',
      joint: { planned_mm: 15 },
      known: { work_C: 12, worked: 'sealant' },
      verdict: 'met',
    },
    {
      when: words('a membrane at 2 °C', 'eine Folie bei 2 °C'),
      practice: 'DE',
      joint: { planned_mm: 15 },
      known: { work_C: 2, worked: 'bonded' },
      verdict: 'not-met',
    },
    {
      when: words('a bead at 44 °C', 'Dichtstoff bei 44 °C'),
      practice: 'UK',
      joint: { planned_mm: 8 },
      known: { work_C: 44, worked: 'sealant' },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
