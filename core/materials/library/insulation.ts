import { cite } from '../../sources'
import { words } from '../../words'
import type { Material } from '../material'
import { vapourTight } from '../vapour-tight'

/** Insulation boards and mats. */
export const insulation: readonly Material[] = [
  {
    id: 'eps',
    name: words('expanded polystyrene', 'Polystyrol, expandiert (EPS)'),
    hatch: 'insul_rigid',
    lambda_W_mK: 0.035,
    mu: { dry: 60, wet: 60 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'xps',
    name: words('extruded polystyrene', 'Polystyrol, extrudiert (XPS)'),
    hatch: 'insul_rigid',
    lambda_W_mK: 0.035,
    mu: { dry: 150, wet: 150 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'mineral-wool',
    name: words('mineral wool', 'Mineralwolle'),
    hatch: 'insul_soft',
    lambda_W_mK: 0.035,
    mu: { dry: 1, wet: 1 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'hemp-wool',
    name: words('hemp wool', 'Hanfwolle'),
    hatch: 'insul_soft',
    lambda_W_mK: 0.042,
    mu: { dry: 2, wet: 1 },
    emissivity: 0.9,
    cite: cite('trade', 'memory'),
  },
  {
    id: 'pur',
    name: words('rigid polyurethane foam', 'PUR-Hartschaum'),
    hatch: 'insul_rigid',
    lambda_W_mK: 0.025,
    mu: { dry: 60, wet: 60 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'wood-fibre',
    name: words('wood fibre board', 'Holzfaserplatte'),
    hatch: 'insul_woodfibre',
    lambda_W_mK: 0.04,
    mu: { dry: 5, wet: 3 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'published'),
  },
  {
    id: 'foam-glass',
    name: words('foam glass', 'Schaumglas'),
    hatch: 'insul_rigid',
    lambda_W_mK: 0.04,
    mu: vapourTight,
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
  {
    id: 'cork',
    name: words('cork board', 'Korkplatte'),
    hatch: 'insul_rigid',
    lambda_W_mK: 0.045,
    mu: { dry: 10, wet: 10 },
    emissivity: 0.9,
    cite: cite('en-iso-10456', 'memory'),
  },
]
