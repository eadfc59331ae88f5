import { assumed, measured, specified } from '../../units'
import type { Project } from '../model'
import { rebatedBrick } from '../starters/walls'
import { built } from './build'
import { counts, distancesAt, supportsAt } from './blocks'
import { title } from './title'
import { assessedScrew, sillAsItShouldBe, timberAsItShouldBe, workAsItShouldBe } from './work-as-it-should-be'

const even = { narrowest: measured(7), widest: measured(9) }

const tape = (least_mm: number, most_mm: number) =>
  ({
    kind: 'impregnated-tape',
    plane: 'outer',
    least_mm: specified(least_mm),
    most_mm: specified(most_mm),
    width_mm: specified(20),
    sd_m: specified(0.4),
    class: specified('BG1'),
  }) as const

const behind = [
  { kind: 'packed-wool', plane: 'middle', fibre: specified('hemp') },
  {
    kind: 'membrane',
    plane: 'inner',
    bondFrame_mm: specified(20),
    bondWall_mm: specified(50),
    slack_mm: specified(8),
    sd_m: specified(20),
  },
] as const

/** A timber window behind the nib of a brick wall: rain stops in the gap of the rebate, air at the room side of the joint. */
export const rebateSealed: Project = built({
  title: title('W-48', 'Behind a brick nib, its gap sealed by a tape of its own'),
  practice: 'DE',
  wall: { ...rebatedBrick, rebate: { at: 'inner-rebate', depth_mm: 115, lap_mm: 47 } },
  frame: { name: 'Timber 68, larch', profile: 'timber-68', material: 'timber' },
  opening: { name: 'W-48', width_mm: 1150, height_mm: 1400, position_mm: 123 },
  joint: { name: 'Joint behind the nib', planned_mm: specified(15), tolerance_mm: assumed(2) },
  seals: [{ ...tape(7, 12), gap: 'rebate' }, ...behind],
  // no nib goes round the foot of an opening
  others: {
    sill: {
      joint: { name: 'Joint at the sill', planned_mm: specified(15), tolerance_mm: assumed(2) },
      seals: [tape(12, 25), ...behind],
    },
  },
  survey: { rebates_mm: { head: even, left: even, right: even } },
  fixings: [
    {
      kind: 'frame-screw',
      diameter_mm: specified(7.5),
      embedment_mm: specified(60),
      axis_mm: specified(34),
      corner_mm: specified(140),
      counts: counts(3, 3, 3),
      drilling: specified('hammer'),
      ...assessedScrew,
    },
  ],
  blocks: [...supportsAt(100, 150, 1000), ...distancesAt(1400)],
  sill: {
    ...sillAsItShouldBe,
    board: { material: 'softwood', thickness_mm: specified(20), overhang_mm: specified(30) },
  },
  asked: {
    exposure: specified('exposed'),
    guarding: specified('no'),
    baseKnown: specified('yes'),
    mass_kg: specified(66),
  },
  told: { ...workAsItShouldBe, ...timberAsItShouldBe },
})
