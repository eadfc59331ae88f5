import { words } from '../../words'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** Inner and outer plane go round the corners and past everything that pierces them. */
export const planesMeet = wordRule({
  id: 'planes-meet',
  word: toldWord('opening.corners', 'corners'),
  title: words('Planes meet at the corners', 'Ebenen treffen sich an den Ecken'),
  says: words(
    'Inner and outer plane are closed at all four corners and round consoles, lugs and pipes.',
    'Innere und äußere Ebene sind an allen vier Ecken und um Konsolen, Laschen und Leitungen geschlossen.',
  ),
  why: words(
    'Four closed sides leak at an open corner: air and rain look for it.',
    'Vier geschlossene Seiten sind an einer offenen Ecke undicht: Luft und Regen finden sie.',
  ),
  cure: words(
    'Close the planes at corners and penetrations with lapped pieces',
    'Ebenen an Ecken und Durchdringungen mit überlappenden Stücken schließen',
  ),
  examples: [
    [words('corners closed', 'Ecken geschlossen'), 'DE', 'closed', 'met'],
    [words('jamb and sill do not meet', 'Leibung und Bank treffen sich nicht'), 'AT', 'open', 'not-met'],
    [words('nobody says so', 'niemand sagt es'), 'UK', undefined, 'unknown'],
  ],
})
