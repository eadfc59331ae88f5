import type { Outline, Point } from '../geometry'
import { flankOf, nibOf } from './flank'
import type { Layout } from './layout'
import { bead_mm, box, coat, layerFill, ofMaterial, type PaintedPart, stripMaterial } from './paint'

/** The layers behind the bearing layer, and the flank behind the frame: an insulating board, the finish, its stop bead. */
export const inside = (at: Layout): readonly PaintedPart[] => {
  const { depths } = at
  const flank = flankOf(at)
  const behind = depths.behind.flatMap((it): readonly PaintedPart[] => {
    const { id, material, edge } = it.layer
    const left = -at.reach_mm
    const end = at.stands.to_mm
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
  const from = at.stands.to_mm
  const to = at.depths.inner_mm
  const last = at.depths.behind.at(-1)
  const finish = behind.findLast(it => it.label.part === last?.layer.id && it.label.name === 'body')
  if (finish === undefined || from >= to) return []
  const board_mm = at.reveal.board?.thickness_mm.value ?? 0
  const lining_mm = at.lining_mm
  const { finished } = flankOf(at)
  const parts: PaintedPart[] = []
  if (at.reveal.board && board_mm > 0) {
    parts.push(
      coat(
        at.wall,
        'board',
        layerFill(at.reveal.board.material),
        'reveal',
        stripAlong(finished, 0, board_mm),
      ),
    )
  }
  const reach = board_mm + lining_mm
  if (lining_mm > 0) parts.push({ label: finish.label, outline: stripAlong(finished, board_mm, reach) })
  // between a nib and the frame lies the gap of the rebate, where no finish meets the frame
  if (reach > at.width_mm && !nibOf(at)?.inside) {
    const bead = box(at.width_mm, from, reach, from + Math.min(bead_mm, to - from))
    parts.push(coat(finish.label.part, 'bead', ofMaterial(stripMaterial), 'reveal', bead))
  }
  return parts
}

/** A strip along a flank, between two distances from it across the joint, counter-clockwise. */
const stripAlong = (flank: readonly Point[], near_mm: number, far_mm: number): Outline => {
  const edge = (off_mm: number): readonly Point[] => flank.map(([x, y]): Point => [x + off_mm, y])
  return [...edge(far_mm), ...edge(near_mm).toReversed()]
}
