import { cite } from '../../sources'
import { words } from '../../words'
import type { Material } from '../material'

/** What fills and seals a joint: sealants, rubber, foam, backing. */
export const sealing: readonly Material[] = [
  {
    id: 'silicone',
    name: words('silicone sealant', 'Silikondichtstoff'),
    hatch: 'sealant',
    lambda_W_mK: 0.35,
    mu: { dry: 5000, wet: 5000 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'polysulphide',
    name: words('polysulphide sealant', 'Polysulfiddichtstoff'),
    hatch: 'sealant',
    lambda_W_mK: 0.4,
    mu: { dry: 10000, wet: 10000 },
    emissivity: 0.9,
    cite: cite('en-iso-10077-2', 'published'),
  },
  {
    id: 'butyl',
    name: words('butyl', 'Butyl'),
    hatch: 'sealant',
    lambda_W_mK: 0.24,
    mu: { dry: 200000, wet: 200000 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'epdm',
    name: words('EPDM rubber', 'EPDM'),
    hatch: 'gasket',
    lambda_W_mK: 0.25,
    mu: { dry: 6000, wet: 6000 },
    emissivity: 0.9,
    cite: cite('en-iso-10077-2', 'published'),
  },
  {
    id: 'gun-foam',
    name: words('gun-grade polyurethane foam', 'PUR-Montageschaum'),
    hatch: 'foam_joint',
    lambda_W_mK: 0.04,
    mu: { dry: 60, wet: 60 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'pe-foam',
    name: words('polyethylene foam', 'Polyethylenschaum'),
    hatch: 'foam_cells',
    lambda_W_mK: 0.05,
    mu: { dry: 100, wet: 100 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'impregnated-foam',
    name: words('impregnated soft foam', 'imprägnierter Weichschaum'),
    hatch: 'tape_comp',
    lambda_W_mK: 0.05,
    mu: { dry: 100, wet: 100 },
    emissivity: 0.9,
    cite: cite('mu-lists', 'memory'),
  },
  {
    id: 'bitumen-sheet',
    name: words('bitumen sheet', 'Bitumenbahn'),
    hatch: 'gasket',
    lambda_W_mK: 0.23,
    mu: { dry: 50000, wet: 50000 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
]
