import type { Outline } from '../geometry'
import type { Layout } from './layout'
import { coat, type PaintedPart, shifted } from './paint'

/** Frame, sash and glazing, moved to their place: the flank of the frame stands a joint's width from the reveal. */
export const elementParts = (at: Layout): readonly PaintedPart[] =>
  at.profile.bodies.map(body =>
    coat(
      memberId(at.frame, body.member),
      'body',
      body.fill,
      body.of,
      shifted(body.outline, [at.width_mm, at.position_mm]),
    ),
  )

/** The part that a member of the element is: the frame itself, or a member of it. */
export const memberId = (frame: string, member: string): string =>
  member === 'frame' ? frame : `${frame}/${member}`

/** The screw behind the plane: through frame and joint into the bearing layer, with its point. */
export const screwOutline = (at: Layout): Outline | undefined => {
  const { fixing } = at
  if (fixing === undefined) return undefined
  const axis = at.position_mm + fixing.axis_mm.value
  const half = fixing.diameter_mm.value / 2
  const point = -fixing.embedment_mm.value
  // the head lies flush with the face of the frame's rebate: ours, half of the frame's face
  const head = at.width_mm + at.profile.face_mm / 2
  const neck = Math.min(0, point + 1.5 * half)
  return [
    [point, axis],
    [neck, axis - half],
    [head, axis - half],
    [head, axis + half],
    [neck, axis + half],
  ]
}
