import { assumed, specified } from '../../units'
import type { Project } from '../model'
import { insulatedConcrete } from '../starters/walls'
import { built } from './build'
import { counts, distancesAt } from './blocks'
import { title } from './title'
import { sillAsItShouldBe, timberAsItShouldBe, workAsItShouldBe } from './work-as-it-should-be'

/** A timber-aluminium window in the insulation before concrete, on steel brackets, its outer membrane led back to the wall. */
export const forwardOnBrackets: Project = built({
  title: title('W-56', 'In the insulation on brackets, its outer membrane bonded to the concrete'),
  practice: 'DE',
  wall: { ...insulatedConcrete, cover_mm: 40, position_mm: -120 },
  frame: { name: 'Timber-aluminium 110', profile: 'timber-aluminium-110', material: 'timber-aluminium' },
  opening: { name: 'W-56', width_mm: 1300, height_mm: 1400, position_mm: -120 },
  joint: { name: 'Joint in the insulation', planned_mm: specified(15), tolerance_mm: assumed(2) },
  seals: [
    {
      kind: 'membrane',
      plane: 'outer',
      bondFrame_mm: specified(20),
      bondWall_mm: specified(60),
      slack_mm: specified(8),
      sd_m: specified(0.1),
    },
    { kind: 'packed-wool', plane: 'middle', fibre: specified('mineral') },
    {
      kind: 'membrane',
      plane: 'inner',
      bondFrame_mm: specified(20),
      bondWall_mm: specified(60),
      slack_mm: specified(8),
      sd_m: specified(20),
    },
  ],
  fixings: [
    {
      kind: 'bracket',
      diameter_mm: specified(8),
      embedment_mm: specified(70),
      axis_mm: specified(55),
      corner_mm: specified(140),
      lever_mm: specified(90),
      plate_mm: specified(6),
      counts: counts(3, 3),
      // under both corners and between them: they carry the frame
      positions_mm: { sill: [230, 650, 1070] },
      resistance_N: specified(2500),
    },
  ],
  blocks: distancesAt(1400),
  sill: {
    ...sillAsItShouldBe,
    secondPlane: specified('membrane'),
  },
  asked: { exposure: specified('covered'), guarding: specified('no'), mass_kg: specified(95) },
  told: { ...workAsItShouldBe, ...timberAsItShouldBe },
})
