import { type Field, isInField, isOffEdges } from '../field'
import type { HatchLines } from '../hatch'
import type { Motif } from './motif'

/** Sets circles of two sizes in staggered rows; the outline cuts those that it crosses. */
export const drawCircles = (
  field: Field,
  circles: Extract<Motif, { kind: 'circles' }>,
  close: number,
  out: HatchLines,
): void => {
  const [row_mm, step_mm] = [circles.row_mm * close, circles.step_mm * close]
  const [large, small] = circles.diameters_mm
  const reach = large / 2
  const [low, high] = field.seen ?? [field.low, field.high]
  const firstRow = Math.floor((low[1] - reach) / row_mm)
  for (let row = firstRow; (row + 0.5) * row_mm - reach < high[1]; row++) {
    const v = (row + 0.5) * row_mm
    const start = (row % 2 === 0 ? 0 : circles.stagger_mm * close) + step_mm / 2
    const first = Math.floor((low[0] - reach - start) / step_mm)
    for (let at = first; start + at * step_mm - reach < high[0]; at++) {
      setCircle(field, start + at * step_mm, v, ((at + row) % 2 === 0 ? large : small) / 2, out)
    }
  }
}

const setCircle = (field: Field, u: number, v: number, radius: number, out: HatchLines): void => {
  if (isOffEdges(field, u, v, radius)) {
    if (!isInField(field, u, v)) return
    const [x, y] = field.toPaper(u, v)
    out.rings.push(x, y, radius)
  } else arcsInside(field, u, v, radius, out)
}

const corners = 24

const arcsInside = (field: Field, u: number, v: number, radius: number, out: HatchLines): void => {
  const at = (turn: number): [number, number] => {
    const angle = (turn * 2 * Math.PI) / corners
    return [u + radius * Math.cos(angle), v + radius * Math.sin(angle)]
  }
  const near = levelWith(field, v - radius, v + radius)
  const isIn = (turn: number): boolean => {
    const place = at(turn)
    return isInField(near, place[0], place[1])
  }
  const start = Array.from({ length: corners }, (_, turn) => turn).find(turn => !isIn(turn))
  if (start === undefined) return
  let arc: number[] = []
  for (let turn = start; turn <= start + corners; turn++) {
    const now = isIn(turn)
    if (now && arc.length === 0) arc.push(...field.toPaper(...at(entry(isIn, turn, turn - 1))))
    if (now) arc.push(...field.toPaper(...at(turn)))
    if (now || arc.length === 0) continue
    arc.push(...field.toPaper(...at(entry(isIn, turn - 1, turn))))
    out.lines.push(arc)
    arc = []
  }
}

/** A field with those edges only that reach into a range of v: what is inside is told there by no others. */
const levelWith = (field: Field, low: number, high: number): Field => {
  const { edges } = field
  const near: number[] = []
  for (let at = 0; at < edges.length; at += 4) {
    const [v0, v1] = [edges[at + 1]!, edges[at + 3]!]
    if (Math.max(v0, v1) < low - aside_mm || high + aside_mm < Math.min(v0, v1)) continue
    near.push(edges[at]!, v0, edges[at + 2]!, v1)
  }
  return { ...field, edges: Float64Array.from(near) }
}

/** Edges that touch a range count as reaching into it. */
const aside_mm = 1e-6

/** The last place inside between one inside and one outside, to a thousandth of a circle's corner. */
const entry = (isIn: (turn: number) => boolean, inside: number, outside: number): number => {
  let [good, bad] = [inside, outside]
  for (let halving = 0; halving < 8; halving++) {
    const middle = (good + bad) / 2
    if (isIn(middle)) good = middle
    else bad = middle
  }
  return good
}
