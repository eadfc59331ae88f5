import { words } from '../../words'
import { sillSizeRule } from './sill-size'

/** A sill throws water clear of the wall. */
export const sillOverhang = sillSizeRule({
  id: 'sill-overhang',
  field: 'sill.overhang',
  of: it => it.overhang_mm,
  title: words('Overhang of the sill', 'Überstand der Fensterbank'),
  says: words(
    'The drip edge stands out from the finished face of the wall.',
    'Die Tropfkante steht über die fertige Wandfläche vor.',
  ),
  why: words(
    'Water that drips along the wall soils it and soaks its upper edge.',
    'Wasser, das an der Wand abläuft, verschmutzt sie und durchfeuchtet ihre Oberkante.',
  ),
  examples: [
    [words('40 mm', '40 mm Überstand'), 'DE', 40, 'met'],
    [words('25 mm in Austria', '25 mm in Österreich'), 'AT', 25, 'advice'],
    [words('20 mm in Britain', '20 mm in Großbritannien'), 'UK', 20, 'not-met'],
  ],
})
