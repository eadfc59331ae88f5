import { loopsOf } from './loops'
import type { Network } from './network'

/** Ground that nothing covers: outside of everything, or enclosed. */
export const outside = -2
export const enclosed = -1

/**
 * The outline that lies on top at the left of each half-edge: the last painted one that winds round the face.
 * Counted across edges from the unbounded ground inwards, so it holds for the geometry as it was snapped.
 */
export const ownersOf = (it: Network, outlines: number): Int32Array => {
  const { halves, face, loopOf } = loopsOf(it)
  const loopsOfFace = new Map<number, number[]>()
  face.forEach((at, loop) => loopsOfFace.set(at, [...(loopsOfFace.get(at) ?? []), loop]))
  const winding = new Map<number, Int16Array>([[-1, new Int16Array(outlines)]])
  const queue = [-1]
  for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
    const here = winding.get(at) ?? new Int16Array(outlines)
    for (const loop of loopsOfFace.get(at) ?? []) {
      for (const half of halves[loop] ?? []) {
        const there = face[loopOf[half ^ 1]!]!
        if (winding.has(there)) continue
        winding.set(there, across(it, half, here))
        queue.push(there)
      }
    }
  }
  const owner = new Map<number, number>()
  winding.forEach((counts, at) => owner.set(at, at < 0 ? outside : topmost(counts)))
  return Int32Array.from(loopOf, loop => owner.get(face[loop]!) ?? outside)
}

/** The winding on the right of a half-edge, from the winding on its left. */
const across = (it: Network, half: number, left: Int16Array): Int16Array => {
  const right = left.slice()
  for (const source of it.sources[half >> 1] ?? []) {
    const along = half % 2 === 0 ? source > 0 : source < 0
    right[Math.abs(source) - 1]! += along ? -1 : 1
  }
  return right
}

const topmost = (counts: Int16Array): number => {
  for (let at = counts.length - 1; at >= 0; at--) if (counts[at] !== 0) return at
  return enclosed
}
