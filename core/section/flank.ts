import type { Outline, Point } from '../geometry'
import type { Layout } from './layout'

/** The flank of the reveal behind the frame, as the bearing layer forms it. */
export type Flank = {
  /** from the room-side end of the joint to the inner face of the bearing layer; empty where the frame stands beyond it */
  readonly path: readonly Point[]
  /** where the flank lies at a depth, in x: what stands behind the frame is laid against it */
  readonly at: (y_mm: number) => number
}

export const flankOf = (at: Layout): Flank => {
  const from = at.position_mm + at.depth_mm
  const to = at.depths.bearing_mm
  const turned =
    at.reveal.form === 'splayed' ? Math.tan((Math.PI / 180) * (at.reveal.splay_deg?.value ?? 0)) : 0
  const nib = nibOf(at)
  const place = (y_mm: number): number => {
    if (nib?.inside && y_mm >= to - nib.depth_mm) return nib.lap_mm
    return y_mm > from ? -turned * (y_mm - from) : 0
  }
  if (from >= to) return { path: [], at: place }
  if (nib?.inside) {
    const face = Math.max(from, to - nib.depth_mm)
    return { path: [[0, from], [0, face], [nib.lap_mm, face], [nib.lap_mm, to]], at: place } // prettier-ignore
  }
  return { path: [[0, from], [place(to), to]], at: place } // prettier-ignore
}

/** The flank and on round its edge along the inner face of the bearing layer: what a membrane may be bonded to. */
export const bondFlank = (at: Layout): readonly Point[] => {
  const { path } = flankOf(at)
  const end = path.at(-1)
  return end === undefined ? [] : [...path, [-at.reach_mm, end[1]]]
}

/** The nib of a rebate: at the outside it covers the frame before it, at the inside it holds it behind. */
export type Nib = { readonly inside: boolean; readonly depth_mm: number; readonly lap_mm: number }

export const nibOf = (at: Layout): Nib | undefined => {
  const { form, nibDepth_mm, nibLap_mm } = at.reveal
  if ((form !== 'inner-rebate' && form !== 'outer-rebate') || at.side === 'sill') return undefined
  if (nibDepth_mm === undefined || nibLap_mm === undefined) return undefined
  return { inside: form === 'outer-rebate', depth_mm: nibDepth_mm.value, lap_mm: nibLap_mm.value }
}

/** The bearing layer with its nib or its splay, counter-clockwise. */
export const bearingOutline = (at: Layout): Outline => {
  const { bearing_mm } = at.depths
  const left = -at.reach_mm
  const nib = nibOf(at)
  if (nib === undefined) {
    const from = Math.min(Math.max(0, at.position_mm + at.depth_mm), bearing_mm)
    return [[left, 0], [0, 0], [0, from], [flankOf(at).at(bearing_mm), bearing_mm], [left, bearing_mm]] // prettier-ignore
  }
  const [from, to] = nib.inside ? [bearing_mm - nib.depth_mm, bearing_mm] : [0, nib.depth_mm]
  return nib.inside
    ? [[left, 0], [0, 0], [0, from], [nib.lap_mm, from], [nib.lap_mm, to], [left, to]]
    : [[left, 0], [nib.lap_mm, 0], [nib.lap_mm, to], [0, to], [0, bearing_mm], [left, bearing_mm]] // prettier-ignore
}
