import type { Point } from '../../geometry'
import type { Mesh } from '../../heat'

/** A membrane along outlines, as an interface: both sides keep a pressure of their own. */
export type Interface = { readonly path: readonly Point[]; readonly sd_m: number }

/**
 * A steady vapour problem on the mesh of a heat problem: what each body resists (`Infinity` leaves the domain), the
 * membranes between them, the temperature of every vertex, and the vapour pressure before each edge of the outlines that
 * meets air (`undefined`: nothing passes).
 */
export type VapourCase = {
  readonly mesh: Mesh
  readonly temperature_C: Float64Array
  readonly mu: readonly number[]
  readonly interfaces: readonly Interface[]
  readonly airAt_Pa: (edge: number) => number | undefined
}
