import type { WallDepths } from '../detail'
import type { Layout } from './layout'
import { box, coat, ofMaterial, type PaintedPart } from './paint'

/** How deep the soft strip between a finish and the frame is: a stop bead of 6 mm, common practice. */
const bead_mm = 6

/**
 * The wall at a side of the opening. Layers before the bearing layer reach over the frame by the cover and close the
 * reveal before it; a thin skin turns round their edge. Behind the frame the inside finish lines the reveal.
 */
export const wallParts = (at: Layout): readonly PaintedPart[] => [...outside(at), bearing(at), ...inside(at)]

/** How far what stands before the frame reaches across: 0 at the sill, whose parts are not modelled here. */
const coverEdge = (at: Layout): number => (at.side === 'sill' ? 0 : at.width_mm + at.cover_mm)

const outside = (at: Layout): readonly PaintedPart[] => {
  const { depths, position_mm } = at
  const edge = coverEdge(at)
  const bodies = depths.before.filter(it => it !== depths.skin)
  const parts = bodies.flatMap((it, i): readonly PaintedPart[] => {
    const behind = coat(
      it.layer.id,
      'body',
      ofMaterial(it.layer.material),
      'wall',
      box(-at.reach_mm, it.from_mm, 0, it.to_mm),
    )
    // before the frame they reach over it; the innermost of them closes the outer reveal up to the frame
    const to_mm = i === bodies.length - 1 ? position_mm : Math.min(it.to_mm, position_mm)
    if (to_mm <= it.from_mm || edge <= 0) return [behind]
    return [behind, { label: behind.label, outline: box(0, it.from_mm, edge, to_mm) }]
  })
  return depths.skin ? [...parts, ...skinParts(at, depths.skin, edge)] : parts
}

const skinParts = (
  at: Layout,
  skin: NonNullable<WallDepths['skin']>,
  edge: number,
): readonly PaintedPart[] => {
  const fill = ofMaterial(skin.layer.material)
  const thickness_mm = skin.to_mm - skin.from_mm
  const face = coat(skin.layer.id, 'body', fill, 'wall', box(-at.reach_mm, skin.from_mm, edge, skin.to_mm))
  if (at.side === 'sill') return [face]
  const alone = at.depths.before.length === 1
  // Without insulation before it the skin itself turns into the reveal and onto the frame.
  const from = alone ? 0 : edge
  const to = alone ? Math.max(thickness_mm, edge) : edge + thickness_mm
  const back = at.position_mm - bead_mm
  if (back <= skin.from_mm) return [face]
  return [
    face,
    { label: face.label, outline: box(from, skin.from_mm, to, back) },
    coat(skin.layer.id, 'bead', ofMaterial(stripMaterial), 'reveal', box(from, back, to, at.position_mm)),
  ]
}

/** What the soft strip of a stop bead is made of. */
const stripMaterial = 'pe-foam'

const bearing = ({ depths, reach_mm }: Layout): PaintedPart =>
  coat(
    depths.bearing.layer.id,
    'body',
    ofMaterial(depths.bearing.layer.material),
    'reveal',
    box(-reach_mm, depths.bearing.from_mm, 0, depths.bearing.to_mm),
  )

const inside = (at: Layout): readonly PaintedPart[] => {
  const { depths } = at
  const behind = depths.behind.map(it =>
    coat(
      it.layer.id,
      'body',
      ofMaterial(it.layer.material),
      'wall',
      box(-at.reach_mm, it.from_mm, 0, it.to_mm),
    ),
  )
  const from = at.position_mm + at.depth_mm
  const last = behind.at(-1)
  if (at.side === 'sill' || last === undefined || at.lining_mm <= 0 || from >= depths.inner_mm) return behind
  // the innermost layer turns round the edge and lines the reveal
  const lining = { label: last.label, outline: box(0, from, at.lining_mm, depths.inner_mm) }
  const strip_mm = Math.min(bead_mm, depths.inner_mm - from)
  if (at.lining_mm <= at.width_mm) return [...behind, lining]
  const bead = coat(
    last.label.part,
    'bead',
    ofMaterial(stripMaterial),
    'reveal',
    box(at.width_mm, from, at.lining_mm, from + strip_mm),
  )
  return [...behind, lining, bead]
}
