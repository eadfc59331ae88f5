import { words } from '../../words'
import { toldWord } from '../readings/told'
import { wordRule } from '../told-rules'

/** The airtight line goes on where the joint alone does not show it. */
export const airLine = wordRule({
  id: 'air-line',
  word: toldWord('opening.air-line', 'airLine'),
  title: words('Airtight line below the board', 'Luftdichte Linie unter der Innenbank'),
  says: words(
    'The airtight line is continuous below the inside board and through extension profiles, couplings and drilled holes.',
    'Die luftdichte Linie läuft unter der Innenbank und durch Verbreiterungen, Kopplungen und Bohrungen durch.',
  ),
  why: words(
    'Below the board nobody looks any more, and a base profile is hollow: cold air comes up there.',
    'Unter die Bank sieht niemand mehr, und ein Basisprofil ist hohl: Dort steigt kalte Luft auf.',
  ),
  cure: words(
    'Seal the base profile to frame and wall, and the wall below the board',
    'Basisprofil gegen Rahmen und Wand abdichten, ebenso die Wand unter der Bank',
  ),
  examples: [
    [words('continuous', 'durchgehend'), 'AT', 'continuous', 'met'],
    [words('a base profile open at its ends', 'ein Basisprofil mit offenen Enden'), 'DE', 'open', 'not-met'],
    [words('nobody says so', 'niemand sagt es'), 'DE', undefined, 'unknown'],
  ],
})
