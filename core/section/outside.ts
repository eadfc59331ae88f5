import type { Placed, WallDepths } from '../detail'
import type { Outline } from '../geometry'
import { nibOf } from './flank'
import type { Layout } from './layout'
import { bead_mm, box, coat, layerFill, ofMaterial, type PaintedPart, stripMaterial } from './paint'

/** The layers before the bearing layer, outside to inside, with the members that close them and a skin round their edge. */
export const outside = (at: Layout): readonly PaintedPart[] => {
  const edge = coverEdge(at)
  const bodies = at.depths.before.filter(it => it !== at.depths.skin)
  const back = backOf(at)
  const parts = bodies.flatMap((it, i): readonly PaintedPart[] => {
    const { id, material, edge: member } = it.layer
    const behind = coat(id, 'body', layerFill(material), 'wall', box(-at.reach_mm, it.from_mm, 0, it.to_mm))
    // before the frame they reach over it; the innermost of them closes the outer reveal up to the frame
    const to_mm = i === bodies.length - 1 ? back : Math.min(it.to_mm, back)
    const over =
      to_mm > it.from_mm && edge > 0
        ? [{ label: behind.label, outline: box(0, it.from_mm, edge, to_mm) }]
        : []
    const end = over.length > 0 ? edge : 0
    const close = member && closing(at, it, end, over.length > 0 ? to_mm : it.to_mm)
    return [
      behind,
      ...over,
      ...(member && close ? [coat(id, 'edge', layerFill(member.material), 'reveal', close)] : []),
    ]
  })
  return at.depths.skin ? [...parts, ...skinParts(at, at.depths.skin, edge)] : parts
}

/**
 * What closes a layer at the opening: a closer laps over the frame with the layer; a rigid frame stands at the flank,
 * from the outer face of what it carries back to the wall.
 */
const closing = (at: Layout, it: Placed, end_mm: number, over_mm: number): Outline => {
  const { edge } = it.layer
  const width_mm = edge?.width_mm.value ?? 0
  const front_mm = Math.max(it.from_mm, at.stands.from_mm)
  return edge && at.isFirm(edge.material) && front_mm < it.to_mm
    ? box(-width_mm, front_mm, 0, it.to_mm)
    : box(end_mm - width_mm, it.from_mm, end_mm, Math.max(it.to_mm, over_mm))
}

/** How far what stands before the frame reaches across: to the edge of a nib, or by the cover over the frame. */
export const coverEdge = (at: Layout): number => {
  const nib = nibOf(at)
  if (at.side === 'sill') return 0
  return nib !== undefined && !nib.inside ? nib.lap_mm : at.width_mm + at.cover_mm
}

/** Up to where the outer reveal is closed: the face of the frame, or the face of the wall where a nib stands before it. */
const backOf = (at: Layout): number => {
  const nib = nibOf(at)
  return nib !== undefined && !nib.inside ? 0 : at.stands.from_mm
}

const skinParts = (
  at: Layout,
  skin: NonNullable<WallDepths['skin']>,
  edge: number,
): readonly PaintedPart[] => {
  const fill = layerFill(skin.layer.material)
  const thickness_mm = skin.to_mm - skin.from_mm
  const face = coat(skin.layer.id, 'body', fill, 'wall', box(-at.reach_mm, skin.from_mm, edge, skin.to_mm))
  if (at.side === 'sill') return [face]
  const nib = nibOf(at)
  const covered = nib !== undefined && !nib.inside
  const alone = at.depths.before.length === 1
  // Without insulation before it the skin itself turns into the reveal and onto the frame; round a nib it lies on its edge.
  const from = alone && !covered ? 0 : edge
  const to = alone && !covered ? Math.max(thickness_mm, edge) : edge + thickness_mm
  const end = covered ? nib.depth_mm : at.stands.from_mm
  const back = covered ? end : end - bead_mm
  if (back <= skin.from_mm) return [face]
  const turned = { label: face.label, outline: box(from, skin.from_mm, to, back) }
  if (covered) return [face, turned]
  return [
    face,
    turned,
    coat(skin.layer.id, 'bead', ofMaterial(stripMaterial), 'reveal', box(from, back, to, end)),
  ]
}
