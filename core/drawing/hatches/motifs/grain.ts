import type { Field } from '../field'
import type { HatchLines } from '../hatch'
import { drawCurvedRows } from './curved-rows'
import type { Motif } from './motif'

const samples = 24

/** Draws long, slightly uneven lines along the piece: timber cut along its grain. */
export const drawGrain = (
  field: Field,
  grain: Extract<Motif, { kind: 'grain' }>,
  close: number,
  out: HatchLines,
): void => {
  const row_mm = grain.row_mm * close
  const middle = (row: number) => (row + 0.5 + unevenness * (scatter(row) - 0.5)) * row_mm
  drawCurvedRows(
    field,
    {
      step_mm: grain.period_mm / samples,
      rise_mm: grain.rise_mm,
      middle,
      height: (row, sample) => {
        const turn = sample / samples + scatter(row + 1000)
        return middle(row) + grain.rise_mm * Math.sin(2 * Math.PI * turn)
      },
      between: (low, high) => [
        Math.floor((low - grain.rise_mm) / row_mm) - 1,
        Math.ceil((high + grain.rise_mm) / row_mm) + 1,
      ],
    },
    out,
  )
}

/** How much of the pitch a line may be off. Ours: a quarter each way would let lines touch. */
const unevenness = 0.4

/** A number from 0 to 1 that looks like chance and is the same every time. */
const scatter = (row: number): number => {
  const mixed = Math.imul(row ^ 0x5bd1e995, 0x9e3779b1)
  return ((mixed ^ (mixed >>> 15)) >>> 0) / 0x100000000
}
