import type { Point } from '../../geometry'

/** Lower left and upper right corner on the paper. */
export type Box = readonly [Point, Point]
