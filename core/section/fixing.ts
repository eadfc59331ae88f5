import { type Fixing, plateOf_mm } from '../detail'
import { type Outline, type Point, stripOutline } from '../geometry'
import { flankOf } from './flank'
import type { Layout } from './layout'
import { box } from './paint'

/** A piece of a fixing at its place in a section, of steel. */
export type FixingPiece = { readonly name: 'screw' | 'plate' | 'anchor'; readonly outline: Outline }

/** What fixings are made of. */
export const fixingMaterial = 'steel'

/** How far a bracket reaches along the frame past its screw, and a strap along frame and wall: *ours*, for drawing. */
const past_mm = 20
const along_mm = 60

/**
 * The pieces of a fixing: a screw or plug through frame and joint into the bearing layer; a bracket that stands out from
 * the face of that layer to a frame before it; a lug or an angle from the frame onto the flank or the face behind it.
 * Between box and lintel no screw goes through the frame.
 */
export const fixingPieces = (at: Layout, it: Fixing): readonly FixingPiece[] => {
  if (it.kind === 'frame-screw' || it.kind === 'frame-plug')
    return at.box ? [] : [{ name: 'screw', outline: throughFrame(at, it, -it.embedment_mm.value) }]
  const axis = at.position_mm + it.axis_mm.value
  if (axis < 0) return bracket(at, it, { face: 0, away: -1 })
  const { bearing_mm } = at.depths
  return axis > bearing_mm ? bracket(at, it, { face: bearing_mm, away: 1 }) : strap(at, it)
}

/** A shank with its point, from the middle of the face of what stands in the joint; ours. */
const throughFrame = (at: Layout, it: Fixing, point: number): Outline => {
  const axis = at.position_mm + it.axis_mm.value
  const half = it.diameter_mm.value / 2
  const head = at.width_mm + at.stands.outer_mm / 2
  const neck = Math.min(0, point + 1.5 * half)
  return [[point, axis], [neck, axis - half], [head, axis - half], [head, axis + half], [neck, axis + half]] // prettier-ignore
}

/** A face of the bearing layer, and which way a frame stands before it in depth. */
type Against = { readonly face: number; readonly away: 1 | -1 }

/** An angle on a face of the bearing layer: one leg on it, the other out beside the frame, which is screwed to it. */
const bracket = (at: Layout, it: Fixing, { face, away }: Against): readonly FixingPiece[] => {
  const t = plateOf_mm(it)
  const axis = at.position_mm + it.axis_mm.value
  const out = Math.min(Math.max(at.stands.from_mm, axis + away * past_mm), at.stands.to_mm)
  const screwed = it.lever_mm?.value ?? along_mm
  const path: readonly Point[] = [[0, out], [0, face], [-screwed - past_mm, face]] // prettier-ignore
  return [
    { name: 'plate', outline: away < 0 ? stripOutline(path, t) : stripOutline(path.toReversed(), t) },
    { name: 'anchor', outline: anchor([-screwed, face + away * t], [0, -away], it) },
    { name: 'screw', outline: throughFrame(at, it, -t) },
  ]
}

/**
 * A strap on the flank of the frame, over the joint and on along the flank behind it; where that is too short to be
 * screwed to, round onto the inner face of the bearing layer.
 */
const strap = (at: Layout, it: Fixing): readonly FixingPiece[] => {
  const t = plateOf_mm(it)
  const { to_mm: back } = at.stands
  const { bearing_mm } = at.depths
  const start: Point = [at.width_mm, Math.max(at.stands.from_mm, Math.min(back, bearing_mm) - 2 * past_mm)]
  const bent = Math.max(back, 0) + Math.max(at.width_mm, 2 * t)
  const flank = flankOf(at).at
  if (bent + 2 * past_mm < bearing_mm) {
    const end = Math.min(bearing_mm, bent + along_mm)
    const at_mm = (bent + end) / 2
    const path: readonly Point[] = [start, [at.width_mm, Math.max(back, 0)], [flank(bent) + t, bent], [flank(end) + t, end]] // prettier-ignore
    return [
      { name: 'plate', outline: stripOutline(path, t) },
      { name: 'anchor', outline: anchor([flank(at_mm) + t, at_mm], [-1, 0], it) },
    ]
  }
  const face = bearing_mm + t
  const path: readonly Point[] = [start, [at.width_mm, face], [-along_mm, face]] // prettier-ignore
  return [
    { name: 'plate', outline: stripOutline(path, t) },
    { name: 'anchor', outline: anchor([-along_mm / 2, face], [0, -1], it) },
  ]
}

/** An anchor from the face of its plate straight into the bearing layer. */
const anchor = ([x, y]: Point, [ux, uy]: Point, it: Fixing): Outline => {
  const [half, deep] = [it.diameter_mm.value / 2, plateOf_mm(it) + it.embedment_mm.value]
  const [ex, ey] = [x + deep * ux, y + deep * uy]
  return uy === 0
    ? box(Math.min(x, ex), y - half, Math.max(x, ex), y + half)
    : box(x - half, Math.min(y, ey), x + half, Math.max(y, ey))
}
