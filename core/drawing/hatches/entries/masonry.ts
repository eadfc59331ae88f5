import { words } from '../../../words'
import type { Hatch } from '../hatch'

/** Masonry and stone. The set is ours; its groups follow the usual ones of building drawings (reported). */
export const masonry: readonly Hatch[] = [
  {
    key: 'masonry_dense',
    name: words('masonry, dense', 'Mauerwerk, schwer'),
    tint: '#F6DACB',
    families: [{ angle_deg: 45, pitch_mm: 2.8 }],
    least_mm: 5.6,
  },
  {
    key: 'masonry_light',
    name: words('masonry, insulating', 'Mauerwerk, wärmedämmend'),
    tint: '#F8E6DA',
    families: [
      { angle_deg: 45, pitch_mm: 3.6 },
      { angle_deg: 45, pitch_mm: 3.6, offset_mm: 0.9 },
    ],
    least_mm: 7.2,
  },
  {
    key: 'aac',
    name: words('aerated concrete', 'Porenbeton'),
    tint: '#E3EDE6',
    families: [{ angle_deg: 45, pitch_mm: 3.6 }],
    motif: {
      kind: 'dots',
      angle_deg: 45,
      row_mm: 3.6,
      step_mm: 2.4,
      offset_mm: 1.8,
      stagger_mm: 0,
      diameter_mm: 0.35,
    },
    least_mm: 7.2,
  },
  {
    key: 'stone',
    name: words('natural or cast stone', 'Natur- oder Betonwerkstein'),
    tint: '#E4E2DC',
    families: [
      { angle_deg: 30, pitch_mm: 3.2 },
      { angle_deg: 30, pitch_mm: 3.2, offset_mm: 1.6, dash_mm: [6, 2, 1, 2], stagger_mm: 5.5 },
    ],
    least_mm: 6.4,
  },
  {
    key: 'existing',
    name: words('existing fabric, not determined', 'Bestand, nicht untersucht'),
    tint: '#EDEDED',
    families: [{ angle_deg: 45, pitch_mm: 5.6, dash_mm: [1.2, 2.4], stagger_mm: 1.8 }],
    least_mm: 5.6,
  },
]
