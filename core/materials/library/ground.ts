import { cite } from '../../sources'
import { words } from '../../words'
import type { Material } from '../material'

/** Ground, and what is laid on it before a door. */
export const ground: readonly Material[] = [
  {
    id: 'soil',
    name: words('soil, sand or gravel', 'Boden, Sand oder Kies'),
    hatch: 'soil',
    lambda_W_mK: 2.0,
    mu: { dry: 50, wet: 50 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'gravel',
    name: words('gravel bed', 'Kiesbett'),
    hatch: 'fill_gravel',
    lambda_W_mK: 2.0,
    mu: { dry: 50, wet: 50 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'ceramic-tile',
    name: words('ceramic tile', 'keramische Fliese'),
    hatch: 'stone',
    lambda_W_mK: 1.3,
    mu: { dry: 200_000, wet: 200_000 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
]
