import { words } from '../../words'
import { hasTape } from '../readings/seals'
import { toldAmount } from '../readings/told'
import { amountRule } from '../told-rules'

/** The flanks that a tape lies between are parallel. */
export const flankAngle = amountRule({
  id: 'flank-angle',
  amount: toldAmount('opening.flank-angle', 'flank_deg'),
  unit: 'deg',
  title: words('Flanks parallel for the tape', 'Parallele Flanken für das Band'),
  says: words(
    'The flanks that a tape lies between are parallel within a few degrees.',
    'Die Flanken, zwischen denen ein Band liegt, sind auf wenige Grad parallel.',
  ),
  why: words(
    'Between slanted flanks a tape is pressed at one edge only, and rain runs past the other.',
    'Zwischen schrägen Flanken ist ein Band nur an einer Kante gepresst, an der anderen läuft Regen durch.',
  ),
  cure: words('Level the flank with mortar', 'Flanke mit Mörtel abgleichen'),
  applies: hasTape,
  examples: [
    [words('1°', '1 Grad'), 'DE', 1, 'met'],
    [words('4.5°', '4,5 Grad'), 'AT', 4.5, 'not-met'],
    [words('nobody has measured', 'niemand hat gemessen'), 'UK', undefined, 'unknown'],
  ],
})
