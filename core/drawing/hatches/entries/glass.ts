import { words } from '../../../words'
import type { Hatch } from '../hatch'

/** Glass, and what is empty. Ours. */
export const glass: readonly Hatch[] = [
  {
    key: 'glass',
    name: words('glass', 'Glas'),
    tint: '#D3EEF8',
    motif: { kind: 'ticks', angle_deg: 60, length_mm: 3, apart_mm: 1, every_mm: 16 },
    along: true,
    least_mm: 1,
  },
  { key: 'air_cavity', name: words('air or gas', 'Luft oder Gas'), tint: '#FFFFFF', least_mm: 0 },
]
