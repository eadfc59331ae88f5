import type { Outline, Point } from '../geometry'

/** A flat body of one conductivity: closed outline counter-clockwise, holes clockwise, in mm. */
export type Body = {
  readonly name: string
  readonly outline: Outline
  readonly holes: readonly Outline[]
  readonly lambda_W_mK: number
}

/** A straight stretch of outline. */
export type Stretch = readonly [from: Point, to: Point]

/** Where the bodies meet an environment: its temperature behind a film. A film of `fixedFilm_W_m2K` or more fixes the surface. */
export type Surface = {
  readonly name: string
  readonly h_W_m2K: number
  readonly air_C: number
  readonly edges: readonly Stretch[]
  /** Where bodies lie against each other along it (a crack of no width) it is no surface, instead of a fault. */
  readonly mayBeCovered?: boolean
}

/** A film so conducting that the surface takes the temperature of the environment: how the plain format writes a fixed temperature. */
export const fixedFilm_W_m2K = 1e8

/** A metal foil along outlines: it conducts along itself only. */
export type Foil = {
  readonly name: string
  readonly path: readonly Point[]
  readonly conductance_W_K: number
}

/**
 * A steady heat problem in a plane: bodies tile the domain without gap or overlap, outer edges that no surface
 * names are adiabatic. Probes are places whose temperature is asked for.
 */
export type HeatCase = {
  readonly name: string
  readonly bodies: readonly Body[]
  readonly surfaces: readonly Surface[]
  readonly foils: readonly Foil[]
  readonly probes: Readonly<Record<string, Point>>
}
