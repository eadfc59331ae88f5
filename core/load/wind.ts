/** What wind does to an element: the coefficient of its place, and the pressure that counts. */
export type Wind = { readonly area_m2: number; readonly outside: number; readonly pressure_Pa: number }

/**
 * Suction on an element at the edge of a wall (zone A of EN 1991-1-4, table 7.1), which governs: the coefficient lies
 * between that of 1 m² and that of 10 m², by the logarithm of the area. Pressure inside adds to it. Areas outside that
 * range take the nearer end.
 */
export const suction = (peak_Pa: number, area_m2: number, inside: number): Wind => {
  const share = Math.min(1, Math.max(0, Math.log10(area_m2)))
  const outside = of1m2 - (of1m2 - of10m2) * share
  return { area_m2, outside, pressure_Pa: peak_Pa * (inside - outside) }
}

/** Zone A, c_pe,1 and c_pe,10 (EN 1991-1-4, table 7.1, as a knowledge page on façades reports it). */
const of1m2 = -1.4
const of10m2 = -1.2
