import type { Field } from '../field'
import type { HatchLines } from '../hatch'
import { drawCurvedRows } from './curved-rows'
import type { Motif } from './motif'

const samples = 16

/** Draws wave rows along the layer, divided evenly into its thickness; alternate rows start half a period later. */
export const drawWaves = (
  field: Field,
  waves: Extract<Motif, { kind: 'waves' }>,
  close: number,
  out: HatchLines,
): void => {
  const count = Math.max(1, Math.round(field.size[1] / (waves.row_mm * close)))
  const row_mm = field.size[1] / count
  const shrink = Math.min(1, row_mm / waves.row_mm)
  const rise_mm = waves.rise_mm * shrink
  const period = Array.from({ length: samples }, (_, at) => rise_mm * Math.sin((2 * Math.PI * at) / samples))
  const middle = (row: number) => (row + 0.5) * row_mm
  drawCurvedRows(
    field,
    {
      step_mm: (waves.period_mm * shrink) / samples,
      rise_mm,
      middle,
      height: (row, sample) => {
        const at = (sample + (row % 2 === 0 ? 0 : samples / 2)) % samples
        return middle(row) + (period[at < 0 ? at + samples : at] ?? 0)
      },
      between: (low, high) => [
        Math.ceil((low - rise_mm) / row_mm - 0.5),
        Math.floor((high + rise_mm) / row_mm - 0.5),
      ],
    },
    out,
  )
}
