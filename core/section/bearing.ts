import { bearingOutline, nibOf } from './flank'
import type { Layout } from './layout'
import { box, coat, layerFill, type PaintedPart } from './paint'

/** The bearing layer, the member that closes it at the opening, and the slit between a nib and the frame. */
export const bearing = (at: Layout): readonly PaintedPart[] => {
  const { layer, from_mm, to_mm } = at.depths.bearing
  const body = coat(layer.id, 'body', layerFill(layer.material), 'reveal', bearingOutline(at))
  const stud =
    layer.edge &&
    coat(
      layer.id,
      'edge',
      layerFill(layer.edge.material),
      'reveal',
      box(-layer.edge.width_mm.value, from_mm, 0, to_mm),
    )
  return [body, ...(stud ? [stud] : []), ...rebateGap(at)]
}

/** The gap of a rebate: between the nib and the face of the frame that lies against it. */
const rebateGap = (at: Layout): readonly PaintedPart[] => {
  const nib = nibOf(at)
  if (nib === undefined) return []
  const back = at.stands.to_mm
  const [from, to] = nib.inside
    ? [back, at.depths.bearing_mm - nib.depth_mm]
    : [nib.depth_mm, at.stands.from_mm]
  if (to - from <= 0) return []
  // up to 2 mm air stands still, up to 10 mm it is slightly ventilated (EN ISO 10077-2, from memory)
  const vented = to - from <= 2 ? 'closed' : to - from <= 10 ? 'slightly' : 'open'
  return [coat(at.joint, 'rebate', { kind: 'air', vented }, 'reveal', box(0, from, nib.lap_mm, to))]
}
