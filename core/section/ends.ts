import { onGrid, type Point } from '../geometry'
import type { End } from '../seals'
import { bondFlank, flankOf, isFirmAlong, nibOf } from './flank'
import type { Layout } from './layout'
import { coverEdge } from './outside'
import { bead_mm, box } from './paint'

/**
 * The room-side end of a joint: the flank behind the frame, the face of its lining, the strip before the frame.
 * Flanks lie on the grid, so that what ends along one ends on the edge that the cut makes of it.
 */
export const innerEnd = (at: Layout): End => {
  const free_mm = at.width_mm + at.stands.inner_mm
  const bond = bondFlank(at)
  const bare = { lead: bond.lead.map(onGrid), flank: upTo(bond.flank.map(onGrid), free_mm), free_mm }
  const from = at.stands.to_mm
  const to = at.depths.inner_mm
  // a nib behind the frame leaves no corner that could be seen; at the sill a board lies there
  if (nibOf(at)?.inside || at.side === 'sill' || from >= to) return { ...bare, face: [] }
  const lined_mm = at.depths.behind.length > 0 ? (at.reveal.board?.thickness_mm.value ?? 0) + at.lining_mm : 0
  const place = flankOf(at).at
  const face: readonly Point[] = [[place(from) + lined_mm, from], [place(to) + lined_mm, to]] // prettier-ignore
  return lined_mm > at.width_mm
    ? { ...bare, face, stop: box(at.width_mm, from, lined_mm, from + Math.min(bead_mm, to - from)) }
    : { ...bare, face }
}

/** The weather-side end of a joint: the flank before the frame, the face of what closes the outer reveal, its strip. */
export const outerEnd = (at: Layout): End => {
  const bare = { ...outerFlank(at), free_mm: at.width_mm + at.stands.outer_mm }
  const nib = nibOf(at)
  const to = at.depths.outer_mm
  if ((nib && !nib.inside) || at.side === 'sill' || to >= at.stands.from_mm) return { ...bare, face: [] }
  const edge = coverEdge(at)
  const { skin, before } = at.depths
  const skin_mm = skin ? skin.to_mm - skin.from_mm : 0
  // a render without insulation turns round the edge of the wall, one on insulation lies on the edge of that
  const alone = skin !== undefined && before.length === 1
  const [low, high] = alone ? [0, Math.max(skin_mm, edge)] : [edge, edge + skin_mm]
  const x = before.length > 0 ? high : 0
  const face: readonly Point[] = [[x, at.stands.from_mm], [x, to]] // prettier-ignore
  const back = at.stands.from_mm - bead_mm
  return skin && back > skin.from_mm
    ? { ...bare, face, stop: box(low, back, high, at.stands.from_mm) }
    : { ...bare, face }
}

/** A path as far as it stays clear of the sash: where a nib reaches behind that, nothing can be bonded to it. */
const upTo = (path: readonly Point[], most_mm: number): readonly Point[] => {
  const beyond = path.findIndex(([x]) => x > most_mm)
  const [before, after] = [path[beyond - 1], path[beyond]]
  if (!before || !after) return beyond === 0 ? [] : path
  const share = (most_mm - before[0]) / (after[0] - before[0])
  return [...path.slice(0, beyond), [most_mm, before[1] + share * (after[1] - before[1])]]
}

/**
 * What holds a membrane that comes from the weather side of the joint: the bare flank of the bearing layer before the
 * frame, round a nib and on along its outer face. Where the frame stands forward of that layer, the rigid frame that
 * closes the insulation there; else the membrane is led back along the insulation to the outer face of the bearing layer.
 */
const outerFlank = (at: Layout): Pick<End, 'lead' | 'flank'> => {
  const from = at.stands.from_mm
  if (from < 0) return forwardFlank(at, from)
  const nib = nibOf(at)
  const path: readonly Point[] =
    nib && !nib.inside
      ? [[0, from], [0, nib.depth_mm], [nib.lap_mm, nib.depth_mm], [nib.lap_mm, 0], [-at.reach_mm, 0]]
      : [[0, from], [0, 0], [-at.reach_mm, 0]] // prettier-ignore
  // where the frame stands flush, the flank before it has no length
  const flank = path
    .map(onGrid)
    .filter(([x, y], i, all) => i === 0 || x !== all[i - 1]?.[0] || y !== all[i - 1]?.[1])
  return { lead: [], flank }
}

const forwardFlank = (at: Layout, from: number): Pick<End, 'lead' | 'flank'> => {
  const rigid_mm = rigidFrame_mm(at)
  const away: Point = [-at.reach_mm, 0]
  if (rigid_mm === undefined) return { lead: [onGrid([0, from])], flank: [onGrid([0, 0]), onGrid(away)] }
  const round: readonly Point[] = [[0, from], [-rigid_mm, from], [-rigid_mm, 0], away] // prettier-ignore
  return { lead: [], flank: round.map(onGrid) }
}

/** How wide the rigid member is that closes the insulation where the outer face of the frame stands, if there is one. */
const rigidFrame_mm = (at: Layout): number | undefined => {
  const from = at.stands.from_mm
  const { edge } = at.depths.before.find(it => it.from_mm <= from && from < it.to_mm)?.layer ?? {}
  return edge && at.isFirm(edge.material) && isFirmAlong(at, from, 0) ? edge.width_mm.value : undefined
}
