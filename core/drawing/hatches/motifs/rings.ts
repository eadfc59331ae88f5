import { type Field, isInField } from '../field'
import type { HatchLines } from '../hatch'
import type { Motif } from './motif'

/** Draws year rings around a centre off the part's lower left corner: timber cut across its grain. */
export const drawRings = (
  field: Field,
  rings: Extract<Motif, { kind: 'rings' }>,
  close: number,
  out: HatchLines,
): void => {
  const step_mm = rings.step_mm * close
  const cu = rings.centre[0] * field.size[0]
  const cv = rings.centre[1] * field.size[1]
  const crossings = new Map<number, number[]>()
  const { edges } = field
  for (let at = 0; at < edges.length; at += 4) {
    const a: Place = [edges[at]! - cu, edges[at + 1]! - cv]
    const b: Place = [edges[at + 2]! - cu, edges[at + 3]! - cv]
    const foot = footOf(a, b)
    if (foot) {
      crossPiece(a, foot, step_mm, crossings)
      crossPiece(foot, b, step_mm, crossings)
    } else crossPiece(a, b, step_mm, crossings)
  }
  for (const [ring, angles] of [...crossings].sort((a, b) => a[0] - b[0])) {
    const radius = ring * step_mm
    const at = (angle: number): Place => [cu + radius * Math.cos(angle), cv + radius * Math.sin(angle)]
    for (const [from, to] of arcsOf(angles, angle => isInField(field, ...at(angle)))) {
      const arc = anglesBetween(from, to, chord_mm / radius).flatMap(angle => [
        ...field.toPaper(...at(angle)),
      ])
      out.lines.push(arc)
    }
  }
}

/**
 * The arcs between crossings that lie inside. A ring is a circle: where its start lies inside, the last crossing is
 * joined with the first.
 */
const arcsOf = (
  crossings: readonly number[],
  isInside: (angle: number) => boolean,
): readonly (readonly [number, number])[] => {
  const angles = crossings.toSorted((a, b) => a - b)
  const [first] = angles
  if (first === undefined || angles.length < 2) return []
  const turned = [...angles.slice(1), first + 2 * Math.PI]
  // where an outline was clipped two crossings may be one place: the widest stretch tells what is inside
  const widthAt = (at: number) => (turned[at] ?? 0) - (angles[at] ?? 0)
  const widest = angles.reduce((best, _, at) => (widthAt(at) > widthAt(best) ? at : best), 0)
  const isIn = isInside(((angles[widest] ?? 0) + (turned[widest] ?? 0)) / 2)
  const around = isIn === (widest % 2 === 0) ? angles : turned
  return around.flatMap((from, at) => {
    const to = around[at + 1]
    return at % 2 === 0 && to !== undefined ? [[from, to] as const] : []
  })
}

/** The ends of an arc and places between them that are fixed to the ring, wherever the arc begins. */
const anglesBetween = (from: number, to: number, step: number): readonly number[] => {
  const between: number[] = []
  for (let at = Math.floor(from / step) + 1; at * step < to; at++) between.push(at * step)
  return [from, ...between, to]
}

type Place = readonly [u: number, v: number]

/** A chord of this length leaves its arc by less than 0.02 mm from a radius of 15 mm up. Ours. */
const chord_mm = 1.5

/** The point of an edge nearest to the centre, when it lies between the ends. */
const footOf = ([au, av]: Place, [bu, bv]: Place): Place | undefined => {
  const [du, dv] = [bu - au, bv - av]
  const share = -(au * du + av * dv) / (du * du + dv * dv)
  return 0 < share && share < 1 ? [au + share * du, av + share * dv] : undefined
}

/** Along such a piece the distance to the centre only rises or only falls, so each ring is crossed once at most. */
const crossPiece = (a: Place, b: Place, step_mm: number, crossings: Map<number, number[]>): void => {
  const [ra, rb] = [Math.hypot(...a) / step_mm, Math.hypot(...b) / step_mm]
  const end = Math.ceil(Math.max(ra, rb))
  for (let ring = Math.ceil(Math.min(ra, rb)); ring < end; ring++) {
    const angle = angleAt(a, b, ring * step_mm)
    const there = crossings.get(ring)
    if (there) there.push(angle)
    else crossings.set(ring, [angle])
  }
}

const angleAt = ([au, av]: Place, [bu, bv]: Place, radius: number): number => {
  const [du, dv] = [bu - au, bv - av]
  const length2 = du * du + dv * dv
  const half = au * du + av * dv
  const root = Math.sqrt(Math.max(0, half * half - length2 * (au * au + av * av - radius * radius)))
  const rising = Math.hypot(bu, bv) > Math.hypot(au, av)
  const share = Math.min(1, Math.max(0, (-half + (rising ? root : -root)) / length2))
  return Math.atan2(av + share * dv, au + share * du)
}
