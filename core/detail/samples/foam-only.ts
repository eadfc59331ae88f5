import { assumed, specified } from '../../units'
import type { Project } from '../model'
import { built } from './build'
import { counts, distancesAt, supportsAt } from './blocks'
import { title } from './title'
import { assessedScrew, workAsItShouldBe } from './work-as-it-should-be'
import { insulatedMasonry } from '../starters/walls'

/** Wrong on purpose: a dark PVC-U window in a joint that is too narrow, with foam and nothing else. */
export const foamOnly: Project = built({
  title: title('W-11', 'Wrong on purpose: foam alone in a narrow joint'),
  practice: 'DE',
  wall: insulatedMasonry,
  frame: {
    name: 'PVC-U 76, anthracite',
    profile: 'pvc-76',
    material: 'pvc-coloured',
    steel_mm: specified(2),
  },
  opening: { name: 'W-11', width_mm: 1800, height_mm: 2200, position_mm: 20 },
  joint: { name: 'Foamed joint', planned_mm: specified(10), tolerance_mm: assumed(4) },
  seals: [{ kind: 'foam', plane: 'middle' }],
  fixing: {
    diameter_mm: specified(7.5),
    embedment_mm: specified(60),
    axis_mm: specified(42),
    corner_mm: specified(140),
    counts: counts(5, 5, 5),
    ...assessedScrew,
  },
  blocks: [...supportsAt(100, 150, 1650), ...distancesAt(2200)],
  asked: {
    exposure: specified('covered'),
    guarding: specified('no'),
    baseKnown: specified('yes'),
    mass_kg: specified(155),
  },
  told: workAsItShouldBe,
})
