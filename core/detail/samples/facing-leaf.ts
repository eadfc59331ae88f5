import { assumed, measured, specified } from '../../units'
import { words } from '../../words'
import type { Project } from '../model'
import { built } from './build'
import { counts } from './blocks'
import { title } from './title'
import { workAsItShouldBe } from './work-as-it-should-be'

const seals = [
  { kind: 'sealant', plane: 'outer', depth_mm: specified(6), share_pct: specified(25), mu: specified(5000) },
  { kind: 'foam', plane: 'middle' },
  { kind: 'sealant', plane: 'inner' },
] as const
const joint = (name: string) => ({ name, planned_mm: specified(5), tolerance_mm: assumed(1) })
const between = (narrowest: number, widest: number) => ({
  narrowest: measured(narrowest),
  widest: measured(widest),
})

/** A British window in the facing leaf of a cavity wall, sealed with a thin bead and foam: too narrow at one place. */
export const facingLeaf: Project = built({
  title: title('W-64', 'In the facing leaf: a gap of 4 mm, no rod, a short closer, a low sill'),
  practice: 'UK',
  wall: {
    id: 'filled-cavity',
    name: words('Filled cavity between brick and dense block', 'Gedämmter Hohlraum zwischen Ziegel und Betonstein'),
    layers: [
      ['clay-brick-1800', 102.5, 'bearing', 'rain'],
      ['mineral-wool', 100, 'insulating'],
      ['concrete-2200', 100, 'airtight'],
      ['gypsum-board', 12.5, 'finish'],
    ],
    edges: { 'mineral-wool': ['xps', 60] },
    cover_mm: 10,
    lining_mm: 12.5,
    position_mm: 20,
  },
  frame: { name: 'PVC-U 70, white', profile: 'pvc-70', material: 'pvc-white' },
  opening: { name: 'W-64', width_mm: 1800, height_mm: 1200, position_mm: 20 },
  joint: joint('Jamb gap'),
  seals,
  others: { head: { joint: joint('Head gap'), seals }, sill: { joint: joint('Gap below'), seals } },
  survey: {
    joints_mm: { left: between(4, 9), right: between(4, 9), head: between(5, 7), sill: between(5, 6) },
  },
  fixings: [
    {
      kind: 'frame-screw',
      diameter_mm: specified(7.5),
      embedment_mm: specified(60),
      axis_mm: specified(30),
      corner_mm: specified(130),
      counts: counts(3, 4, 4),
      core_mm: specified(5.5),
      steel_N_mm2: specified(600),
    },
  ],
  sill: {
    material: 'granite',
    thickness_mm: specified(40),
    slope_deg: specified(5),
    overhang_mm: specified(30),
    upstand_mm: specified(15),
    throat_mm: specified(10),
  },
  asked: {
    exposure: specified('exposed'),
    sillHeight_mm: specified(650),
    fall_mm: specified(3000),
    baseKnown: specified('yes'),
    mass_kg: specified(85),
  },
  told: {
    ...workAsItShouldBe,
    wind_Pa: specified(1100),
    innerProof: specified('none'),
    drivingRain: specified('very-severe'),
  },
}) // prettier-ignore
