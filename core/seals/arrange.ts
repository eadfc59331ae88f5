import type { Bay } from './seal-kind'
import type { AnySeal } from './seal-kind'
import { kindOf } from './kind-of'

/** A seal with the part of the joint that is its own. */
export type Placed = { readonly seal: AnySeal; readonly bay: Bay }

/**
 * Shares the depth of a joint among its seals, listed outside to inside: those of the outer plane lie one behind the
 * other from the outer face, those of the inner plane from the inner face, and what takes the rest shares what is left.
 * Seals that need more depth than there is run into each other; drawing and rules show it, nothing is refused.
 */
export const arrange = (seals: readonly AnySeal[], joint: Bay): readonly Placed[] => {
  const width_mm = joint.frameFace[0][0] - joint.wallFace[0][0]
  const depths = new Map(seals.map(seal => [seal, kindOf(seal).takesDepth(seal, width_mm)]))
  const depthOf = (seal: AnySeal) => depths.get(seal) ?? 'rest'
  let outer = joint.from_mm
  let inner = joint.to_mm
  const placed = new Map<AnySeal, Bay>()
  for (const seal of seals) {
    const depth = depthOf(seal)
    if (depth === 'rest' || seal.plane === 'inner') continue
    placed.set(seal, slot(joint, outer, joint.to_mm))
    outer = Math.min(outer + depth, joint.to_mm)
  }
  for (const seal of seals.toReversed()) {
    const depth = depthOf(seal)
    if (depth === 'rest' || seal.plane !== 'inner') continue
    placed.set(seal, slot(joint, joint.from_mm, inner))
    inner = Math.max(inner - depth, joint.from_mm)
  }
  const fills = seals.filter(seal => depthOf(seal) === 'rest')
  // A fill reaches up to the room side under a fold, which is laid over it.
  const each = Math.max(0, joint.to_mm - outer) / Math.max(1, fills.length)
  fills.forEach((seal, i) => placed.set(seal, slot(joint, outer + i * each, outer + (i + 1) * each)))
  return seals.flatMap(seal => {
    const bay = placed.get(seal)
    return bay && bay.to_mm > bay.from_mm ? [{ seal, bay }] : []
  })
}

const slot = (joint: Bay, from_mm: number, to_mm: number): Bay => ({ ...joint, from_mm, to_mm })
