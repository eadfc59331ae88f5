/**
 * The lengths of a chain as they are written, in steps of the unit (tenths of a millimetre) whose sum is the written
 * total. Where rounding would break the sum, all links are written to the next finer step: no link is bent to fit.
 */
export const chainValues = (places: readonly number[], perUnit: number): readonly number[] => {
  for (const steps of [perUnit, 10 * perUnit, 100 * perUnit, 1000 * perUnit]) {
    const links = places.slice(1).map((to, at) => Math.round((to - (places[at] ?? 0)) * steps))
    const total = Math.round(((places.at(-1) ?? 0) - (places[0] ?? 0)) * steps)
    if (links.reduce((sum, it) => sum + it, 0) === total) return links.map(it => it / steps)
  }
  return places.slice(1).map((to, at) => to - (places[at] ?? 0))
}

/** The lengths of a chain in tenths of a millimetre. */
export const chainValues_mm = (places_mm: readonly number[]): readonly number[] => chainValues(places_mm, 10)
