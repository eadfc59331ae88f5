import { words } from '../../words'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** Where many windows are made tight, somebody has thought of fresh air. */
export const ventilation = wordRule({
  id: 'ventilation',
  word: toldWord('opening.replaced', 'replaced'),
  title: words('Ventilation after replacement', 'Lüftung nach dem Austausch'),
  says: words(
    'Where more than a third of the windows of a dwelling is replaced there is a ventilation concept.',
    'Wo mehr als ein Drittel der Fenster einer Wohnung ersetzt wird, gibt es ein Lüftungskonzept.',
  ),
  why: words(
    'Old windows aired the room through their gaps; behind tight ones the same life makes mould.',
    'Alte Fenster lüfteten durch ihre Ritzen; hinter dichten macht dasselbe Wohnen Schimmel.',
  ),
  cure: words('Have a ventilation concept made', 'Lüftungskonzept erstellen lassen'),
  applies: ({ opening }) =>
    opening.told?.replaced?.value !== 'new' || words('it is a new building', 'es ist ein Neubau'),
  examples: [
    [words('a few windows', 'einzelne Fenster'), 'DE', 'few', 'met'],
    [words('all windows, nothing thought of', 'alle Fenster, nichts bedacht'), 'DE', 'many', 'advice'],
    [words('nobody says how many', 'niemand sagt, wie viele'), 'DE', undefined, 'unknown'],
    [words('in Austria', 'in Österreich'), 'AT', 'many', 'refer'],
  ],
}) // prettier-ignore
