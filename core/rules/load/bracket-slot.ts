import { exactly } from '../../units'
import { words } from '../../words'
import { placed, type Reading } from '../reading'
import { toldAmount } from '../readings/told'
import { act } from '../remedies/state'
import { rule } from '../rule'
import { isTold } from '../told-rules'

/** How far the frame grows upwards: it stands on its blocks, so the head takes all of it. */
const grows: Reading<number> = placed({
  id: 'opening.grows',
  name: words('Growth of the frame at the head', 'Wachsen des Rahmens am Sturz'),
  compute: at => at.band.closes_mm,
})

/** The slot of a head bracket is long enough for the lintel and the frame. */
export const bracketSlot = rule({
  id: 'bracket-slot',
  about: 'opening',
  title: words('Slot of the head bracket', 'Langloch der Sturzkonsole'),
  says: words(
    'A bracket that holds the frame at the lintel slides as far as the lintel sags and the frame grows.',
    'Eine Konsole, die den Rahmen am Sturz hält, gleitet so weit, wie der Sturz absinkt und der Rahmen wächst.',
  ),
  why: words('At the end of its slot the bracket presses the lintel onto the frame.', 'Am Ende ihres Langlochs drückt die Konsole den Sturz auf den Rahmen.'),
  reads: { slot_mm: toldAmount('opening.slot', 'slot_mm'), sag_mm: toldAmount('opening.lintel-sag', 'lintel_mm'), grows },
  limit: 'bracket-slot',
  band: ['size', 'movement'],
  applies: at => isTold(at, 'slot_mm') || words('no slotted bracket is stated', 'keine Konsole mit Langloch ist genannt'),
  ask: () => [{ given: {} }],
  compare: ({ slot_mm, sag_mm, grows: growth_mm }) => ({
    kind: 'amount',
    actual: exactly(slot_mm),
    required: { unit: 'mm', min: sag_mm + growth_mm },
  }),
  sum: ({ sag_mm, grows: growth_mm }) => [
    { sign: '', value: sag_mm, unit: 'mm', says: words('sag of the lintel', 'Durchbiegung des Sturzes') },
    { sign: '+', value: growth_mm, unit: 'mm', says: words('the frame grows', 'der Rahmen wächst') },
    { sign: '=', value: sag_mm + growth_mm, unit: 'mm', says: words('travel that is needed', 'nötiger Weg') },
  ],
  *remedies(_known, _then, at) {
    yield act(words('Choose a bracket with a longer slot', 'Konsole mit längerem Langloch wählen'), 'opening.slot', at.opening.id)
  },
  examples: [
    {
      when: words('12 mm of travel, a sag of 8 mm', '12 mm Weg, 8 mm Durchbiegung'),
      practice: 'DE',
      joint: { planned_mm: 20 },
      known: { slot_mm: 12, sag_mm: 8, grows: 2.2 },
      verdict: 'met',
    },
    {
      when: words('6 mm of travel', '6 mm Weg'),
      practice: 'AT',
      joint: { planned_mm: 20 },
      known: { slot_mm: 6, sag_mm: 8, grows: 2.2 },
      verdict: 'not-met',
    },
  ],
}) // prettier-ignore
