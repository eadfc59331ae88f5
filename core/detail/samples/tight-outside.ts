import { assumed, specified } from '../../units'
import type { Project } from '../model'
import { built } from './build'
import { counts, distancesAt, supportsAt } from './blocks'
import { title } from './title'
import { assessedScrew, workAsItShouldBe } from './work-as-it-should-be'
import { insulatedMasonry } from '../starters/walls'

/** Wrong on purpose: a deep silicone bead without a rod outside, an open tape inside: tighter outside than inside. */
export const tightOutside: Project = built({
  title: title('W-19', 'Wrong on purpose: tighter outside than inside'),
  practice: 'DE',
  wall: insulatedMasonry,
  frame: { name: 'PVC-U 76, white', profile: 'pvc-76', material: 'pvc-white' },
  opening: { name: 'W-19', width_mm: 1800, height_mm: 1350, position_mm: 20 },
  joint: { name: 'Reversed joint', planned_mm: specified(20), tolerance_mm: assumed(2) },
  seals: [
    {
      kind: 'sealant',
      plane: 'outer',
      depth_mm: specified(14),
      share_pct: specified(25),
      mu: specified(5000),
      class: specified('25LM'),
    },
    { kind: 'foam', plane: 'middle' },
    {
      kind: 'impregnated-tape',
      plane: 'inner',
      least_mm: specified(15),
      most_mm: specified(30),
      width_mm: specified(15),
      sd_m: specified(0.4),
      class: specified('BGR'),
    },
  ],
  fixing: {
    diameter_mm: specified(7.5),
    embedment_mm: specified(60),
    axis_mm: specified(42),
    corner_mm: specified(140),
    counts: counts(4, 4, 4),
    ...assessedScrew,
  },
  blocks: [...supportsAt(100, 150, 1650), ...distancesAt(1350)],
  asked: {
    exposure: specified('covered'),
    guarding: specified('no'),
    baseKnown: specified('yes'),
    mass_kg: specified(95),
  },
  told: workAsItShouldBe,
})
