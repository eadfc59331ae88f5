/**
 * The quadratic triangle in its hierarchical form: corners carry the linear part, edges a bubble 4 φi φj.
 * All integrals follow from the three linear off-diagonals k_ij = λ ∫ ∇φi·∇φj, so one cotangent per corner is the
 * whole element. Derivation, with k_ii = −k_ij − k_ik:
 *   corner–corner  k_ij
 *   corner–bubble  ∫ ∇φk·∇b_ij = −4/3 k_kk for the far corner k,  −4/3 k_ik for an end i
 *   bubble–bubble  same edge −8/3 (k_01 + k_12 + k_20),  edges ij and ik  8/3 k_jk
 */
/** Factor of the couplings of corners and bubbles, and of bubbles among themselves. */
export const cornerBubble = 4 / 3
export const bubbleBubble = 8 / 3

/** A film along an edge of length L: ∫φiφi = L/3, ∫φiφj = L/6, ∫φi b = L/3, ∫bb = 8L/15; loads ∫φi = L/2, ∫b = 2L/3. */
export const film = {
  own: 1 / 3,
  across: 1 / 6,
  bubble: 1 / 3,
  bubbleOwn: 8 / 15,
  load: 1 / 2,
  bubbleLoad: 2 / 3,
} as const

/** A foil along an edge of length L with conductance g: ends ±g/L, bubble 16/3 g/L, no coupling between the two. */
export const foil = { ends: 1, bubble: 16 / 3 } as const

/** Half the cotangent of the corner at c, times -1: the off-diagonal k_ab of a triangle of unit conductivity. */
export const offDiagonal = (
  ax: number, ay: number, bx: number, by: number, cx: number, cy: number, area2: number,
): number => -((ax - cx) * (bx - cx) + (ay - cy) * (by - cy)) / (2 * area2) // prettier-ignore
