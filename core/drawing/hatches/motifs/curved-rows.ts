import type { Field } from '../field'
import type { HatchLines } from '../hatch'
import { reportPairs } from './straight-rows'

/**
 * Rows that are curves over u: the height of row `row` at sample `sample` (u = sample × step), never more than
 * `rise` off its `middle`. Between samples a row is straight.
 */
export type CurvedRows = {
  readonly step_mm: number
  readonly rise_mm: number
  readonly middle: (row: number) => number
  readonly height: (row: number, sample: number) => number
  /** the rows whose band touches a range of v */
  readonly between: (low: number, high: number) => readonly [first: number, last: number]
}

/** Draws the stretches of curved rows that lie inside a field. */
export const drawCurvedRows = (field: Field, rows: CurvedRows, out: HatchLines): void => {
  const crossings = new Map<number, number[]>()
  const { edges } = field
  const [low, high] = field.seen ?? everywhere
  const [firstSeen, lastSeen] = field.seen ? rows.between(low[1], high[1]) : [-Infinity, Infinity]
  for (let at = 0; at < edges.length; at += 4) {
    const [v0, v1] = [edges[at + 1]!, edges[at + 3]!]
    const [first, last] = rows.between(Math.min(v0, v1), Math.max(v0, v1))
    for (let row = Math.max(first, firstSeen); row <= Math.min(last, lastSeen); row++) {
      const there = crossings.get(row) ?? []
      crossEdge(rows, row, [edges[at]!, v0, edges[at + 2]!, v1], there)
      if (there.length > 0) crossings.set(row, there)
    }
  }
  reportPairs(crossings, (row, from, to) => {
    if (to <= low[0] || high[0] <= from) return
    out.lines.push(stretchOf(field, rows, row, Math.max(from, low[0]), Math.min(to, high[0])))
  })
}

const everywhere = [
  [-Infinity, -Infinity],
  [Infinity, Infinity],
] as const

const stretchOf = (field: Field, rows: CurvedRows, row: number, from: number, to: number): number[] => {
  const line: number[] = []
  const add = (u: number) => {
    const at = field.toPaper(u, heightAt(rows, row, u))
    line.push(at[0], at[1])
  }
  add(from)
  const last = Math.ceil(to / rows.step_mm - 1e-6)
  for (let sample = Math.floor(from / rows.step_mm + 1e-6) + 1; sample < last; sample++)
    add(sample * rows.step_mm)
  add(to)
  return line
}

const heightAt = (rows: CurvedRows, row: number, u: number): number => {
  const sample = Math.floor(u / rows.step_mm)
  const share = u / rows.step_mm - sample
  const low = rows.height(row, sample)
  return share === 0 ? low : low + share * (rows.height(row, sample + 1) - low)
}

/**
 * Adds where an edge crosses a row. The edge is looked at where it enters and leaves the row's band and at every
 * sample between, so both are straight in each piece; above and below are told apart at those places only, and
 * every place is told once, so crossings stay paired also where a corner lies on the row.
 */
const crossEdge = (
  rows: CurvedRows,
  row: number,
  [u0, v0, u1, v1]: readonly [number, number, number, number],
  crossings: number[],
): void => {
  const above = (share: number) => {
    const u = u0 + share * (u1 - u0)
    return v0 + share * (v1 - v0) - heightAt(rows, row, u)
  }
  let [share, gap] = [0, v0 - heightAt(rows, row, u0)]
  const goTo = (next: number, nextGap: number) => {
    if (gap >= 0 !== nextGap >= 0) {
      const cross = share + (next - share) * (gap / (gap - nextGap))
      crossings.push(u0 + cross * (u1 - u0))
    }
    share = next
    gap = nextGap
  }
  for (const stop of stopsOf(rows, row, [u0, v0, u1, v1])) goTo(stop, above(stop))
  goTo(1, v1 - heightAt(rows, row, u1))
}

const stopsOf = (
  rows: CurvedRows,
  row: number,
  [u0, v0, u1, v1]: readonly [number, number, number, number],
): number[] => {
  const [low, high] = [rows.middle(row) - rows.rise_mm, rows.middle(row) + rows.rise_mm]
  const shareAt = (v: number) => (v - v0) / (v1 - v0)
  const [in1, in2] = v0 === v1 ? [0, 1] : [shareAt(low), shareAt(high)]
  const from = Math.max(0, Math.min(in1, in2))
  const to = Math.min(1, Math.max(in1, in2))
  if (from >= to) return []
  const stops = [from, to]
  const [fromU, toU] = [u0 + from * (u1 - u0), u0 + to * (u1 - u0)]
  const last = Math.max(fromU, toU) / rows.step_mm
  for (let sample = Math.ceil(Math.min(fromU, toU) / rows.step_mm); sample <= last; sample++) {
    if (u1 !== u0) stops.push((sample * rows.step_mm - u0) / (u1 - u0))
  }
  return stops.filter(it => from <= it && it <= to).sort((a, b) => a - b)
}
