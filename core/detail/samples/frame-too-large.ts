import { assumed, measured, specified } from '../../units'
import type { Project } from '../model'
import { insulatedConcrete } from '../starters/walls'
import { built } from './build'
import { counts, distancesAt, supportsAt } from './blocks'
import { title } from './title'
import { assessedScrew, workAsItShouldBe } from './work-as-it-should-be'

/** Wrong on purpose: a frame ordered by the drawing, in an opening that was measured smaller than it. */
export const frameTooLarge: Project = built({
  title: title('W-23', 'Wrong on purpose: a frame wider than its opening'),
  practice: 'DE',
  wall: insulatedConcrete,
  frame: { name: 'PVC-U 76, white', profile: 'pvc-76', material: 'pvc-white' },
  opening: { name: 'W-23', width_mm: 1400, height_mm: 1400, position_mm: 15 },
  joint: { name: 'Jamb joint', planned_mm: specified(12), tolerance_mm: assumed(3) },
  seals: [
    {
      kind: 'impregnated-tape',
      plane: 'outer',
      least_mm: specified(7),
      most_mm: specified(12),
      width_mm: specified(20),
      sd_m: specified(0.4),
      class: specified('BG2'),
    },
    { kind: 'foam', plane: 'middle' },
    {
      kind: 'membrane',
      plane: 'inner',
      bondFrame_mm: specified(20),
      bondWall_mm: specified(50),
      slack_mm: specified(8),
      sd_m: specified(20),
    },
  ],
  survey: {
    widths_mm: { top: measured(1404), middle: measured(1398), bottom: measured(1401) },
    heights_mm: { left: measured(1424), centre: measured(1424), right: measured(1425) },
  },
  fixings: [
    {
      kind: 'frame-screw',
      diameter_mm: specified(7.5),
      embedment_mm: specified(50),
      axis_mm: specified(40),
      corner_mm: specified(140),
      counts: counts(3, 3, 3),
      ...assessedScrew,
    },
  ],
  blocks: [...supportsAt(100, 150, 1250), ...distancesAt(1400)],
  asked: { exposure: specified('covered'), guarding: specified('no'), mass_kg: specified(80) },
  told: workAsItShouldBe,
})
