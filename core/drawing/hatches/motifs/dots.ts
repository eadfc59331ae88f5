import { type Field, isOffEdges } from '../field'
import type { HatchLines } from '../hatch'
import type { Motif } from './motif'
import { scanRows } from './straight-rows'

/** Sets dots in staggered rows. A dot that would be cut by the outline is left out. */
export const drawDots = (
  field: Field,
  dots: Extract<Motif, { kind: 'dots' }>,
  close: number,
  out: HatchLines,
): void => {
  const angle = (dots.angle_deg * Math.PI) / 180
  const cos = Math.cos(angle)
  const sin = Math.sin(angle)
  const radius = dots.diameter_mm / 2
  const clear = radius + besideOutline_mm
  const [row_mm, step_mm] = [dots.row_mm * close, dots.step_mm * close]
  const rows = { angle_deg: dots.angle_deg, pitch_mm: row_mm, offset_mm: dots.offset_mm * close }
  scanRows(field, rows, (row, from, to) => {
    const across = row * row_mm + rows.offset_mm
    const start = row % 2 === 0 ? 0 : dots.stagger_mm * close
    const first = Math.ceil((from + clear - start) / step_mm)
    for (let along = start + first * step_mm; along < to - clear; along += step_mm) {
      const u = along * cos - across * sin
      const v = along * sin + across * cos
      if (!isOffEdges(field, u, v, clear)) continue
      const [x, y] = field.toPaper(u, v)
      out.dots.push(x, y, radius)
    }
  })
}

/** Half the width of an outline: a dot that touches it is lost in it. Ours. */
const besideOutline_mm = 0.25
