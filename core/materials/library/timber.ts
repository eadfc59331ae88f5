import { cite } from '../../sources'
import { words } from '../../words'
import type { Material } from '../material'

/** Timber and boards. */
export const timber: readonly Material[] = [
  {
    id: 'softwood',
    name: words('softwood, 500 kg/m³', 'Nadelholz, 500 kg/m³'),
    hatch: 'timber_cross',
    lambda_W_mK: 0.13,
    mu: { dry: 50, wet: 20 },
    base: 'timber',
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'hardwood',
    name: words('hardwood, 700 kg/m³', 'Laubholz, 700 kg/m³'),
    hatch: 'timber_cross',
    lambda_W_mK: 0.18,
    mu: { dry: 200, wet: 50 },
    base: 'timber',
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'plywood',
    name: words('plywood, 500 kg/m³', 'Sperrholz, 500 kg/m³'),
    hatch: 'wood_panel',
    lambda_W_mK: 0.13,
    mu: { dry: 200, wet: 70 },
    firm: true,
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'osb',
    name: words('OSB, 650 kg/m³', 'OSB, 650 kg/m³'),
    hatch: 'wood_panel',
    lambda_W_mK: 0.13,
    mu: { dry: 50, wet: 30 },
    firm: true,
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'gypsum-board',
    name: words('gypsum board', 'Gipskartonplatte'),
    hatch: 'plaster',
    lambda_W_mK: 0.25,
    mu: { dry: 10, wet: 4 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
]
