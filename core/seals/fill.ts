import { drawnWidth_mm } from './bay'
import { type Bay, type Bond, mostDepth_mm } from './seal-kind'

/** What a fill touches: both flanks over the depth that it fills. */
export const fillBonds = (bay: Bay): readonly Bond[] => {
  const width_mm = Math.min(mostDepth_mm, bay.to_mm - bay.from_mm)
  return [
    { to: 'wall', width_mm },
    { to: 'frame', width_mm },
  ]
}

/** Litres that a length of joint holds between the depths of its bay. */
export const filled_l = (bay: Bay, length_mm: number): number =>
  (drawnWidth_mm(bay) * (bay.to_mm - bay.from_mm) * length_mm) / 1e6
