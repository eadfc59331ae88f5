import { assumed, measured, specified } from '../../units'
import { words } from '../../words'
import type { Project } from '../model'
import { built } from './build'
import { supportsAt } from './blocks'
import { title } from './title'
import { workAsItShouldBe } from './work-as-it-should-be'

const even = { narrowest: measured(24), widest: measured(26) }
const axes = [210, 750, 1050, 1600, 2140] as const

/** Wrong on purpose: an element from floor to ceiling that guards against falling, fixed in aerated concrete like a window. */
export const guardInAeratedConcrete: Project = built({
  title: title('D-75', 'Wrong on purpose: a guard in aerated concrete, fixed by the spacing table'),
  practice: 'DE',
  wall: {
    id: 'aerated-leaf',
    name: words('Aerated concrete, rendered', 'Porenbeton, verputzt'),
    layers: [
      ['lime-cement-render', 15, 'rain', 'finish'],
      ['aerated-concrete-500', 365, 'bearing', 'insulating'],
      ['gypsum-plaster', 15, 'airtight', 'finish'],
    ],
    cover_mm: 15,
    lining_mm: 15,
    position_mm: 25,
  },
  frame: { name: 'PVC-U 74, white', profile: 'pvc-74', material: 'pvc-white' },
  opening: { name: 'D-75', width_mm: 1250, height_mm: 2350, position_mm: 25 },
  joint: { name: 'Wide joint', planned_mm: specified(25), tolerance_mm: assumed(1) },
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
      bondFrame_mm: specified(15),
      bondWall_mm: specified(50),
      slack_mm: assumed(8),
      sd_m: specified(20),
    },
  ],
  survey: { joints_mm: { left: even, right: even, head: even } },
  transoms: [[900, 70]],
  fixings: [
    {
      kind: 'frame-plug',
      diameter_mm: specified(10),
      embedment_mm: specified(70),
      axis_mm: specified(37),
      corner_mm: specified(140),
      positions_mm: { left: axes, right: axes },
      core_mm: specified(5.5),
      steel_N_mm2: specified(600),
      resistance_N: specified(450),
    },
  ],
  blocks: supportsAt(100, 150, 1100).map(it => ({ ...it, width_mm: specified(70) })),
  asked: {
    exposure: specified('exposed'),
    guarding: specified('yes'),
    guardProof: specified('no'),
    mass_kg: specified(150),
    fall_mm: specified(6200),
  },
  told: {
    ...workAsItShouldBe,
    wind_Pa: specified(650),
    guard_mm: specified(900),
    guard_N_m: specified(500),
    guardAt_mm: specified(900),
    infill: specified('category'),
  },
})
