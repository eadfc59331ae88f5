import { assumed, measured, specified } from '../../units'
import { words } from '../../words'
import type { Project } from '../model'
import { built } from './build'
import { counts, distancesAt, supportsAt } from './blocks'
import { title } from './title'
import { workWithout } from './work-as-it-should-be'

const seals = [
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
    bondFrame_mm: specified(15),
    bondWall_mm: specified(40),
    slack_mm: specified(8),
    onReveal_mm: specified(49),
    sd_m: specified(20),
  },
] as const
const joint = (name: string, planned_mm: number) => ({
  name,
  planned_mm: specified(planned_mm),
  tolerance_mm: assumed(2),
})
const between = (narrowest: number, widest: number) => ({
  narrowest: measured(narrowest),
  widest: measured(widest),
})

/** A white window with a mullion, flush with sand-lime masonry, external insulation to follow: three quiet faults. */
export const flushInSandLime: Project = built({
  title: title('W-31', 'Flush with sand-lime masonry: edge distance, sill fall and overhang'),
  practice: 'DE',
  wall: {
    id: 'sand-lime-insulated',
    name: words('External insulation on sand-lime masonry', 'Außendämmung auf Kalksandstein'),
    layers: [
      ['lime-cement-render', 8, 'rain', 'finish'],
      ['eps', 160, 'insulating'],
      ['calcium-silicate-1800', 175, 'bearing'],
      ['gypsum-plaster', 15, 'airtight', 'finish'],
    ],
    cover_mm: 35,
    lining_mm: 15,
    position_mm: 0,
  },
  frame: { name: 'PVC-U 76, white', profile: 'pvc-76', material: 'pvc-white' },
  opening: { name: 'W-31', width_mm: 2100, height_mm: 1350, position_mm: 0 },
  joint: joint('Jamb joint', 12),
  seals,
  others: {
    head: { joint: joint('Head joint', 14), seals },
    sill: { joint: joint('Joint below the base profile', 12), seals },
  },
  survey: {
    joints_mm: {
      left: between(12, 14),
      right: between(12, 14),
      head: between(13, 15),
      sill: between(11, 13),
    },
  },
  mullions: [[1050, 70]],
  fixings: [
    {
      kind: 'frame-screw',
      diameter_mm: specified(7.5),
      embedment_mm: specified(60),
      axis_mm: specified(40),
      corner_mm: specified(140),
      counts: counts(3, 4, 4),
      core_mm: specified(5.5),
      steel_N_mm2: specified(600),
      drilling: specified('hammer'),
    },
  ],
  blocks: [...supportsAt(100, 150, 1050, 1950), ...distancesAt(1350)],
  sill: {
    material: 'aluminium',
    thickness_mm: specified(2),
    slope_deg: specified(3),
    overhang_mm: specified(25),
    upstand_mm: specified(25),
    endDam_mm: specified(20),
    endGap_mm: specified(5),
    length_mm: specified(2100),
    secondPlane: specified('none'),
  },
  asked: {
    exposure: specified('covered'),
    mass_kg: specified(119),
    sillHeight_mm: specified(900),
    fall_mm: specified(8500),
    baseKnown: specified('yes'),
  },
  told: {
    // how the airtight line goes on through the base profile nobody has told
    ...workWithout('airLine'),
    wind_Pa: specified(800),
    flank_deg: measured(1),
    openFor: specified(2.3),
  },
})
