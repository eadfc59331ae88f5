import { measured, specified } from '../../units'
import { words } from '../../words'
import type { Project } from '../model'
import { built } from './build'
import { counts, distancesAt } from './blocks'
import { title } from './title'
import { sillAsItShouldBe } from './work-as-it-should-be'

const bracket = {
  kind: 'bracket',
  diameter_mm: specified(8),
  embedment_mm: specified(70),
  axis_mm: specified(55),
  corner_mm: specified(150),
} as const

/** A timber-aluminium window in the insulation, on consoles and a rigid installation frame: everything as it should be. */
export const onConsoles: Project = built({
  title: title('W-52', 'On consoles in the insulation, taped to a rigid installation frame'),
  practice: 'AT',
  wall: {
    id: 'concrete-thick-insulation',
    name: words('Thick insulation on concrete, rigid frame round the opening', 'Dicke Dämmung auf Beton, fester Rahmen um die Öffnung'),
    layers: [
      ['lime-cement-render', 8, 'rain', 'finish'],
      ['mineral-wool', 280, 'insulating'],
      ['reinforced-concrete', 200, 'bearing', 'airtight'],
      ['gypsum-plaster', 15, 'finish'],
    ],
    edges: { 'mineral-wool': ['installation-board', 40] },
    cover_mm: 40,
    lining_mm: 15,
    position_mm: -200,
  },
  frame: {
    name: 'Timber-aluminium 110',
    profile: 'timber-aluminium-110',
    material: 'timber-aluminium',
    movement_mm_m: specified(0.5),
  },
  opening: { name: 'W-52', width_mm: 1600, height_mm: 1500, position_mm: -200 },
  joint: { name: 'Joint in the rigid frame', planned_mm: specified(15), tolerance_mm: specified(1) },
  seals: [
    {
      kind: 'multifunction-tape',
      plane: 'middle',
      least_mm: specified(10),
      most_mm: specified(20),
      width_mm: specified(66),
      sdOuter_m: specified(0.4),
      class: specified('MF1'),
    },
    {
      kind: 'membrane',
      plane: 'inner',
      bondFrame_mm: specified(15),
      bondWall_mm: specified(50),
      slack_mm: specified(8),
      onReveal_mm: specified(60),
      sd_m: specified(20),
    },
  ],
  survey: {
    widths_mm: { top: measured(1628), middle: measured(1630), bottom: measured(1632) },
    heights_mm: { left: measured(1528), centre: measured(1530), right: measured(1532) },
  },
  mullions: [[800, 90]],
  fixings: [
    {
      ...bracket,
      positions_mm: { sill: [240, 800, 1360] },
      lever_mm: specified(120),
      resistance_N: specified(2500),
    },
    { ...bracket, counts: counts(3, 4), resistance_N: specified(1200) },
  ],
  blocks: distancesAt(1500),
  sill: {
    ...sillAsItShouldBe,
    length_mm: specified(1600),
    secondPlane: specified('membrane'),
  },
  asked: {
    exposure: specified('covered'),
    mass_kg: specified(183),
    sillHeight_mm: specified(1050),
    fall_mm: specified(3000),
  },
  told: {
    wind_Pa: specified(550),
    lintel_mm: specified(2),
    inertia_cm4: specified(500),
    modulus_N_mm2: specified(11_000),
    flank_deg: measured(1),
    overlength_pct: specified(1),
    lap_mm: specified(50),
    work_C: measured(12),
    openFor: specified(1.2),
    plumb_mm_m: measured(1),
    bow_mm_m: measured(0.5),
    frameMoisture_pct: measured(13),
    nominalWidth_mm: specified(1630),
    nominalHeight_mm: specified(1530),
    corners: specified('closed'),
    airLine: specified('continuous'),
    plasterEdge: specified('bead'),
    substrate: measured('sound'),
    peelTest: measured('passed'),
    flankFace: measured('flush'),
    tapeCorners: specified('butted'),
    workDry: measured('yes'),
    workOrder: specified('seal-first'),
    rainClass: specified('9A'),
    rainAsked: specified('7A'),
    drains: measured('free'),
    laps: specified('shed'),
    deflection: specified('C'),
    fixingMetal: specified('zinc'),
    screening: specified('new'),
    replaced: specified('new'),
  },
}) // prettier-ignore
