import { words } from '../../../words'
import type { Hatch } from '../hatch'

/** Ground at thresholds and feet. Ours. */
export const ground: readonly Hatch[] = [
  {
    key: 'soil',
    name: words('soil, existing', 'Boden, gewachsen'),
    tint: '#DDD0C2',
    families: [0, 0.9, 1.8].map(offset_mm => ({
      angle_deg: 45,
      pitch_mm: 4.5,
      offset_mm,
      dash_mm: [4.5, 4.5],
      stagger_mm: 4.5,
    })),
    least_mm: 9,
  },
  {
    key: 'fill_gravel',
    name: words('fill, gravel', 'Schüttung, Kies'),
    tint: '#EFEBE4',
    motif: { kind: 'circles', row_mm: 2.4, step_mm: 2.8, stagger_mm: 1.4, diameters_mm: [1.8, 1.1] },
    least_mm: 2.4,
  },
]
