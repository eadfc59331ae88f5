import type { Outline, Point } from '../geometry'
import { flankOf } from './flank'
import type { Layout } from './layout'
import { bead_mm, box, coat, layerFill, ofMaterial, type PaintedPart, stripMaterial } from './paint'

/** The layers behind the bearing layer, and the flank behind the frame: an insulating board, the finish, its stop bead. */
export const inside = (at: Layout): readonly PaintedPart[] => {
  const { depths } = at
  const flank = flankOf(at)
  const behind = depths.behind.flatMap((it): readonly PaintedPart[] => {
    const { id, material, edge } = it.layer
    const left = -at.reach_mm
    const end = at.position_mm + at.depth_mm
    const depths_mm = [it.from_mm, ...(it.from_mm < end && end < it.to_mm ? [end] : []), it.to_mm]
    const face = depths_mm.map((y): Point => [flank.at(y), y])
    const outline: Outline = [[left, it.from_mm], ...face, [left, it.to_mm]]
    const body = coat(id, 'body', layerFill(material), 'wall', outline)
    if (edge === undefined) return [body]
    const close = flank.at(it.to_mm)
    return [
      body,
      coat(
        id,
        'edge',
        layerFill(edge.material),
        'reveal',
        box(close - edge.width_mm.value, it.from_mm, close, it.to_mm),
      ),
    ]
  })
  return at.side === 'sill' ? behind : [...behind, ...flankParts(at, behind)]
}

const flankParts = (at: Layout, behind: readonly PaintedPart[]): readonly PaintedPart[] => {
  const from = at.position_mm + at.depth_mm
  const to = at.depths.inner_mm
  const last = at.depths.behind.at(-1)
  const finish = behind.findLast(it => it.label.part === last?.layer.id && it.label.name === 'body')
  if (finish === undefined || from >= to) return []
  const board_mm = at.reveal.board?.thickness_mm.value ?? 0
  const lining_mm = at.lining_mm
  const flank = flankOf(at)
  const strip = (x0: number, x1: number): Outline => stripAlong(at, flank.at, from, x0, x1)
  const parts: PaintedPart[] = []
  if (at.reveal.board && board_mm > 0) {
    parts.push(coat(at.wall, 'board', layerFill(at.reveal.board.material), 'reveal', strip(0, board_mm)))
  }
  if (lining_mm > 0) parts.push({ label: finish.label, outline: strip(board_mm, board_mm + lining_mm) })
  const reach = board_mm + lining_mm
  if (reach > at.width_mm) {
    const bead = box(at.width_mm, from, reach, from + Math.min(bead_mm, to - from))
    parts.push(coat(finish.label.part, 'bead', ofMaterial(stripMaterial), 'reveal', bead))
  }
  return parts
}

/** A strip along the flank from the frame to the room, between two distances from it. */
const stripAlong = (
  at: Layout,
  place: (y_mm: number) => number,
  from: number,
  x0: number,
  x1: number,
): Outline => {
  const to = at.depths.inner_mm
  const corners = [from, ...flankOf(at).path.map(([, y]) => y), to].filter(
    (y, i, all) => i === 0 || y > (all[i - 1] ?? y),
  )
  // at the face of a nib the flank steps: below it lies at 0, from it on at the edge of the nib
  const near = corners.flatMap((y): readonly Point[] => {
    const before = place(y - 1e-6)
    const after = place(y + 1e-6)
    return before === after || y === from ? [[place(y), y]] : [[before, y], [after, y]] // prettier-ignore
  })
  const edge = (x: number): readonly Point[] => near.map(([at_mm, y]): Point => [at_mm + x, y])
  return [...edge(x0), ...edge(x1).toReversed()].toReversed()
}
