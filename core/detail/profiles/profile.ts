import type { Fill, Id, Outline } from '../../geometry'
import type { FrameMaterial } from '../../kinds'
import type { Words } from '../../words'

/** The parts of an element that are named, selected and listed on their own. */
export const memberNames = ['frame', 'core', 'sash', 'glazing', 'bead', 'gasket'] as const
export type Member = (typeof memberNames)[number]

/**
 * One outline of an element. Places: u from the flank of the frame towards the opening, v from its outer face inwards.
 * A later outline covers an earlier one.
 */
export type Body = {
  readonly member: Member
  readonly fill: Fill
  readonly outline: Outline
  /** whose surface its outer edges are */
  readonly of: 'frame' | 'glass'
}

/** A frame with sash and glazing as true outlines, given as data. */
export type Profile = {
  readonly id: Id
  readonly name: Words
  readonly materials: readonly FrameMaterial[]
  /** outer to inner face of the frame */
  readonly depth_mm: number
  /** outer edge of the frame to its edge at the sash, in the plane of the wall */
  readonly face_mm: number
  /** width of the inner face of the frame that the sash leaves free */
  readonly innerFace_mm: number
  /** how far the outlines reach from the flank: the glazing is cut off there */
  readonly reach_mm: number
  /** thickness of the steel core that a screw meets */
  readonly steel_mm?: number
  readonly bodies: readonly Body[]
}
