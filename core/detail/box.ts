import type { Id } from '../geometry'
import type { Stated } from '../units'

export const couplings = ['sealed', 'foam', 'none'] as const
export type Coupling = (typeof couplings)[number]

/**
 * A shutter box that sits on the head of the frame, as wide as the frame. Its front stands before the frame, so that the
 * curtain runs down between both; it is open below there.
 */
export type Box = {
  readonly id: Id
  readonly height_mm: Stated<number>
  /** outer to inner face of the box */
  readonly depth_mm: Stated<number>
  /** how far its outer face stands before the outer face of the frame */
  readonly forward_mm: Stated<number>
  /** its walls */
  readonly material: Id
  readonly shell_mm: Stated<number>
  /** insulation within its walls: at the top, at the room side, and on the lid behind the curtain */
  readonly lining?: { readonly material: Id; readonly thickness_mm: Stated<number> }
  /** how the box is coupled to the frame: sealed inside and outside, or foamed only */
  readonly coupling?: Stated<Coupling>
  /** whether its ends are sealed to the masonry, and the passage of belt or cable */
  readonly ends?: Stated<'yes' | 'no'>
  readonly passage?: Stated<'yes' | 'no'>
}
