import { words } from '../../../words'
import type { Hatch } from '../hatch'

/** Timber and panels; cut ends turn from piece to piece, panels have lines square to their plane (reported). */
export const timber: readonly Hatch[] = [
  {
    key: 'timber_cross',
    name: words('timber, end grain', 'Holz, Hirnschnitt'),
    tint: '#F0DDB6',
    motif: { kind: 'rings', step_mm: 1.6, centre: [-0.55, -0.75] },
    least_mm: 3.2,
  },
  {
    key: 'timber_long',
    name: words('timber, along the grain', 'Holz, Längsschnitt'),
    tint: '#F0DDB6',
    motif: { kind: 'grain', row_mm: 1.5, period_mm: 24, rise_mm: 0.35 },
    along: true,
    least_mm: 3,
  },
  {
    key: 'wood_panel',
    name: words('wood-based panel', 'Holzwerkstoff'),
    tint: '#E2C79A',
    families: [{ angle_deg: 90, pitch_mm: 2, offset_mm: 1 }],
    along: true,
    least_mm: 1,
  },
]
