import type { Line, Point } from '../geometry'
import { arrange, type Bay, kindOf, type Placed, serves } from '../seals'
import { exactly } from '../units'
import { innerEnd, outerEnd } from './ends'
import type { Layout } from './layout'
import { box, coat, type PaintedPart } from './paint'
import { rebateBay } from './rebate'

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

/** A seal with its bay, and where what it lays comes to lie in the section. */
export type LaidSeal = Placed & { readonly place: (it: Point) => Point }

/** The seals of a joint where they lie, fills first: those between flank and frame, and those in the gap of a rebate. */
export const laidSeals = (at: Layout): readonly LaidSeal[] => {
  const rebate = rebateBay(at)
  const upright = arrange(
    at.seals.filter(it => it.gap !== 'rebate'),
    jointBay(at),
  )
  const turned = rebate
    ? arrange(
        at.seals.filter(it => it.gap === 'rebate'),
        rebate.bay,
      )
    : []
  return [
    ...upright.map((it): LaidSeal => ({ ...it, place: asItLies })),
    ...turned.map((it): LaidSeal => ({ ...it, place: rebate?.place ?? asItLies })),
  ].sort((a, b) => Number(rests(at, b)) - Number(rests(at, a)))
}

const asItLies = (it: Point): Point => it

/** What lies in a joint and in the gap of its rebate: air where nothing is, fills, and the other seals over them. */
export const jointParts = (
  at: Layout,
): { readonly parts: readonly PaintedPart[]; readonly lines: readonly Line[] } => {
  const { from_mm, to_mm } = at.stands
  const laid = laidSeals(at)
  const air = coat(
    at.joint,
    'air',
    { kind: 'air', vented: venting(at, laid) },
    'reveal',
    box(0, from_mm, at.width_mm, to_mm),
  )
  const bodies = laid.map(it => {
    const { regions, lines } = kindOf(it.seal).lay(it.seal, it.bay)
    return {
      parts: regions.map(one => coat(one.part, one.id, one.fill, 'reveal', one.outline.map(it.place))),
      lines: lines.map((line): Line => ({ ...line, path: line.path.map(it.place) })),
    }
  })
  return { parts: [air, ...bodies.flatMap(it => it.parts)], lines: bodies.flatMap(it => it.lines) }
}

const rests = (at: Layout, it: Placed): boolean => kindOf(it.seal).takesDepth(it.seal, at.width_mm) === 'rest'

/**
 * How air in a joint is exchanged where no seal closes it to outside, by the width of the slit: up to 2 mm as closed,
 * up to 10 mm slightly, wider as open (EN ISO 10077-2, from memory).
 */
const venting = (at: Layout, placed: readonly Placed[]): 'closed' | 'slightly' | 'open' => {
  if (placed.some(it => serves(it.seal, 'outer')) || at.width_mm <= 2) return 'closed'
  return at.width_mm <= 10 ? 'slightly' : 'open'
}
