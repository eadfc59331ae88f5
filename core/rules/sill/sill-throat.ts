import { words } from '../../words'
import { sillSizeRule } from './sill-size'

/** A sill has a groove below its edge that water drips from. */
export const sillThroat = sillSizeRule({
  id: 'sill-throat',
  field: 'sill.throat',
  of: it => it.throat_mm,
  title: words('Drip groove of the sill', 'Abtropfnut der Fensterbank'),
  says: words(
    'The groove below the front edge lies clear of the wall.',
    'Die Nut unter der Vorderkante liegt frei vor der Wand.',
  ),
  why: words(
    'Without it water creeps back along the underside.',
    'Ohne sie kriecht Wasser an der Unterseite zurück.',
  ),
  examples: [
    [words('10 mm clear', '10 mm frei'), 'UK', 10, 'met'],
    [words('5 mm clear', '5 mm frei'), 'UK', 5, 'not-met'],
  ],
})
