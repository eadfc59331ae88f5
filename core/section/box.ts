import type { Box } from '../detail'
import type { Fill } from '../geometry'
import type { Layout } from './layout'
import { box, coat, ofMaterial, type PaintedPart } from './paint'

/**
 * The shutter box on the head of the frame: its walls, the insulation within them at the top, at the room side and on
 * the lid behind the curtain, the space for the curtain, and the slot that it runs down through, before the frame. Where
 * walls and insulation leave no space, it is drawn solid.
 */
export const boxParts = (at: Layout): readonly PaintedPart[] => {
  if (at.box === undefined) return []
  const { id, material, shell_mm, lining } = at.box
  const { from_mm, to_mm } = at.stands
  const [t, lined_mm] = [shell_mm.value, lining?.thickness_mm.value ?? 0]
  const shell = coat(
    id,
    'shell',
    ofMaterial(material),
    'frame',
    box(at.width_mm, from_mm, at.flank_mm, to_mm),
  )
  const [top, under] = [at.width_mm + t, at.flank_mm - t]
  const [front, back] = [from_mm + t, to_mm - t]
  if (top + lined_mm >= under - lined_mm || front >= back - lined_mm) return [shell]
  const air = curtainAir(at.box)
  return [
    shell,
    ...(lining
      ? [coat(id, 'lining', ofMaterial(lining.material), 'frame', box(top, front, under, back))]
      : []),
    coat(id, 'space', air, 'frame', box(top + lined_mm, front, under - lined_mm, back - lined_mm)),
    ...(slotOf_mm(at.box) > 0
      ? [
          coat(
            id,
            'space',
            air,
            'frame',
            box(under - lined_mm, front, at.flank_mm, front + slotOf_mm(at.box)),
          ),
        ]
      : []),
  ]
}

/** Width of the slot between the front wall of the box and the frame. */
const slotOf_mm = (it: Box): number =>
  Math.min(it.forward_mm.value, it.depth_mm.value - it.shell_mm.value) - it.shell_mm.value

/** Air of a shutter box by its slot: up to 2 mm it stands still, up to 35 mm it is slightly ventilated (EN ISO 10077-2, from memory). */
const curtainAir = (it: Box): Fill => {
  const slot_mm = slotOf_mm(it)
  return { kind: 'air', vented: slot_mm <= 2 ? 'closed' : slot_mm <= 35 ? 'slightly' : 'open' }
}
