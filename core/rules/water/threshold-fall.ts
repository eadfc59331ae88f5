import { words } from '../../words'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'
import { hasThreshold } from './threshold-upstand'

/** The surface outside a door falls away from it. */
export const thresholdFall = wordRule({
  id: 'threshold-fall',
  about: 'surface',
  word: toldWord('opening.threshold-fall', 'thresholdFall'),
  title: words('Fall outside the door', 'Gefälle vor der Tür'),
  says: words('The finished surface falls away from the threshold.', 'Der fertige Belag fällt von der Schwelle weg.'),
  why: words('Water that runs to the door stands against its lowest joint.', 'Wasser, das zur Tür läuft, steht an ihrer tiefsten Fuge.'),
  cure: words('Lay the surface with a fall away from the door', 'Belag mit Gefälle von der Tür weg verlegen'),
  applies: hasThreshold,
  examples: [
    [words('a fall away', 'Gefälle weg'), 'DE', 'away', 'met'],
    [words('towards the door', 'zur Tür hin'), 'AT', 'towards', 'not-met'],
  ],
}) // prettier-ignore
