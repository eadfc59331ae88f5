import { type Field, isInField } from '../field'
import type { HatchLines } from '../hatch'
import type { Motif } from './motif'

/** Draws groups of three short oblique lines on the middle of the part: glass. */
export const drawTicks = (
  field: Field,
  ticks: Extract<Motif, { kind: 'ticks' }>,
  close: number,
  out: HatchLines,
): void => {
  const angle = (ticks.angle_deg * Math.PI) / 180
  const [halfU, halfV] = [(ticks.length_mm / 2) * Math.cos(angle), (ticks.length_mm / 2) * Math.sin(angle)]
  const apart = (ticks.apart_mm * close) / Math.sin(angle)
  const v = field.size[1] / 2
  const every = ticks.every_mm * close
  for (let group = Math.floor((field.low[0] - first_mm) / every); ; group++) {
    const middle = group * every + first_mm
    if (middle - ticks.length_mm > field.high[0]) return
    for (const tick of [-1, 0, 1]) {
      const u = middle + tick * apart
      drawInside(field, [u - halfU, v - halfV, u + halfU, v + halfV], out)
    }
  }
}

/** The first group stands this far from the end of the part. Ours. */
const first_mm = 5

const drawInside = (
  field: Field,
  [u0, v0, u1, v1]: readonly [number, number, number, number],
  out: HatchLines,
): void => {
  const shares = [0, 1]
  const { edges } = field
  for (let at = 0; at < edges.length; at += 4) {
    const share = crossing([u0, v0, u1, v1], edges, at)
    if (share !== undefined) shares.push(share)
  }
  shares.sort((a, b) => a - b)
  for (let at = 0; at + 1 < shares.length; at++) {
    const [from, to] = [shares[at]!, shares[at + 1]!]
    const middle = (from + to) / 2
    if (to - from < 0.05 || !isInField(field, u0 + middle * (u1 - u0), v0 + middle * (v1 - v0))) continue
    out.lines.push([
      ...field.toPaper(u0 + from * (u1 - u0), v0 + from * (v1 - v0)),
      ...field.toPaper(u0 + to * (u1 - u0), v0 + to * (v1 - v0)),
    ])
  }
}

const crossing = (
  [u0, v0, u1, v1]: readonly [number, number, number, number],
  edges: Float64Array,
  at: number,
): number | undefined => {
  const [eu, ev] = [edges[at + 2]! - edges[at]!, edges[at + 3]! - edges[at + 1]!]
  const across = (u1 - u0) * ev - (v1 - v0) * eu
  if (across === 0) return undefined
  const [du, dv] = [edges[at]! - u0, edges[at + 1]! - v0]
  const share = (du * ev - dv * eu) / across
  const along = (du * (v1 - v0) - dv * (u1 - u0)) / across
  return 0 < share && share < 1 && 0 <= along && along <= 1 ? share : undefined
}
