import type { Field } from '../field'

/** A stretch of a row inside a field: row number, and where it enters and leaves along the row. */
export type Stretch = (row: number, from: number, to: number) => void

/**
 * Scans a field by parallel rows at `row * pitch + offset`, turned by an angle, and reports each stretch inside.
 * An edge counts from its lower end up to, not including, its upper end: rows through corners stay paired.
 */
export const scanRows = (
  field: Field,
  rows: { readonly angle_deg: number; readonly pitch_mm: number; readonly offset_mm: number },
  report: Stretch,
): void => {
  const angle = (rows.angle_deg * Math.PI) / 180
  const cos = Math.cos(angle)
  const sin = Math.sin(angle)
  const { edges } = field
  const crossings = new Map<number, number[]>()
  for (let at = 0; at < edges.length; at += 4) {
    const s0 = edges[at]! * cos + edges[at + 1]! * sin
    const t0 = (edges[at + 1]! * cos - edges[at]! * sin - rows.offset_mm) / rows.pitch_mm
    const s1 = edges[at + 2]! * cos + edges[at + 3]! * sin
    const t1 = (edges[at + 3]! * cos - edges[at + 2]! * sin - rows.offset_mm) / rows.pitch_mm
    const slope = (s1 - s0) / (t1 - t0)
    const end = Math.ceil(Math.max(t0, t1))
    for (let row = Math.ceil(Math.min(t0, t1)); row < end; row++) {
      const s = s0 + (row - t0) * slope
      const there = crossings.get(row)
      if (there) there.push(s)
      else crossings.set(row, [s])
    }
  }
  reportPairs(crossings, report)
}

/** Sorts the crossings of each row and reports them in pairs, rows in rising order. */
export const reportPairs = (crossings: ReadonlyMap<number, number[]>, report: Stretch): void => {
  for (const row of [...crossings.keys()].sort((a, b) => a - b)) {
    const there = (crossings.get(row) ?? []).sort((a, b) => a - b)
    for (let at = 0; at + 1 < there.length; at += 2) {
      if (there[at + 1]! - there[at]! > shortest_mm) report(row, there[at]!, there[at + 1]!)
    }
  }
}

/** Shorter pieces of lines are blots in print. Ours. */
const shortest_mm = 0.05
