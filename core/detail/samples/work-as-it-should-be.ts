import { specified } from '../../units'
import type { Fixing } from '../fixing'
import type { Sill } from '../sill'
import type { Told } from '../told'

/** What rules ask of the work and of the element, told as it is where all is well. Invented for samples. */
export const workAsItShouldBe: Told = {
  wind_Pa: specified(500),
  lintel_mm: specified(0),
  flank_deg: specified(1),
  overlength_pct: specified(1),
  lap_mm: specified(50),
  work_C: specified(12),
  plumb_mm_m: specified(1),
  bow_mm_m: specified(0.5),
  corners: specified('closed'),
  airLine: specified('continuous'),
  plasterEdge: specified('bead'),
  substrate: specified('sound'),
  peelTest: specified('passed'),
  compatible: specified('proven'),
  flankFace: specified('flush'),
  tapeCorners: specified('butted'),
  workDry: specified('yes'),
  workOrder: specified('seal-first'),
  drains: specified('free'),
  laps: specified('shed'),
  fixingMetal: specified('zinc'),
  screening: specified('new'),
  replaced: specified('new'),
}

/** The same without what nobody has told: it stays unknown. */
export const workWithout = (...keys: readonly (keyof Told)[]): Told =>
  Object.fromEntries(Object.entries(workAsItShouldBe).filter(([key]) => !keys.some(it => it === key)))

/** An outside sill as it should be: fall, overhang, upstands, play, and a drained plane below it. Invented for samples. */
export const sillAsItShouldBe: Omit<Sill, 'id'> = {
  material: 'aluminium',
  thickness_mm: specified(2),
  slope_deg: specified(5),
  overhang_mm: specified(40),
  upstand_mm: specified(25),
  endDam_mm: specified(20),
  endGap_mm: specified(5),
  secondPlane: specified('tray'),
}

/** Timber as dry as it should be, of the frame and in the wall. */
export const timberAsItShouldBe: Told = { frameMoisture_pct: specified(13), wallMoisture_pct: specified(15) }

/** A frame screw of 7.5 mm as its assessment tells it. Invented for samples. */
export const assessedScrew = {
  core_mm: specified(5.5),
  steel_N_mm2: specified(600),
  resistance_N: specified(900),
} as const satisfies Partial<Fixing>
