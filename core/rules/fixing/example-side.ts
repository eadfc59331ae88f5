import type { SideFixings } from '../../detail'

/** A side of an example: bays of given lengths, 210 mm to the first axis at either end, with evenly spread fixings. */
export const exampleSide = (
  ...bays: readonly (readonly [length_mm: number, count: number])[]
): SideFixings => {
  let at_mm = 0
  const laid = bays.map(([bay_mm, count]) => {
    const from_mm = at_mm
    at_mm += bay_mm
    const between_mm = bay_mm - 2 * off_mm
    const axes_mm = Array.from({ length: count }, (_, i) =>
      count === 1 ? from_mm + bay_mm / 2 : from_mm + off_mm + (between_mm * i) / (count - 1),
    )
    return { from_mm, to_mm: at_mm, first_mm: off_mm, last_mm: off_mm, axes_mm }
  })
  const axes_mm = laid.flatMap(it => it.axes_mm)
  const gaps_mm = axes_mm.slice(1).map((it, i) => it - (axes_mm[i] ?? 0))
  const spacing_mm = gaps_mm.length === 0 ? at_mm : Math.max(...gaps_mm)
  return { length_mm: at_mm, bays: laid, axes_mm, spacing_mm }
}

const off_mm = 210
