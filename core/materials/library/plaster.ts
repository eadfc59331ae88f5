import { cite } from '../../sources'
import { words } from '../../words'
import type { Material } from '../material'

/** Plaster and render. */
export const plaster: readonly Material[] = [
  {
    id: 'cement-render',
    name: words('cement render', 'Zementputz'),
    hatch: 'plaster',
    lambda_W_mK: 1.0,
    mu: { dry: 10, wet: 6 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'lime-cement-render',
    name: words('lime-cement render', 'Kalkzementputz'),
    hatch: 'plaster',
    lambda_W_mK: 1.0,
    mu: { dry: 35, wet: 15 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'gypsum-plaster',
    name: words('gypsum plaster', 'Gipsputz'),
    hatch: 'plaster',
    lambda_W_mK: 0.51,
    mu: { dry: 10, wet: 4 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
]
