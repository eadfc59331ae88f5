/** A place in a section: x across the joint (0 = reveal, growing towards the opening), y from outside to inside. */
export type Point = readonly [x_mm: number, y_mm: number]

/** A closed outline without its first point repeated, counter-clockwise for bodies and clockwise for holes. */
export type Outline = readonly Point[]

/** All vertices of a section lie on this grid, so neighbours can share them exactly. */
export const grid_mm = 1e-4

/** The nearest point of the grid. */
export const onGrid = ([x, y]: Point): Point => [
  Math.round(x / grid_mm) * grid_mm,
  Math.round(y / grid_mm) * grid_mm,
]
