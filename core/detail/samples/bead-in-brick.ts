import { assumed, specified } from '../../units'
import type { Project } from '../model'
import { solidBrick } from '../starters/walls'
import { built } from './build'
import { counts, distancesAt, supportsAt } from './blocks'
import { title } from './title'
import { assessedScrew, workAsItShouldBe } from './work-as-it-should-be'

/** An aluminium window in solid brick: a bead on a rod outside, and one inside. */
export const beadInBrick: Project = built({
  title: title('W-15', 'Aluminium window in solid brick, beads on rods'),
  practice: 'AT',
  wall: solidBrick,
  frame: { name: 'Aluminium 75', profile: 'aluminium-75', material: 'aluminium' },
  opening: { name: 'W-15', width_mm: 1400, height_mm: 1400, position_mm: 140 },
  joint: { name: 'Beaded joint', planned_mm: specified(16), tolerance_mm: assumed(0.5) },
  seals: [
    {
      kind: 'sealant',
      plane: 'outer',
      depth_mm: specified(8),
      rod_mm: specified(20),
      share_pct: specified(25),
      mu: specified(1000),
      class: specified('25LM'),
    },
    { kind: 'packed-wool', plane: 'middle', fibre: specified('mineral') },
    {
      kind: 'membrane',
      plane: 'inner',
      bondFrame_mm: specified(20),
      bondWall_mm: specified(50),
      slack_mm: specified(8),
      sd_m: specified(40),
    },
  ],
  fixings: [
    {
      kind: 'frame-screw',
      diameter_mm: specified(7.5),
      embedment_mm: specified(70),
      axis_mm: specified(38),
      corner_mm: specified(150),
      counts: counts(3, 3, 3),
      ...assessedScrew,
    },
  ],
  blocks: [...supportsAt(100, 150, 1250), ...distancesAt(1400)],
  sill: {
    material: 'aluminium',
    thickness_mm: specified(2),
    slope_deg: specified(6),
    overhang_mm: specified(40),
    upstand_mm: specified(25),
    endDam_mm: specified(20),
    endGap_mm: specified(5),
    secondPlane: specified('membrane'),
  },
  asked: {
    exposure: specified('exposed'),
    guarding: specified('no'),
    baseKnown: specified('yes'),
    mass_kg: specified(90),
  },
  told: workAsItShouldBe,
})
