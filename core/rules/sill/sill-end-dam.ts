import { words } from '../../words'
import { sillSizeRule } from './sill-size'

/** A sill is turned up at its ends. */
export const sillEndDam = sillSizeRule({
  id: 'sill-end-dam',
  field: 'sill.end-dam',
  of: it => it.endDam_mm,
  title: words('End dams of the sill', 'Seitliche Aufkantung der Fensterbank'),
  says: words('The sill is turned up at both ends.', 'Die Fensterbank ist an beiden Enden aufgekantet.'),
  why: words(
    'Without an upstand wind drives water off the end and into the reveal.',
    'Ohne Aufkantung treibt Wind das Wasser am Ende in die Leibung.',
  ),
  examples: [
    [words('20 mm', '20 mm hoch'), 'DE', 20, 'met'],
    [words('12 mm', '12 mm hoch'), 'AT', 12, 'not-met'],
    [words('16 mm', '16 mm hoch'), 'UK', 16, 'advice'],
  ],
})
