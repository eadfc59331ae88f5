import { words } from '../../../words'
import type { Hatch } from '../hatch'

/** Concrete, screed, plaster. Ours. */
export const cast: readonly Hatch[] = [
  {
    key: 'concrete',
    name: words('concrete, plain', 'Beton, unbewehrt'),
    tint: '#E7E9EB',
    families: [{ angle_deg: 45, pitch_mm: 2.8, dash_mm: [4, 1.2], stagger_mm: 2.6 }],
    least_mm: 5.6,
  },
  {
    key: 'concrete_rc',
    name: words('reinforced concrete', 'Stahlbeton'),
    tint: '#D5D8DB',
    families: [
      { angle_deg: 45, pitch_mm: 2.8 },
      { angle_deg: 45, pitch_mm: 2.8, offset_mm: 1.4, dash_mm: [4, 1.2], stagger_mm: 2.6 },
    ],
    least_mm: 5.6,
  },
  {
    key: 'screed',
    name: words('screed, mortar bed', 'Estrich, Mörtelbett'),
    tint: '#ECEAE6',
    motif: {
      kind: 'dots',
      angle_deg: 0,
      row_mm: 1.4,
      step_mm: 1.4,
      offset_mm: 0.7,
      stagger_mm: 0.7,
      diameter_mm: 0.3,
    },
    least_mm: 2.8,
  },
  {
    key: 'plaster',
    name: words('plaster, render', 'Putz'),
    tint: '#F3F1EC',
    motif: {
      kind: 'dots',
      angle_deg: 0,
      row_mm: 1,
      step_mm: 2,
      offset_mm: 0.5,
      stagger_mm: 1,
      diameter_mm: 0.28,
    },
    least_mm: 2,
  },
]
