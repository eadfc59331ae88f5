import { words } from '../../words'
import { hasTape } from '../readings/seals'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** The flanks that a tape lies between are smooth. */
export const flankFace = wordRule({
  id: 'flank-face',
  word: toldWord('opening.flank-face', 'flankFace'),
  title: words('Flanks smooth for the tape', 'Glatte Flanken für das Band'),
  says: words(
    'The flanks that a tape lies between are smooth, their mortar joints flush.',
    'Die Flanken, zwischen denen ein Band liegt, sind glatt, ihre Mörtelfugen bündig.',
  ),
  why: words('Each open mortar joint is a gutter under the tape.', 'Jede offene Mörtelfuge ist eine Rinne unter dem Band.'),
  cure: words('Fill the mortar joints flush', 'Mörtelfugen bündig verfüllen'),
  applies: hasTape,
  examples: [
    [words('levelled mortar', 'abgeglichener Mörtel'), 'DE', 'flush', 'met'],
    [words('raked pointing', 'ausgekratzte Fugen'), 'DE', 'raked', 'not-met'],
  ],
}) // prettier-ignore
