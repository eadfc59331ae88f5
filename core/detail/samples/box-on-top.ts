import { assumed, specified } from '../../units'
import type { Project } from '../model'
import { perforatedBlock } from '../starters/walls'
import { built } from './build'
import { counts, distancesAt, supportsAt } from './blocks'
import { title } from './title'
import { assessedScrew, sillAsItShouldBe, workAsItShouldBe } from './work-as-it-should-be'

const sealsWith = (least_mm: number, most_mm: number) =>
  [
    {
      kind: 'impregnated-tape',
      plane: 'outer',
      least_mm: specified(least_mm),
      most_mm: specified(most_mm),
      width_mm: specified(20),
      sd_m: specified(0.4),
      class: specified('BG1'),
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
  ] as const

/** A white window under an insulated shutter box in perforated block: box and lintel have a joint of their own. */
export const boxOnTop: Project = built({
  title: title('W-88', 'Under an insulated shutter box, coupled and sealed inside and outside'),
  practice: 'DE',
  wall: { ...perforatedBlock, cover_mm: 30, position_mm: 150 },
  frame: { name: 'PVC-U 76, white', profile: 'pvc-76', material: 'pvc-white' },
  opening: { name: 'W-88', width_mm: 1400, height_mm: 1350, position_mm: 150 },
  joint: { name: 'Jamb and sill joint', planned_mm: specified(16), tolerance_mm: assumed(2) },
  seals: sealsWith(12, 25),
  others: {
    head: {
      joint: { name: 'Joint of box and lintel', planned_mm: specified(20), tolerance_mm: assumed(2) },
      seals: sealsWith(15, 25),
    },
  },
  box: {
    height_mm: specified(240),
    depth_mm: specified(200),
    forward_mm: specified(45),
    material: 'pvc-u',
    shell_mm: specified(8),
    lining: { material: 'eps', thickness_mm: specified(40) },
    coupling: specified('sealed'),
    ends: specified('yes'),
    passage: specified('yes'),
  },
  fixings: [
    {
      kind: 'frame-screw',
      diameter_mm: specified(7.5),
      embedment_mm: specified(80),
      axis_mm: specified(38),
      corner_mm: specified(140),
      counts: counts(3, undefined, 3),
      drilling: specified('rotary'),
      ...assessedScrew,
    },
    {
      kind: 'bracket',
      diameter_mm: specified(8),
      embedment_mm: specified(80),
      axis_mm: specified(38),
      corner_mm: specified(140),
      plate_mm: specified(4),
      resistance_N: specified(900),
      counts: { head: specified(3) },
    },
  ],
  blocks: [...supportsAt(100, 150, 1250), ...distancesAt(1350)],
  sill: {
    ...sillAsItShouldBe,
    board: { material: 'softwood', thickness_mm: specified(20), overhang_mm: specified(30) },
  },
  asked: {
    exposure: specified('exposed'),
    guarding: specified('no'),
    baseKnown: specified('yes'),
    mass_kg: specified(80),
  },
  told: workAsItShouldBe,
})
