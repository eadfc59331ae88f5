import { words } from '../../words'
import { hasTape } from '../readings/seals'
import { toldAmount } from '../readings/told'
import { amountRule } from '../told-rules'

/** A tape is cut a little longer than its run. */
export const tapeOverlength = amountRule({
  id: 'tape-overlength',
  amount: toldAmount('opening.tape-overlength', 'overlength_pct'),
  unit: 'pct',
  title: words('Overlength of the tape', 'Überlänge des Bands'),
  says: words(
    'A tape is cut at least one per cent longer than its run, and the surplus stays at its end.',
    'Ein Band wird mindestens ein Prozent länger geschnitten als seine Strecke, der Rest bleibt am Ende stehen.',
  ),
  why: words('A tape cut to length draws back at its butts.', 'Ein auf Maß geschnittenes Band zieht sich an den Stößen zurück.'),
  cure: words('Set the tape anew, a little longer', 'Band neu setzen, etwas länger'),
  applies: hasTape,
  examples: [
    [words('one per cent', 'ein Prozent'), 'DE', 1, 'met'],
    [words('cut to length', 'auf Maß geschnitten'), 'AT', 0, 'advice'],
  ],
}) // prettier-ignore
