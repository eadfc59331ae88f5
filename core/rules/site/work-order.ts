import { words } from '../../words'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** The inner seal is closed before plaster comes. */
export const workOrder = wordRule({
  id: 'work-order',
  word: toldWord('opening.work-order', 'workOrder'),
  title: words('Inner seal before plaster', 'Innere Dichtung vor dem Putz'),
  says: words(
    'The frame is set, blocked and foamed, the inner seal is closed, and only then the reveal is plastered.',
    'Der Rahmen ist gesetzt, verklotzt und ausgeschäumt, die innere Dichtung geschlossen, erst dann wird verputzt.',
  ),
  why: words(
    'Behind plaster no seal can be bonded, and nobody can see whether there is one.',
    'Hinter dem Putz lässt sich keine Dichtung mehr kleben, und niemand sieht, ob eine da ist.',
  ),
  cure: words('Stop the plasterer until the seal is closed and looked at', 'Verputzen anhalten, bis die Dichtung geschlossen und geprüft ist'),
  applies: ({ wall }) =>
    wall.reveal.lining_mm.value > 0 || words('the reveal is not plastered', 'die Leibung wird nicht verputzt'),
  examples: [
    [words('the seal first', 'erst die Dichtung'), 'AT', 'seal-first', 'met'],
    [words('plaster first', 'erst der Putz'), 'DE', 'plaster-first', 'not-met'],
  ],
}) // prettier-ignore
