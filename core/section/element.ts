import type { Layout } from './layout'
import { coat, type PaintedPart, shifted } from './paint'

/** Frame, sash and glazing, moved to their place: the flank of the frame stands a joint's width from the reveal, below its box. */
export const elementParts = (at: Layout): readonly PaintedPart[] =>
  at.profile.bodies.map(body =>
    coat(
      memberId(at.frame, body.member),
      'body',
      body.fill,
      body.of,
      shifted(body.outline, [at.flank_mm, at.position_mm]),
    ),
  )

/** The part that a member of the element is: the frame itself, or a member of it. */
export const memberId = (frame: string, member: string): string =>
  member === 'frame' ? frame : `${frame}/${member}`
