import { bearing } from './bearing'
import { inside } from './inside'
import type { Layout } from './layout'
import { outside } from './outside'
import type { PaintedPart } from './paint'

/**
 * The wall at a side of the opening. Layers before the bearing layer reach over the frame by the cover and close the
 * reveal before it; a thin skin turns round their edge. Behind the frame the inside finish lines the reveal.
 */
export const wallParts = (at: Layout): readonly PaintedPart[] => [
  ...outside(at),
  ...bearing(at),
  ...inside(at),
]
