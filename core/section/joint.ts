import type { Line } from '../geometry'
import { arrange, type Bay, kindOf, type Placed, serves } from '../seals'
import { exactly } from '../units'
import { innerEnd, outerEnd } from './ends'
import type { Layout } from './layout'
import { box, coat, type PaintedPart } from './paint'

/** The joint of a layout as a bay: between the flank of the reveal and the flank of the frame, over its whole depth. */
export const jointBay = (at: Layout): Bay => {
  const from_mm = at.stands.from_mm
  const to_mm = at.stands.to_mm
  return {
    width_mm: exactly(at.width_mm),
    from_mm,
    to_mm,
    wallFace: [[0, from_mm], [0, to_mm]],
    frameFace: [[at.width_mm, from_mm], [at.width_mm, to_mm]],
    ends: { outer: outerEnd(at), inner: innerEnd(at) },
  } // prettier-ignore
}

/** What lies in a joint: air where nothing is, fills, and the other seals over them. */
export const jointParts = (
  at: Layout,
): { readonly parts: readonly PaintedPart[]; readonly lines: readonly Line[] } => {
  const bay = jointBay(at)
  const placed = arrange(at.seals, bay)
  const laid = [...placed].sort(fillsFirst(at)).map(it => kindOf(it.seal).lay(it.seal, it.bay))
  const ground = coat(
    at.joint,
    'air',
    { kind: 'air', vented: venting(at, placed) },
    'reveal',
    box(0, bay.from_mm, at.width_mm, bay.to_mm),
  )
  const parts = laid.flatMap(it =>
    it.regions.map(region => coat(region.part, region.id, region.fill, 'reveal', region.outline)),
  )
  return { parts: [ground, ...parts], lines: laid.flatMap(it => it.lines) }
}

const fillsFirst =
  (at: Layout) =>
  (a: Placed, b: Placed): number =>
    Number(rests(at, b)) - Number(rests(at, a))

const rests = (at: Layout, it: Placed): boolean => kindOf(it.seal).takesDepth(it.seal, at.width_mm) === 'rest'

/**
 * How air in a joint is exchanged where no seal closes it to outside, by the width of the slit: up to 2 mm as closed,
 * up to 10 mm slightly, wider as open (EN ISO 10077-2, from memory).
 */
const venting = (at: Layout, placed: readonly Placed[]): 'closed' | 'slightly' | 'open' => {
  if (placed.some(it => serves(it.seal, 'outer')) || at.width_mm <= 2) return 'closed'
  return at.width_mm <= 10 ? 'slightly' : 'open'
}
