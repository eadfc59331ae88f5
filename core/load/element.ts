/** An element that is loaded: its outer size, and its mullions and transoms by their axes from the left and lower end. */
export type Element = {
  readonly width_mm: number
  readonly height_mm: number
  readonly mullions_mm: readonly number[]
  readonly transoms_mm: readonly number[]
}

/** A side of an element: upright ones are the jambs. */
export type Edge = 'upright' | 'level'

/**
 * Line load on the edge of an element, in N/m: wind on the triangle or trapezium beside it at 45°, at its peak
 * p = w b / 2 with b the shorter side of the field. The largest field counts for all of its sides: conservative, as
 * a spacing table is. Common practice, from memory.
 */
export const edgeLoad_N_m = (it: Element, pressure_Pa: number): number =>
  (pressure_Pa * Math.max(...fields(it).map(one => Math.min(one.width_mm, one.height_mm)))) / 2000

/** What a member of the element brings to its ends: both fields beside it, halved over its two ends. In N. */
export const endReaction_N = (
  it: Element,
  member: { readonly edge: Edge; readonly at_mm: number },
  pressure_Pa: number,
): number => {
  const isMullion = member.edge === 'level'
  const length_m = (isMullion ? it.height_mm : it.width_mm) / 1000
  const reach = reaches(
    isMullion ? it.mullions_mm : it.transoms_mm,
    member.at_mm,
    isMullion ? it.width_mm : it.height_mm,
  )
  return reach.reduce((sum, b_mm) => sum + fieldLoad_N(b_mm / 1000, length_m, pressure_Pa), 0) / 2
}

/** Line load on a member from both fields beside it, in N/m: half of each. */
export const memberLoad_N_m = (
  it: Element,
  member: { readonly edge: Edge; readonly at_mm: number },
  pressure_Pa: number,
): number => {
  const isMullion = member.edge === 'level'
  const [before = 0, after = 0] = reaches(
    isMullion ? it.mullions_mm : it.transoms_mm,
    member.at_mm,
    isMullion ? it.width_mm : it.height_mm,
  )
  return (pressure_Pa * (before + after)) / 2000
}

/** What a field that reaches b from a member of length l gives it, by the 45° envelope. */
const fieldLoad_N = (b_m: number, l_m: number, pressure_Pa: number): number =>
  b_m <= l_m ? ((pressure_Pa * b_m) / 2) * (l_m - b_m / 2) : (pressure_Pa * l_m ** 2) / 4

/** How far the fields before and after a member reach from it. */
const reaches = (members_mm: readonly number[], at_mm: number, length_mm: number): readonly number[] => {
  const before = Math.max(0, ...members_mm.filter(it => it < at_mm))
  const after = Math.min(length_mm, ...members_mm.filter(it => it > at_mm))
  return [at_mm - before, after - at_mm]
}

/** Every field between frame, mullions and transoms, by its size between their axes. */
const fields = (it: Element): readonly { readonly width_mm: number; readonly height_mm: number }[] => {
  const widths_mm = between(it.mullions_mm, it.width_mm)
  const heights_mm = between(it.transoms_mm, it.height_mm)
  return widths_mm.flatMap(width_mm => heights_mm.map(height_mm => ({ width_mm, height_mm })))
}

const between = (at_mm: readonly number[], length_mm: number): readonly number[] => {
  const ends = [0, ...at_mm.toSorted((a, b) => a - b), length_mm]
  return ends.slice(1).map((end, at) => end - (ends[at] ?? 0))
}
