/** Change of length of a part with temperature, in the unit of its length: `expansionPerK` × length × temperature range. */
export const expansion_mm = (part: {
  readonly expansionPerK: number
  readonly length_mm: number
  readonly range_K: number
}): number => part.expansionPerK * part.length_mm * part.range_K

/** A movement as a share of the width of the joint that takes it, in per cent. */
export const movementShare_pct = (movement_mm: number, width_mm: number): number =>
  (100 * movement_mm) / width_mm

/**
 * Spacing of movement joints in masonry: what a joint of that width can close, over the strain of the masonry.
 * `strain` is movement per length (for example 0.0009 for moisture and heat of brickwork).
 * Source: US brick association technical note 18A.
 */
export const masonrySpacing_mm = (joint: {
  readonly width_mm: number
  readonly share_pct: number
  readonly strain: number
}): number => (joint.width_mm * joint.share_pct) / 100 / joint.strain
