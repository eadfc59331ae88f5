import type { Field } from '../field'

/** A stretch of a row inside a field: row number, and where it enters and leaves along the row. */
export type Stretch = (row: number, from: number, to: number) => void

/**
 * Scans a field by parallel rows at `row * pitch + offset`, turned by an angle, and reports each stretch inside and seen.
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
  const seen = seenAlong(field, cos, sin)
  const lowest = Math.floor((seen.across[0] - rows.offset_mm) / rows.pitch_mm)
  const highest = Math.ceil((seen.across[1] - rows.offset_mm) / rows.pitch_mm)
  const crossings = new Map<number, number[]>()
  for (let at = 0; at < edges.length; at += 4) {
    const s0 = edges[at]! * cos + edges[at + 1]! * sin
    const t0 = (edges[at + 1]! * cos - edges[at]! * sin - rows.offset_mm) / rows.pitch_mm
    const s1 = edges[at + 2]! * cos + edges[at + 3]! * sin
    const t1 = (edges[at + 3]! * cos - edges[at + 2]! * sin - rows.offset_mm) / rows.pitch_mm
    const slope = (s1 - s0) / (t1 - t0)
    const end = Math.min(Math.ceil(Math.max(t0, t1)), highest + 1)
    for (let row = Math.max(Math.ceil(Math.min(t0, t1)), lowest); row < end; row++) {
      const s = s0 + (row - t0) * slope
      const there = crossings.get(row)
      if (there) there.push(s)
      else crossings.set(row, [s])
    }
  }
  const [first, last] = seen.along
  reportPairs(crossings, (row, from, to) => {
    if (from < last && first < to) report(row, Math.max(from, first), Math.min(to, last))
  })
}

/** The extent of what is seen, along rows that are turned and across them; all there is where the whole field is seen. */
const seenAlong = (
  { seen }: Field,
  cos: number,
  sin: number,
): { readonly along: readonly [number, number]; readonly across: readonly [number, number] } => {
  if (seen === undefined) return { along: [-Infinity, Infinity], across: [-Infinity, Infinity] }
  const [low, high] = seen
  const corners = [low, [low[0], high[1]], [high[0], low[1]], high] as const
  const [along, across] = [
    corners.map(([u, v]) => u * cos + v * sin),
    corners.map(([u, v]) => v * cos - u * sin),
  ]
  return {
    along: [Math.min(...along), Math.max(...along)],
    across: [Math.min(...across), Math.max(...across)],
  }
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
