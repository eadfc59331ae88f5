import type { Field } from '../field'
import type { HatchLines } from '../hatch'
import { drawCircles } from './circles'
import { drawDots } from './dots'
import { drawGrain } from './grain'
import type { Motif } from './motif'
import { drawRings } from './rings'
import { drawTicks } from './ticks'
import { drawWaves } from './waves'

type Drawers = {
  readonly [K in Motif['kind']]: (
    field: Field,
    motif: Extract<Motif, { kind: K }>,
    close: number,
    out: HatchLines,
  ) => void
}

/** How each motif is drawn into a field. */
export const drawers: Drawers = {
  dots: drawDots,
  circles: drawCircles,
  waves: drawWaves,
  rings: drawRings,
  grain: drawGrain,
  ticks: drawTicks,
}
