import { cite } from '../../sources'
import { words } from '../../words'
import type { Material } from '../material'

/**
 * Layers of air in a wall. A section takes them as air and no solid: their resistance follows from their thickness
 * and how they are ventilated, the conductivity here is that of air at rest.
 */
export const air: readonly Material[] = [
  {
    id: 'air-still',
    name: words('air, unventilated', 'Luftschicht, ruhend'),
    hatch: 'air_cavity',
    lambda_W_mK: 0.025,
    mu: { dry: 1, wet: 1 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'air-ventilated',
    name: words('air, ventilated', 'Luftschicht, hinterlüftet'),
    hatch: 'air_cavity',
    lambda_W_mK: 0.025,
    mu: { dry: 1, wet: 1 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
]
