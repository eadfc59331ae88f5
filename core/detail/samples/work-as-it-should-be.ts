import { specified } from '../../units'
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
  frameMoisture_pct: specified(13),
  wallMoisture_pct: specified(4),
  corners: specified('closed'),
  airLine: specified('continuous'),
  plasterEdge: specified('bead'),
  substrate: specified('sound'),
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
