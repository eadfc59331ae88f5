import { cite } from '../../sources'
import { words } from '../../words'
import type { Material } from '../material'
import { vapourTight } from '../vapour-tight'

/** Glazing. */
export const glass: readonly Material[] = [
  {
    id: 'glass',
    name: words('soda-lime glass', 'Kalk-Natron-Glas'),
    hatch: 'glass',
    lambda_W_mK: 1.0,
    mu: vapourTight,
    emissivity: 0.837,
    cite: cite('en-iso-10077-2', 'published'),
  },
  {
    id: 'silica-gel',
    name: words('silica gel (desiccant)', 'Kieselgel (Trockenmittel)'),
    hatch: 'fill_gravel',
    lambda_W_mK: 0.13,
    mu: vapourTight,
    emissivity: 0.9,
    cite: cite('en-iso-10077-2', 'published'),
  },
  {
    id: 'glazing-gas',
    name: words('gas space of the glazing, 16 mm', 'Gaszwischenraum der Verglasung, 16 mm'),
    hatch: 'air_cavity',
    // Of a unit 4/16/4/16/4 with U_g = 0.6: (1/0.6 − 0.17 − 0.012) m²K/W over two spaces of 16 mm. A unit with another
    // U_g has another value. Own convention.
    lambda_W_mK: 0.0215,
    mu: vapourTight,
    emissivity: 0.9,
    cite: cite('convention', 'ours'),
  },
]
