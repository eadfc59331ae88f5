import { words } from '../../words'
import { hasMembrane } from '../readings/seals'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** Membranes are bonded dry and without frost. */
export const workDry = wordRule({
  id: 'work-dry',
  word: toldWord('opening.work-dry', 'workDry'),
  title: words('Bonded dry, without frost', 'Trocken und frostfrei verklebt'),
  says: words(
    'Membranes are bonded on flanks that are dry and free of frost.',
    'Folien werden auf trockenen und frostfreien Flanken verklebt.',
  ),
  why: words(
    'Adhesive on water or ice holds for a day and peels afterwards.',
    'Kleber auf Wasser oder Eis hält einen Tag und löst sich danach.',
  ),
  cure: words('Dry the flanks and bond again', 'Flanken trocknen und neu verkleben'),
  applies: hasMembrane,
  examples: [
    [words('dry', 'trocken'), 'AT', 'yes', 'met'],
    [words('in rain', 'im Regen'), 'DE', 'no', 'not-met'],
  ],
})
