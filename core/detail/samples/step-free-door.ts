import { words } from '../../words'
import { assumed, specified } from '../../units'
import type { Project } from '../model'
import { built } from './build'
import { counts, distancesAt, supportsAt } from './blocks'
import { title } from './title'
import { assessedScrew, timberAsItShouldBe, workAsItShouldBe } from './work-as-it-should-be'

const sheet = (plane: 'outer' | 'inner', of: 'epdm' | 'bitumen', sd_m: number) => ({
  kind: 'ground-sheet',
  plane,
  sheet: specified(of),
  bondFrame_mm: specified(25),
  bondWall_mm: specified(plane === 'outer' ? 150 : 60),
  slack_mm: specified(8),
  thickness_mm: specified(1.2),
  sd_m: specified(sd_m),
})

/**
 * A terrace door without a step: floor and surface at one level, the threshold 15 mm over both, and no drain before it.
 * The waterproofing is turned up by 15 mm where 150 mm are asked for.
 */
export const stepFreeDoor: Project = built({
  title: title('D-03', 'Wrong on purpose: step-free without a drain, the upstand lacks 135 mm'),
  practice: 'DE',
  wall: {
    id: 'perimeter-insulated-concrete',
    name: words('Concrete with perimeter insulation', 'Beton mit Perimeterdämmung'),
    layers: [
      ['lime-cement-render', 15, 'rain', 'finish'],
      ['xps', 120, 'insulating'],
      ['reinforced-concrete', 200, 'bearing'],
      ['gypsum-plaster', 15, 'airtight', 'finish'],
    ],
    cover_mm: 30,
    lining_mm: 15,
    position_mm: 10,
  },
  frame: { name: 'Timber 78, spruce', profile: 'timber-78', material: 'timber' },
  opening: { name: 'D-03', width_mm: 1230, height_mm: 2250, position_mm: 10 },
  joint: { name: 'Jamb joint', planned_mm: specified(14), tolerance_mm: specified(2) },
  seals: [
    {
      kind: 'impregnated-tape',
      plane: 'outer',
      least_mm: specified(10),
      most_mm: specified(18),
      width_mm: specified(20),
      sd_m: specified(0.4),
      class: specified('BG1'),
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
  others: {
    sill: {
      joint: { name: 'Joint below the threshold', planned_mm: specified(15), tolerance_mm: assumed(3) },
      seals: [sheet('outer', 'epdm', 60), { kind: 'foam', plane: 'middle' }, sheet('inner', 'bitumen', 200)],
    },
  },
  threshold: {
    material: 'pvc-u',
    height_mm: specified(35),
    base: { material: 'installation-board', thickness_mm: specified(100) },
    finish: { material: 'ceramic-tile', thickness_mm: specified(15) },
    screed_mm: specified(50),
    insulation: { material: 'eps', thickness_mm: specified(100) },
    slab_mm: specified(150),
    paving: { material: 'concrete-2200', thickness_mm: specified(50) },
    bed_mm: specified(150),
    fall_pct: specified(2),
    channelWidth_mm: assumed(150),
    channelDepth_mm: assumed(75),
  },
  fixing: {
    diameter_mm: specified(7.5),
    embedment_mm: specified(60),
    axis_mm: specified(45),
    corner_mm: specified(130),
    counts: counts(4, 3, 3),
    ...assessedScrew,
  },
  blocks: [...supportsAt(100, 150, 1080), ...distancesAt(2250)],
  asked: {
    exposure: specified('covered'),
    guarding: specified('no'),
    baseKnown: specified('yes'),
    mass_kg: specified(92),
  },
  told: {
    ...workAsItShouldBe,
    ...timberAsItShouldBe,
    threshold_mm: specified(15),
    outside_mm: specified(0),
    thresholdDrain: specified('none'),
    thresholdFall: specified('away'),
    stepFree: specified('yes'),
    water: specified('others'),
  },
})
