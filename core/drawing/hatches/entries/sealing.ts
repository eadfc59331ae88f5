import { words } from '../../../words'
import type { Hatch } from '../hatch'

/** Profiles and what closes joints. Ours. */
export const sealing: readonly Hatch[] = [
  {
    key: 'plastic',
    name: words('plastic profile', 'Kunststoffprofil'),
    tint: '#DCCFF0',
    families: [{ angle_deg: 135, pitch_mm: 1.2 }],
    least_mm: 1.2,
  },
  {
    key: 'gasket',
    name: words('gasket, elastomer', 'Dichtung, Elastomer'),
    tint: '#3A3A3A',
    solid: '#3A3A3A',
    least_mm: 0,
  },
  {
    key: 'sealant',
    name: words('sealant', 'Dichtstoff'),
    tint: '#C9C4D6',
    families: [{ angle_deg: 0, pitch_mm: 0.9 }],
    least_mm: 1,
  },
  {
    key: 'foam_cells',
    name: words('PE foam', 'PE-Schaum'),
    tint: '#F0EDE2',
    motif: { kind: 'circles', row_mm: 1, step_mm: 1.2, stagger_mm: 0.6, diameters_mm: [0.65, 0.65] },
    least_mm: 1.6,
  },
  {
    key: 'tape_comp',
    name: words('joint sealing tape', 'Fugendichtband'),
    tint: '#B5C9BD',
    families: [
      { angle_deg: 45, pitch_mm: 0.9 },
      { angle_deg: 135, pitch_mm: 0.9 },
    ],
    least_mm: 1.8,
  },
]
