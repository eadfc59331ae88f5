import { bearingOutline, nibOf } from './flank'
import { serves } from '../seals'
import type { Layout } from './layout'
import { box, coat, layerFill, type PaintedPart } from './paint'
import { rebateGap } from './rebate'

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
  return [body, ...(stud ? [stud] : []), ...rebateAir(at)]
}

/** The air between the nib and the face that lies against it. Its seals are laid over it. */
const rebateAir = (at: Layout): readonly PaintedPart[] => {
  const nib = nibOf(at)
  const gap = rebateGap(at)
  if (nib === undefined || gap === undefined) return []
  const [from, to] = gap
  const isSealed = at.seals.some(it => it.gap === 'rebate' && (serves(it, 'outer') || serves(it, 'inner')))
  // up to 2 mm air stands still, up to 10 mm it is slightly ventilated (EN ISO 10077-2, from memory)
  const vented = isSealed || to - from <= 2 ? 'closed' : to - from <= 10 ? 'slightly' : 'open'
  return [coat(at.joint, 'rebate', { kind: 'air', vented }, 'reveal', box(0, from, nib.lap_mm, to))]
}
