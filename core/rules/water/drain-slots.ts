import { words } from '../../words'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** The drain slots of the frame stay free. */
export const drainSlots = wordRule({
  id: 'drain-slots',
  word: toldWord('opening.drains', 'drains'),
  title: words('Drain slots of the frame free', 'Entwässerung des Rahmens frei'),
  says: words(
    'No foam, sealant, sill or insulation closes the drain slots of the frame.',
    'Kein Schaum, Dichtstoff, Blech oder Dämmstoff verschließt die Entwässerung des Rahmens.',
  ),
  why: words(
    'Water in the rebate that cannot leave goes into the room or into the joint.',
    'Wasser im Falz, das nicht hinauskann, geht in den Raum oder in die Fuge.',
  ),
  cure: words('Cut the slots free and test them with water', 'Schlitze freischneiden und mit Wasser prüfen'),
  examples: [
    [words('free', 'frei gehalten'), 'AT', 'free', 'met'],
    [words('foamed over', 'überschäumt'), 'DE', 'closed', 'not-met'],
    [words('nobody has looked', 'niemand hat nachgesehen'), 'UK', undefined, 'unknown'],
  ],
})
