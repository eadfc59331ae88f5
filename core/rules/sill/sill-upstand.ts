import { words } from '../../words'
import { hasMetalSill } from '../readings/sill'
import { sillSizeRule } from './sill-size'

/** A metal sill is turned up against the frame. */
export const sillUpstand = sillSizeRule({
  id: 'sill-upstand',
  field: 'sill.upstand',
  of: it => it.upstand_mm,
  title: words('Upstand of the sill at the frame', 'Hintere Aufkantung der Fensterbank'),
  says: words(
    'A metal sill is turned up against the frame and fixed there.',
    'Eine Metallfensterbank ist am Rahmen aufgekantet und dort befestigt.',
  ),
  why: words(
    'Wind drives the water on a sill towards the frame. Without an upstand it runs under the frame into the joint.',
    'Wind treibt das Wasser auf der Fensterbank zum Rahmen. Ohne Aufkantung läuft es unter dem Rahmen in die Fuge.',
  ),
  applies: hasMetalSill,
  examples: [
    [words('25 mm', '25 mm hoch'), 'DE', 25, 'met'],
    [words('no upstand', 'keine Aufkantung'), 'AT', 0, 'not-met'],
    [words('16 mm', '16 mm hoch'), 'UK', 16, 'advice'],
  ],
})
