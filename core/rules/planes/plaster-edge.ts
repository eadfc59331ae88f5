import { type Words, words } from '../../words'
import type { Place } from '../place'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** Plaster does not run hard against the frame. */
export const plasterEdge = wordRule({
  id: 'plaster-edge',
  word: toldWord('opening.plaster-edge', 'plasterEdge'),
  title: words('Plaster kept off the frame', 'Putz vom Rahmen getrennt'),
  says: words(
    'Plaster and render end at a bead, at a cut or on a membrane, never hard against the frame.',
    'Putz endet an einem Profil, einem Schnitt oder auf einer Folie, nie hart am Rahmen.',
  ),
  why: words(
    'The frame moves and the plaster does not: a crack opens, and air goes through it.',
    'Der Rahmen bewegt sich, der Putz nicht: Ein Riss öffnet sich, und Luft geht hindurch.',
  ),
  cure: words('Cut the plaster free and seal the cut', 'Putz trennen und den Schnitt abdichten'),
  applies: at => plastered(at),
  examples: [
    [words('ends at a bead', 'endet an einem Profil'), 'DE', 'bead', 'met'],
    [words('hard against the frame', 'hart am Rahmen'), 'AT', 'hard', 'not-met'],
    [words('the same in Britain', 'dasselbe in Großbritannien'), 'UK', 'hard', 'advice'],
  ],
})

const plastered = ({ wall }: Place): true | Words =>
  wall.reveal.lining_mm.value > 0 || words('the reveal is not plastered', 'die Leibung wird nicht verputzt')
