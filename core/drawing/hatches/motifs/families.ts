import type { Field } from '../field'
import type { Family, HatchLines } from '../hatch'
import { scanRows } from './straight-rows'

/** Draws parallel lines, full or dashed, into a field. `close` shrinks the pitch. */
export const drawFamily = (field: Field, family: Family, close: number, out: HatchLines): void => {
  const angle = (family.angle_deg * Math.PI) / 180
  const cos = Math.cos(angle)
  const sin = Math.sin(angle)
  const pitch_mm = family.pitch_mm * close
  const offset_mm = (family.offset_mm ?? 0) * close
  const draw = (from: number, to: number, across: number) => {
    const [x0, y0] = field.toPaper(from * cos - across * sin, from * sin + across * cos)
    const [x1, y1] = field.toPaper(to * cos - across * sin, to * sin + across * cos)
    out.lines.push([x0, y0, x1, y1])
  }
  const dash = family.dash_mm ?? []
  scanRows(field, { angle_deg: family.angle_deg, pitch_mm, offset_mm }, (row, from, to) => {
    const across = row * pitch_mm + offset_mm
    if (dash.length === 0) draw(from, to, across)
    else dashes(dash, row % 2 === 0 ? 0 : (family.stagger_mm ?? 0), from, to, (a, b) => draw(a, b, across))
  })
}

/** Cuts a stretch into dashes whose places are fixed to the row, not to where the stretch begins. */
const dashes = (
  dash: readonly number[],
  start: number,
  from: number,
  to: number,
  draw: (from: number, to: number) => void,
): void => {
  const period = dash.reduce((sum, it) => sum + it, 0)
  for (let at = start + Math.floor((from - start) / period) * period; at < to; at += period) {
    let on = at
    for (let part = 0; part < dash.length; part += 2) {
      const off = on + (dash[part] ?? 0)
      const a = Math.max(on, from)
      const b = Math.min(off, to)
      if (b - a > shortestDash_mm) draw(a, b)
      on = off + (dash[part + 1] ?? 0)
    }
  }
}

/** Remains of dashes below this are left out: they read as dirt. Ours. */
const shortestDash_mm = 0.2
