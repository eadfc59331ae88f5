/**
 * The lengths of a chain as they are written, in tenths of a millimetre whose sum is the written total. Where rounding
 * would break the sum, all links are written to the next finer step instead: no link is ever bent to fit.
 */
export const chainValues_mm = (places_mm: readonly number[]): readonly number[] => {
  for (const steps of [10, 100, 1000, 10000]) {
    const links = places_mm.slice(1).map((to, at) => Math.round((to - (places_mm[at] ?? 0)) * steps))
    const total = Math.round(((places_mm.at(-1) ?? 0) - (places_mm[0] ?? 0)) * steps)
    if (links.reduce((sum, it) => sum + it, 0) === total) return links.map(it => it / steps)
  }
  return places_mm.slice(1).map((to, at) => to - (places_mm[at] ?? 0))
}
