import type { Outline, Point } from '../geometry'
import type { Layout } from './layout'

/** The flank of the reveal behind the frame, as the bearing layer forms it. */
export type Flank = {
  /** from the room-side end of the joint to the inner face of the bearing layer; empty where the frame stands beyond it */
  readonly path: readonly Point[]
  /** where the flank lies at a depth, in x: what stands behind the frame is laid against it */
  readonly at: (y_mm: number) => number
  /** the corners of the flank that a finish lies on: from the frame, or from the face of the nib behind it, to the room */
  readonly finished: readonly Point[]
}

export const flankOf = (at: Layout): Flank => {
  const from = at.stands.to_mm
  const { bearing_mm: to, inner_mm: room } = at.depths
  const nib = nibOf(at)
  if (nib?.inside) {
    const face = Math.max(from, to - nib.depth_mm)
    const place = (y_mm: number): number => (y_mm >= to - nib.depth_mm ? nib.lap_mm : 0)
    const finished: readonly Point[] = [[nib.lap_mm, face], [nib.lap_mm, room]] // prettier-ignore
    if (from >= to) return { path: [], at: place, finished }
    const before: readonly Point[] = face > from ? [[0, from]] : []
    return { path: [...before, [0, face], [nib.lap_mm, face], [nib.lap_mm, to]], at: place, finished } // prettier-ignore
  }
  const turned = Math.tan((Math.PI / 180) * splayOf(at))
  const place = (y_mm: number): number => (y_mm > from ? -turned * (y_mm - from) : 0)
  const corners = [from, ...(from < to && to < room ? [to] : []), room]
  return {
    path: from < to ? [[0, from], [place(to), to]] : [],
    at: place,
    finished: corners.map(y => [place(y), y]),
  } // prettier-ignore
}

const splayOf = ({ reveal }: Layout): number =>
  reveal.form === 'splayed' ? (reveal.splay_deg?.value ?? 0) : 0

/**
 * Where a membrane that comes from the room-side end of the joint is bonded: along the flank and on round its edge on
 * the inner face of the bearing layer. `lead` is what it runs along before, without holding there.
 */
export const bondFlank = (
  at: Layout,
): { readonly lead: readonly Point[]; readonly flank: readonly Point[] } => {
  const { path } = flankOf(at)
  const [start] = path
  const end = path.at(-1)
  if (start === undefined || end === undefined) return { lead: [], flank: [] }
  const round: readonly Point[] = [...path, [-at.reach_mm, end[1]]]
  // before the bearing layer only what closes the insulation there may hold it
  if (start[1] >= 0 || isFirmAlong(at, start[1], 0)) return { lead: [], flank: round }
  return { lead: [start], flank: [[0, 0], ...round.slice(1)] }
}

/** Whether everything before the bearing layer holds what is bonded to it, between two depths. */
export const isFirmAlong = (at: Layout, from_mm: number, to_mm: number): boolean =>
  at.depths.before
    .filter(it => Math.min(it.to_mm, to_mm) > Math.max(it.from_mm, from_mm))
    .every(({ layer }) => at.isFirm(layer.edge?.material ?? layer.material))

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
    const from = Math.min(Math.max(0, at.stands.to_mm), bearing_mm)
    return [[left, 0], [0, 0], [0, from], [flankOf(at).at(bearing_mm), bearing_mm], [left, bearing_mm]] // prettier-ignore
  }
  const [from, to] = nib.inside ? [bearing_mm - nib.depth_mm, bearing_mm] : [0, nib.depth_mm]
  return nib.inside
    ? [[left, 0], [0, 0], [0, from], [nib.lap_mm, from], [nib.lap_mm, to], [left, to]]
    : [[left, 0], [nib.lap_mm, 0], [nib.lap_mm, to], [0, to], [0, bearing_mm], [left, bearing_mm]] // prettier-ignore
}
