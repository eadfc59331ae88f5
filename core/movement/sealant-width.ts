/**
 * Width of a sealant joint for a first sizing: (100 / share) × (thermal + other movement) + construction tolerance.
 * Source: university course sheets on sealant joint calculation; the same form stands in the detailing handbook.
 */
export const preliminaryWidth_mm = (joint: {
  readonly thermal_mm: number
  readonly other_mm: number
  readonly tolerance_mm: number
  readonly share_pct: number
}): number => (100 / joint.share_pct) * (joint.thermal_mm + joint.other_mm) + joint.tolerance_mm

/** Width for a movement across the joint. `share` is the movement share of the sealant, 0.25 for 25 %. Source: ASTM C1472. */
export const widthForExtension_mm = (across_mm: number, share: number): number => across_mm / share

/**
 * Width for a movement along the joint only: the bead is stretched along the slant of a right triangle.
 * Source: ASTM C1472 (from memory); the principle is in the glass association bulletin.
 */
export const widthForShear_mm = (along_mm: number, share: number): number =>
  along_mm / Math.sqrt(share * share + 2 * share)

/**
 * Width for movement across and along together, from (W + across)² + along² = W² (1 + share)².
 * Derived from the right triangle of `widthForShear_mm`.
 */
export const widthForBoth_mm = (across_mm: number, along_mm: number, share: number): number => {
  const slack = share * share + 2 * share
  const slant = across_mm * across_mm + along_mm * along_mm
  return (across_mm + Math.sqrt(across_mm * across_mm + slack * slant)) / slack
}
