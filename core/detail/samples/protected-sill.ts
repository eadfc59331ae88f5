import { assumed, measured, specified } from '../../units'
import { words } from '../../words'
import type { Project } from '../model'
import { built } from './build'
import { counts } from './blocks'
import { title } from './title'
import { workWithout } from './work-as-it-should-be'

const seals = [
  {
    kind: 'impregnated-tape',
    plane: 'outer',
    gap: 'rebate',
    least_mm: specified(5),
    most_mm: specified(10),
    width_mm: specified(15),
    sd_m: specified(0.5),
    class: specified('BG1'),
  },
  { kind: 'packed-wool', plane: 'middle', fibre: specified('hemp') },
  {
    kind: 'sealant',
    plane: 'inner',
    depth_mm: specified(6),
    rod_mm: specified(15),
    share_pct: specified(20),
    mu: specified(800),
  },
] as const
const joint = (name: string) => ({ name, planned_mm: specified(12), tolerance_mm: assumed(1) })
const raked = { narrowest: measured(4), widest: measured(13) }
const uneven = { narrowest: measured(12), widest: measured(13) }

/** A timber window behind the nib of an old brick wall whose strength nobody knows; its stone sill is protected. */
export const protectedSill: Project = built({
  title: title('W-43', 'Behind a brick nib: too few screws, unknown brick, a stone sill that stays'),
  practice: 'DE',
  wall: {
    id: 'old-rebated-brick',
    name: words('Old solid brick with inner rebate', 'Alter Vollziegel mit Innenanschlag'),
    layers: [
      ['clay-brick-1800', 380, 'bearing', 'rain'],
      ['lime-cement-render', 20, 'airtight', 'finish'],
    ],
    cover_mm: 0,
    lining_mm: 20,
    rebate: { at: 'inner-rebate', depth_mm: 115, lap_mm: 55 },
    position_mm: 123,
  },
  frame: { name: 'Timber 68, pine', profile: 'timber-68', material: 'timber' },
  opening: { name: 'W-43', width_mm: 1200, height_mm: 2100, position_mm: 123 },
  joint: joint('Joint behind the nib'),
  seals,
  others: { sill: { joint: joint('Joint on the stone, seals not known'), seals: [] } },
  survey: {
    joints_mm: { left: uneven, right: uneven, head: uneven },
    rebates_mm: { left: raked, right: raked, head: raked },
  },
  fixings: [
    {
      kind: 'frame-screw',
      diameter_mm: specified(7.5),
      embedment_mm: specified(55),
      axis_mm: specified(34),
      corner_mm: specified(130),
      counts: counts(3),
      core_mm: specified(5.5),
      steel_N_mm2: specified(600),
      drilling: specified('hammer'),
    },
  ],
  sill: {
    material: 'granite',
    thickness_mm: specified(40),
    slope_deg: specified(4),
    overhang_mm: specified(40),
    upstand_mm: specified(0),
    secondPlane: specified('none'),
  },
  sillStays: true,
  asked: {
    exposure: specified('exposed'),
    guarding: specified('no'),
    baseKnown: specified('no'),
    mass_kg: specified(100),
  },
  told: {
    // how the corners at the stone are sealed, and how many windows are replaced, nobody has told
    ...workWithout('corners', 'replaced'),
    wind_Pa: specified(650),
    flank_deg: measured(4.5),
    frameMoisture_pct: measured(19),
    flankFace: measured('raked'),
    screening: specified('not'),
  },
})
