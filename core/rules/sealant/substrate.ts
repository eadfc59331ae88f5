import { words } from '../../words'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** Seals are bonded to what is sound, clean and dry. */
export const soundSubstrate = wordRule({
  id: 'substrate',
  word: toldWord('opening.substrate', 'substrate'),
  title: words('Flanks sound, clean and dry', 'Flanken tragfähig, sauber und trocken'),
  says: words(
    'What seals are bonded to is sound, clean and dry, and primed where the data sheet asks for it.',
    'Worauf Dichtungen haften, ist tragfähig, sauber und trocken und vorbehandelt, wo das Datenblatt es verlangt.',
  ),
  why: words(
    'A seal holds no better than the dust under it.',
    'Eine Dichtung hält nicht besser als der Staub darunter.',
  ),
  cure: words(
    'Brush off, repair and prime the flanks, then test the bond',
    'Flanken abbürsten, ausbessern und vorbehandeln, dann die Haftung prüfen',
  ),
  examples: [
    [words('clean board with primer', 'saubere Platte mit Voranstrich'), 'AT', 'sound', 'met'],
    [words('old paint on brick', 'alter Anstrich auf Ziegel'), 'DE', 'doubtful', 'advice'],
    [words('sanding mortar', 'absandender Mörtel'), 'UK', 'unsound', 'not-met'],
  ],
})
