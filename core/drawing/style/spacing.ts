/**
 * Distances on paper. Where a standard is reported, it is named; the rest is ours, tried on sheets at 1:2.
 */
export const sizing = {
  /** first line off the outermost geometry, next lines from the first (ISO 129-1 reported: about 10 and 7 to 10) */
  first_mm: 8,
  pitch_mm: 7,
  /** an extension line starts off the geometry and passes the dimension line (reported: about 2) */
  extensionGap_mm: 1.5,
  extensionOver_mm: 1.5,
  lineOver_mm: 1.5,
  /** oblique strokes at 45°, as building drawings have them */
  stroke_mm: 2.8,
  /** a stroke of 2.8 mm rises 1.0 mm: words stay clear of it */
  textGap_mm: 1.15,
  /** words fit between two strokes when this much is left */
  textSlack_mm: 1.2,
} as const

export const callout = {
  dot_mm: 1,
  halo_mm: 0.9,
  /** 60°, never parallel to a hatch of 45° */
  slope_deg: 60,
  balloon_mm: 5,
  landing_mm: 2,
  pitch_mm: 9,
  textGap_mm: 1.3,
  /** leaders stay this far apart, and this far off a foreign dot */
  apart_mm: 1.4,
  offDot_mm: 1.9,
} as const

/** Bodies thinner than this on paper are drawn solid (reported as the rule for narrow cuts; the figure is ours). */
export const solidBelow_mm = 1

/** A hatch needs this many of its pitches, else the tint alone is drawn. Ours. */
export const leastPitches = 2
