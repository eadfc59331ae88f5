import type { JointBand } from '../movement'
import { around } from '../units'

/** The joint of an example: planned width, tolerance, movement each way, and the sizes across it. */
export type ExampleJoint = {
  readonly planned_mm: number
  readonly tolerance_mm?: number
  readonly moves_mm?: number
  readonly frame_mm?: number
}

/** The band that the joint of an example would have. A frame of 1 m where nothing is said. */
export const exampleBand = ({
  planned_mm,
  tolerance_mm = 0,
  moves_mm = 0,
  frame_mm = 1000,
}: ExampleJoint): JointBand => ({
  zone: 'example',
  planned_mm,
  still_mm: around(planned_mm, tolerance_mm),
  moving_mm: around(planned_mm, tolerance_mm + moves_mm),
  opens_mm: moves_mm,
  closes_mm: moves_mm,
  frame_mm,
  opening_mm: frame_mm + 2 * planned_mm,
  stillSums: { narrowest: [], widest: [] },
  narrowestSum: [],
  widestSum: [],
  restsOn: [],
})
