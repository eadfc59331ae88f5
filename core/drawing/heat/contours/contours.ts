import type { Solution } from '../../../heat'
import { type Band, bandsBetween } from './bands'
import { latticeOf } from './lattice'
import { type Isotherm, trace } from './trace'

/** Lines and bands of a temperature field, in model mm. */
export type Contours = { readonly lines: readonly Isotherm[]; readonly bands: readonly Band[] }

/** What to look for: the edges of the bands, further levels that are lines alone, and how far a line may leave its level. */
export type ContourLook = {
  /** ascending */
  readonly edges_C: readonly number[]
  readonly alone_C: readonly number[]
  readonly tolerance_mm: number
}

export const contoursOf = (it: Solution, { edges_C, alone_C, tolerance_mm }: ContourLook): Contours => {
  const lattice = latticeOf(it)
  const levels_C = [...new Set([...edges_C, ...alone_C])].toSorted((a, b) => a - b)
  const lines = trace(lattice, levels_C, tolerance_mm)
  return { lines, bands: bandsBetween(lattice, edges_C, lines) }
}
