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
]
