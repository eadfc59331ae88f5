import type { Point } from '../../geometry'

/** A sheet of paper and its frame: 20 mm to file it, 10 mm elsewhere (ISO 5457, reported). */
export type Paper = {
  readonly name: 'A4' | 'A3'
  readonly size_mm: Point
  /** lower left and upper right corner of the frame */
  readonly frame: readonly [Point, Point]
}

export const a4: Paper = {
  name: 'A4',
  size_mm: [210, 297],
  frame: [
    [20, 10],
    [200, 287],
  ],
}

export const a3: Paper = {
  name: 'A3',
  size_mm: [420, 297],
  frame: [
    [20, 10],
    [410, 287],
  ],
}

/** The title block stands in the lower right corner and fills the width of an A4 frame (ISO 7200, from memory). */
export const titleBlock_mm: Point = [180, 40]

/** Between the frame of a sheet and what stands in it. Ours. */
export const pad_mm = 3
