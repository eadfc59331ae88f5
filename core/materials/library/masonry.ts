import { cite } from '../../sources'
import { words } from '../../words'
import type { Material } from '../material'

/** Bricks, blocks and stone, laid in mortar. */
export const masonry: readonly Material[] = [
  {
    id: 'clay-brick-1800',
    name: words('solid clay brick, 1800 kg/m³', 'Vollziegel, 1800 kg/m³'),
    hatch: 'masonry_dense',
    lambda_W_mK: 0.81,
    mu: { dry: 16, wet: 10 },
    base: 'solid-brick',
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'clinker-2000',
    name: words('clinker, 2000 kg/m³', 'Klinker, 2000 kg/m³'),
    hatch: 'masonry_dense',
    lambda_W_mK: 0.96,
    mu: { dry: 100, wet: 50 },
    base: 'solid-brick',
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'hollow-brick-1200',
    name: words('hollow clay brick, 1200 kg/m³', 'Hochlochziegel, 1200 kg/m³'),
    hatch: 'masonry_light',
    lambda_W_mK: 0.5,
    mu: { dry: 10, wet: 5 },
    base: 'perforated-brick',
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'calcium-silicate-1800',
    name: words('calcium silicate brick, 1800 kg/m³', 'Kalksandstein, 1800 kg/m³'),
    hatch: 'masonry_dense',
    lambda_W_mK: 0.99,
    mu: { dry: 25, wet: 15 },
    base: 'sand-lime',
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'granite',
    name: words('granite', 'Granit'),
    hatch: 'stone',
    lambda_W_mK: 2.8,
    mu: { dry: 10000, wet: 10000 },
    firm: true,
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
]
