import { cite } from '../../sources'
import { words } from '../../words'
import type { Material } from '../material'

/** Concrete and screed. */
export const concrete: readonly Material[] = [
  {
    id: 'concrete-2200',
    name: words('concrete, 2200 kg/m³', 'Beton, 2200 kg/m³'),
    hatch: 'concrete',
    lambda_W_mK: 1.65,
    mu: { dry: 120, wet: 70 },
    base: 'concrete',
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'concrete-2400',
    name: words('concrete, 2400 kg/m³', 'Beton, 2400 kg/m³'),
    hatch: 'concrete',
    lambda_W_mK: 2.0,
    mu: { dry: 130, wet: 80 },
    base: 'concrete',
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'reinforced-concrete',
    name: words('reinforced concrete, 1 % steel', 'Stahlbeton, 1 % Stahl'),
    hatch: 'concrete_rc',
    lambda_W_mK: 2.3,
    mu: { dry: 130, wet: 80 },
    base: 'concrete',
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'aerated-concrete-500',
    name: words('aerated concrete, 500 kg/m³', 'Porenbeton, 500 kg/m³'),
    hatch: 'aac',
    lambda_W_mK: 0.13,
    mu: { dry: 10, wet: 6 },
    base: 'aerated-concrete',
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'lightweight-block-1200',
    name: words('lightweight concrete block, 1200 kg/m³', 'Leichtbetonstein, 1200 kg/m³'),
    hatch: 'masonry_light',
    lambda_W_mK: 0.5,
    mu: { dry: 10, wet: 5 },
    base: 'lightweight-block',
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'screed',
    name: words('cement screed, 2000 kg/m³', 'Zementestrich, 2000 kg/m³'),
    hatch: 'screed',
    lambda_W_mK: 1.4,
    mu: { dry: 50, wet: 50 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
]
