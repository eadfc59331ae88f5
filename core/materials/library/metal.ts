import { cite } from '../../sources'
import { words } from '../../words'
import type { Material } from '../material'
import { vapourTight } from '../vapour-tight'

/** Metals. Emissivity of untreated surfaces. */
export const metal: readonly Material[] = [
  {
    id: 'aluminium',
    name: words('aluminium alloy', 'Aluminiumlegierung'),
    hatch: 'aluminium',
    lambda_W_mK: 160,
    mu: vapourTight,
    firm: true,
    emissivity: 0.3,
    cite: cite('en-iso-10077-2', 'published'),
  },
  {
    id: 'steel',
    name: words('steel', 'Stahl'),
    hatch: 'steel',
    lambda_W_mK: 50,
    mu: vapourTight,
    firm: true,
    emissivity: 0.3,
    cite: cite('en-iso-10077-2', 'published'),
  },
  {
    id: 'stainless-steel',
    name: words('stainless steel', 'nichtrostender Stahl'),
    hatch: 'steel',
    lambda_W_mK: 17,
    mu: vapourTight,
    firm: true,
    emissivity: 0.3,
    cite: cite('en-iso-10077-2', 'published'),
  },
]
