import { words } from '../../words'
import { hasTape } from '../readings/seals'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** A tape is cut and butted at corners. */
export const tapeCorners = wordRule({
  id: 'tape-corners',
  word: toldWord('opening.tape-corners', 'tapeCorners'),
  title: words('Tape butted at corners', 'Band an Ecken gestoßen'),
  says: words(
    'At corners a tape is cut and butted, neither turned round nor stretched.',
    'An Ecken wird ein Band geschnitten und gestoßen, weder umgelenkt noch gedehnt.',
  ),
  why: words(
    'Turned round a corner it lifts off inside it; stretched it shrinks back and leaves a gap.',
    'Umgelenkt hebt es sich in der Ecke ab, gedehnt zieht es sich zurück und lässt eine Lücke.',
  ),
  cure: words('Cut the tape at the corner and set it anew', 'Band an der Ecke schneiden und neu setzen'),
  applies: hasTape,
  examples: [
    [words('butted', 'gestoßen'), 'AT', 'butted', 'met'],
    [words('turned round the corner', 'um die Ecke gelenkt'), 'DE', 'turned', 'not-met'],
  ],
})
