// DIN 18540, spacing of joints between parts of an outside wall to width and depth: depths as a trade page on re-sealing
// reports them, spacing, least widths and tolerances from memory. Not for the joint round a window.

/** A joint between wall parts: planned and least width, depth of the bead and how far it may be off. */
export type FacadeJoint = {
  readonly spacingUpTo_m: number
  readonly planned_mm: number
  readonly least_mm: number
  readonly depth_mm: number
  readonly within_mm: number
}

/** Ordered by spacing. Above the last line there is no value. */
export const facadeJoints: readonly FacadeJoint[] = [
  { spacingUpTo_m: 2, planned_mm: 15, least_mm: 10, depth_mm: 8, within_mm: 2 },
  { spacingUpTo_m: 3.5, planned_mm: 20, least_mm: 15, depth_mm: 10, within_mm: 2 },
  { spacingUpTo_m: 5, planned_mm: 25, least_mm: 20, depth_mm: 12, within_mm: 2 },
  { spacingUpTo_m: 6.5, planned_mm: 30, least_mm: 25, depth_mm: 15, within_mm: 3 },
  { spacingUpTo_m: 8, planned_mm: 35, least_mm: 30, depth_mm: 15, within_mm: 3 },
]

/** The line for joints that far apart, if the table has one. */
export const facadeJoint = (spacing_m: number): FacadeJoint | undefined =>
  facadeJoints.find(it => spacing_m <= it.spacingUpTo_m)
