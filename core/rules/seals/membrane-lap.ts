import { words } from '../../words'
import { toldAmount } from '../readings/told'
import { amountRule } from '../told-rules'
import { hasMembrane } from '../readings/seals'

/** Membranes lap on themselves and at corners. */
export const membraneLap = amountRule({
  id: 'membrane-lap',
  amount: toldAmount('opening.membrane-lap', 'lap_mm'),
  unit: 'mm',
  title: words('Lap of membranes', 'Überlappung der Folien'),
  says: words(
    'Where a membrane meets itself or a corner piece it laps by a least width.',
    'Wo eine Folie auf sich selbst oder ein Eckstück trifft, überlappt sie um ein Mindestmaß.',
  ),
  why: words(
    'A short lap opens with the first pull of the plasterer.',
    'Eine kurze Überlappung öffnet sich beim ersten Zug.',
  ),
  cure: words('Set pieces that lap enough', 'Ausreichend überlappende Stücke setzen'),
  applies: hasMembrane,
  examples: [
    [words('50 mm', '50 mm Überlappung'), 'AT', 50, 'met'],
    [words('30 mm', '30 mm Überlappung'), 'DE', 30, 'not-met'],
  ],
})
