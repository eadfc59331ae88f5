import { cite } from '../../sources'
import { words } from '../../words'
import type { Material } from '../material'

/** Plastics of profiles. */
export const plastic: readonly Material[] = [
  {
    id: 'pvc-u',
    name: words('PVC-U, rigid', 'PVC-U, hart'),
    hatch: 'plastic',
    lambda_W_mK: 0.17,
    mu: { dry: 50000, wet: 50000 },
    firm: true,
    emissivity: 0.9,
    cite: cite('en-iso-10077-2', 'published'),
  },
  {
    id: 'polyamide',
    name: words('polyamide', 'Polyamid'),
    hatch: 'plastic',
    lambda_W_mK: 0.25,
    mu: { dry: 50000, wet: 50000 },
    emissivity: 0.9,
    cite: cite('en-iso-10077-2', 'published'),
  },
  {
    id: 'polyamide-glass-25',
    name: words('polyamide with 25 % glass fibre', 'Polyamid mit 25 % Glasfaser'),
    hatch: 'plastic',
    lambda_W_mK: 0.3,
    mu: { dry: 50000, wet: 50000 },
    emissivity: 0.9,
    cite: cite('en-iso-10077-2', 'published'),
  },
  {
    id: 'polyethylene-hd',
    name: words('polyethylene, high density', 'Polyethylen, hohe Dichte'),
    hatch: 'plastic',
    lambda_W_mK: 0.5,
    mu: { dry: 100000, wet: 100000 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'polyethylene-ld',
    name: words('polyethylene, low density', 'Polyethylen, niedrige Dichte'),
    hatch: 'plastic',
    lambda_W_mK: 0.33,
    mu: { dry: 100000, wet: 100000 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'polypropylene',
    name: words('polypropylene', 'Polypropylen'),
    hatch: 'plastic',
    lambda_W_mK: 0.22,
    mu: { dry: 10000, wet: 10000 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  // Pressed of recycled hard foam; conductivity from memory. What it is to vapour its product declares.
  {
    id: 'installation-board',
    name: words('dense rigid board of installation frames', 'dichte Hartplatte für Montagerahmen'),
    hatch: 'insul_rigid',
    lambda_W_mK: 0.1,
    firm: true,
    emissivity: 0.9,
    cite: cite('trade', 'memory'),
  },
]
