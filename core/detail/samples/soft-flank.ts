import { assumed, specified } from '../../units'
import type { Project } from '../model'
import { insulatedMasonry } from '../starters/walls'
import { built } from './build'
import { counts, distancesAt, supportsAt } from './blocks'
import { title } from './title'
import { assessedScrew, sillAsItShouldBe, timberAsItShouldBe, workAsItShouldBe } from './work-as-it-should-be'

/** Wrong on purpose: a frame moved out into the insulation and still held by screws, its tape against mineral wool. */
export const softFlank: Project = built({
  title: title('W-27', 'Wrong on purpose: taped to mineral wool, carried by screws'),
  practice: 'DE',
  wall: insulatedMasonry,
  frame: { name: 'Timber 78, spruce', profile: 'timber-78', material: 'timber' },
  opening: { name: 'W-27', width_mm: 1000, height_mm: 1300, position_mm: -60 },
  joint: { name: 'Joint in the insulation', planned_mm: specified(14), tolerance_mm: assumed(2) },
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
      bondWall_mm: specified(50),
      slack_mm: specified(8),
      sd_m: specified(20),
    },
  ],
  fixings: [
    {
      kind: 'frame-screw',
      diameter_mm: specified(7.5),
      embedment_mm: specified(60),
      axis_mm: specified(45),
      corner_mm: specified(130),
      counts: counts(3, 2, 2),
      ...assessedScrew,
    },
  ],
  // one block for two corners: the screws carry the rest
  blocks: [...supportsAt(100, 150), ...distancesAt(1300)],
  sill: sillAsItShouldBe,
  asked: {
    exposure: specified('covered'),
    guarding: specified('no'),
    baseKnown: specified('yes'),
    mass_kg: specified(55),
  },
  told: { ...workAsItShouldBe, ...timberAsItShouldBe },
})
