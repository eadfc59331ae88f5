import { assumed, specified } from '../../units'
import type { Project } from '../model'
import { timberFrame } from '../starters/walls'
import { built } from './build'
import { counts, distancesAt, supportsAt } from './blocks'
import { title } from './title'
import { assessedScrew, timberAsItShouldBe, workAsItShouldBe } from './work-as-it-should-be'

/** A timber window in a timber frame wall with wood fibre, its sill over a tray. */
export const timberWall: Project = built({
  title: title('W-12', 'Timber window in a timber frame wall'),
  practice: 'AT',
  // the studs are lined with a board on battens: nothing is plastered over the membrane
  wall: { ...timberFrame, lining_mm: 0 },
  frame: { name: 'Timber 78, spruce', profile: 'timber-78', material: 'timber' },
  opening: { name: 'W-12', width_mm: 1100, height_mm: 1300, position_mm: 15 },
  joint: { name: 'Joint at the studs', planned_mm: specified(15), tolerance_mm: assumed(3) },
  seals: [
    {
      kind: 'impregnated-tape',
      plane: 'outer',
      least_mm: specified(10),
      most_mm: specified(20),
      width_mm: specified(20),
      sd_m: specified(0.4),
      class: specified('BG1'),
    },
    { kind: 'packed-wool', plane: 'middle', fibre: specified('hemp') },
    {
      kind: 'membrane',
      plane: 'inner',
      bondFrame_mm: specified(20),
      bondWall_mm: specified(45),
      slack_mm: specified(8),
      onReveal_mm: specified(50),
      sd_m: specified(15),
    },
  ],
  fixings: [
    {
      kind: 'frame-screw',
      diameter_mm: specified(7.5),
      embedment_mm: specified(60),
      axis_mm: specified(45),
      corner_mm: specified(140),
      counts: counts(3, 3, 3),
      ...assessedScrew,
    },
  ],
  blocks: [...supportsAt(100, 150, 950), ...distancesAt(1300)],
  sill: {
    material: 'aluminium',
    thickness_mm: specified(2),
    slope_deg: specified(5),
    overhang_mm: specified(35),
    upstand_mm: specified(25),
    endDam_mm: specified(20),
    endGap_mm: specified(5),
    secondPlane: specified('tray'),
    board: { material: 'softwood', thickness_mm: specified(20), overhang_mm: specified(30) },
  },
  asked: { exposure: specified('sheltered'), guarding: specified('no'), mass_kg: specified(60) },
  told: { ...workAsItShouldBe, ...timberAsItShouldBe },
})
