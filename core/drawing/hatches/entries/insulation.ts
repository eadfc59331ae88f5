import { words } from '../../../words'
import type { Hatch } from '../hatch'

/** Insulation, in the wall and in the joint. A single wave row still reads, so one row is enough. Ours. */
export const insulation: readonly Hatch[] = [
  {
    key: 'insul_soft',
    name: words('insulation, fibrous', 'Dämmung, faserig'),
    tint: '#FFF4CC',
    motif: { kind: 'waves', row_mm: 4, period_mm: 8, rise_mm: 1.35 },
    along: true,
    least_mm: 2.4,
  },
  {
    key: 'insul_woodfibre',
    name: words('insulation, wood fibre', 'Dämmung, Holzfaser'),
    tint: '#F7EBC8',
    motif: { kind: 'waves', row_mm: 2.4, period_mm: 4.8, rise_mm: 0.7 },
    along: true,
    least_mm: 2,
  },
  {
    key: 'insul_rigid',
    name: words('insulation, rigid foam', 'Dämmung, Hartschaum'),
    tint: '#FFF4CC',
    families: [
      { angle_deg: 30, pitch_mm: 4.2 },
      { angle_deg: 150, pitch_mm: 4.2 },
    ],
    least_mm: 4.2,
  },
  {
    key: 'foam_joint',
    name: words('joint insulation', 'Fugendämmung'),
    tint: '#FBE9A6',
    motif: { kind: 'circles', row_mm: 1.5, step_mm: 1.7, stagger_mm: 0.85, diameters_mm: [0.95, 0.55] },
    least_mm: 1.5,
  },
]
