import { words } from '../../words'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** Laps of the rain layer shed water. */
export const rainLaps = wordRule({
  id: 'rain-laps',
  word: toldWord('opening.laps', 'laps'),
  title: words('Laps that shed water', 'Überlappungen mit dem Wasser'),
  says: words(
    'Membranes, trays and damp courses lap like shingles: jamb over sill, head over jamb.',
    'Folien, Wannen und Sperrbahnen überlappen wie Schindeln: Leibung über Bank, Sturz über Leibung.',
  ),
  why: words('A lap that faces uphill leads water behind the layer.', 'Eine Überlappung gegen das Wasser leitet es hinter die Schicht.'),
  cure: words('Lay the layer anew from below', 'Schicht von unten her neu verlegen'),
  examples: [
    [words('jamb over sill', 'Leibung über Bank'), 'AT', 'shed', 'met'],
    [words('jamb under sill', 'Leibung unter der Bank'), 'UK', 'against', 'not-met'],
  ],
}) // prettier-ignore
