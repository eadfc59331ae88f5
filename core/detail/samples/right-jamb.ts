import { assumed, specified } from '../../units'
import type { Project } from '../model'
import { built } from './build'
import { counts, distancesAt, supportsAt } from './blocks'
import { title } from './title'
import { assessedScrew, sillAsItShouldBe, timberAsItShouldBe, workAsItShouldBe } from './work-as-it-should-be'
import { insulatedMasonry } from '../starters/walls'

/** A timber window in external insulation, sealed in three planes as it should be. */
export const rightJamb: Project = built({
  title: title('W-07', 'Timber window in external insulation'),
  practice: 'DE',
  wall: insulatedMasonry,
  frame: { name: 'Timber 78, spruce', profile: 'timber-78', material: 'timber' },
  opening: { name: 'W-07', width_mm: 1230, height_mm: 1480, position_mm: 15 },
  joint: { name: 'Jamb joint', planned_mm: specified(14), tolerance_mm: assumed(3) },
  seals: [
    {
      kind: 'impregnated-tape',
      plane: 'outer',
      least_mm: specified(10),
      most_mm: specified(18),
      width_mm: specified(20),
      sd_m: specified(0.4),
      class: specified('BG2'),
    },
    { kind: 'foam', plane: 'middle' },
    {
      kind: 'membrane',
      plane: 'inner',
      bondFrame_mm: specified(20),
      bondWall_mm: specified(40),
      slack_mm: specified(8),
      sd_m: specified(20),
    },
  ],
  sill: {
    ...sillAsItShouldBe,
    board: { material: 'softwood', thickness_mm: specified(20), overhang_mm: specified(30) },
  },
  fixing: {
    diameter_mm: specified(7.5),
    embedment_mm: specified(60),
    axis_mm: specified(45),
    corner_mm: specified(130),
    counts: counts(3, 3, 3),
    ...assessedScrew,
  },
  blocks: [...supportsAt(100, 150, 1080), ...distancesAt(1480)],
  asked: {
    exposure: specified('covered'),
    guarding: specified('no'),
    baseKnown: specified('yes'),
    mass_kg: specified(76),
  },
  told: { ...workAsItShouldBe, ...timberAsItShouldBe },
})
