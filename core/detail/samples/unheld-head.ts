import { assumed, measured, specified } from '../../units'
import { words } from '../../words'
import type { Project } from '../model'
import { built } from './build'
import { counts } from './blocks'
import { title } from './title'
import { workWithout } from './work-as-it-should-be'

const sealsWith = (least_mm: number, most_mm: number, width_mm: number) =>
  [
    {
      kind: 'impregnated-tape',
      plane: 'outer',
      least_mm: specified(least_mm),
      most_mm: specified(most_mm),
      width_mm: specified(width_mm),
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
  ] as const
const stopBead = { kind: 'render-stop-bead', plane: 'outer' } as const
const even = { narrowest: measured(14), widest: measured(16) }

/** A wide window in perforated brick below a box: nothing holds its head, its tape is too small, its sill touches the render. */
export const unheldHead: Project = built({
  title: title('W-86', 'In perforated brick below a box: a head that nothing holds'),
  practice: 'DE',
  wall: {
    id: 'perforated-insulating-render',
    name: words('Perforated brick with insulating render', 'Hochlochziegel mit Dämmputz'),
    layers: [
      ['lime-cement-render', 40, 'rain', 'finish'],
      ['hollow-brick-1200', 365, 'bearing', 'insulating'],
      ['gypsum-plaster', 15, 'airtight', 'finish'],
    ],
    cover_mm: 20,
    lining_mm: 15,
    position_mm: 140,
  },
  frame: { name: 'PVC-U 76, white', profile: 'pvc-76', material: 'pvc-white' },
  opening: { name: 'W-86', width_mm: 2400, height_mm: 1400, position_mm: 140 },
  joint: { name: 'Jamb joint', planned_mm: specified(15), tolerance_mm: assumed(1) },
  seals: [stopBead, ...sealsWith(8, 15, 15)],
  others: {
    head: {
      joint: { name: 'Joint below the lintel', planned_mm: specified(20), tolerance_mm: assumed(1) },
      seals: [stopBead, ...sealsWith(15, 25, 20)],
    },
    // at the sill a sheet covers the outer face of the joint: no render ends there
    sill: {
      joint: { name: 'Sill joint', planned_mm: specified(15), tolerance_mm: assumed(1) },
      seals: sealsWith(8, 15, 15),
    },
  },
  survey: {
    joints_mm: {
      left: even,
      right: even,
      sill: even,
      head: { narrowest: measured(19), widest: measured(21) },
    },
  },
  // nobody has told how its ends meet the masonry
  box: {
    height_mm: specified(240),
    depth_mm: specified(200),
    forward_mm: specified(45),
    material: 'pvc-u',
    shell_mm: specified(8),
    coupling: specified('foam'),
  },
  fixings: [
    {
      kind: 'frame-screw',
      diameter_mm: specified(7.5),
      embedment_mm: specified(80),
      axis_mm: specified(38),
      corner_mm: specified(140),
      counts: counts(3, 0, 4),
      core_mm: specified(5.5),
      steel_N_mm2: specified(600),
      drilling: specified('rotary'),
    },
  ],
  sill: {
    material: 'aluminium',
    thickness_mm: specified(2),
    slope_deg: specified(5),
    overhang_mm: specified(35),
    upstand_mm: specified(25),
    endDam_mm: specified(20),
    endGap_mm: specified(2),
    secondPlane: specified('tray'),
  },
  asked: { exposure: specified('exposed'), guarding: specified('no'), mass_kg: specified(135) },
  told: {
    ...workWithout('corners'),
    wind_Pa: specified(650),
    inertia_cm4: specified(4),
    modulus_N_mm2: specified(210_000),
  },
})
