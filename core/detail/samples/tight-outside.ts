import { assumed, specified } from '../../units'
import type { Project } from '../model'
import { built } from './build'
import { title } from './title'
import { insulatedMasonry } from '../starters/walls'

/** Wrong on purpose: a deep silicone bead without a rod outside, an open tape inside: tighter outside than inside. */
export const tightOutside: Project = built({
  title: title('W-19', 'Wrong on purpose: tighter outside than inside'),
  practice: 'DE',
  wall: insulatedMasonry,
  frame: { name: 'PVC-U 76, white', profile: 'pvc-76', material: 'pvc-white' },
  opening: { name: 'W-19', width_mm: 1800, height_mm: 1350, position_mm: 20 },
  joint: { name: 'Reversed joint', planned_mm: specified(14), tolerance_mm: assumed(3) },
  seals: [
    {
      kind: 'sealant',
      plane: 'outer',
      depth_mm: specified(14),
      share_pct: specified(25),
      mu: specified(5000),
    },
    { kind: 'foam', plane: 'middle' },
    {
      kind: 'impregnated-tape',
      plane: 'inner',
      least_mm: specified(8),
      most_mm: specified(15),
      width_mm: specified(15),
      sd_m: specified(0.4),
    },
  ],
  fixing: { diameter_mm: specified(7.5), embedment_mm: specified(60), axis_mm: specified(42) },
})
