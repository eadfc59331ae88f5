import { words } from '../../../words'
import type { Hatch } from '../hatch'

/** Metals. The pair of steel lines is closer than 0.7 mm on purpose. Ours. */
export const metal: readonly Hatch[] = [
  {
    key: 'steel',
    name: words('steel', 'Stahl'),
    tint: '#A9B0B7',
    families: [
      { angle_deg: 45, pitch_mm: 1.4 },
      { angle_deg: 45, pitch_mm: 1.4, offset_mm: 0.45 },
    ],
    least_mm: 1,
  },
  {
    key: 'aluminium',
    name: words('aluminium', 'Aluminium'),
    tint: '#C3CAD1',
    families: [{ angle_deg: 135, pitch_mm: 1.6 }],
    least_mm: 1.6,
  },
]
