import { conductivityOf_W_mK, metres } from '../si'

/** A cavity of a frame: its extent along the heat flow and across it, and the emissivities of the two sides. */
export type Cavity = {
  readonly along_mm: number
  readonly across_mm: number
  readonly area_mm2: number
  readonly emissivity: readonly [number, number]
  readonly vented: 'closed' | 'slightly'
}

/** Convection in cavities: C1/d, C2 ΔT^⅓ with C1 = 0.025 W/(mK), C2 = 0.73 W/(m²K^4/3), ΔT = 10 K (EN ISO 10077-2, published). */
const still_W_mK = 0.025
const stirred_W_m2K = 1.57

/** Below this breadth air hardly moves (EN ISO 10077-2, published). */
const narrow_mm = 5

/** 4 σ T³ at 283 K (EN ISO 10077-2, published). */
const radiation_W_m2K = 4 * 5.67e-8 * 283 ** 3

/** Slits of 2 to 10 mm exchange some air: twice the conductivity (EN ISO 10077-2, from memory). */
const slightlyFactor = 2

/**
 * The conductivity that makes a solid body pass the heat of a cavity (EN ISO 10077-2, published). A cavity that is
 * no rectangle counts as the one of equal area and equal proportion of the box about it.
 */
export const cavityConductivity_W_mK = (it: Cavity): number => {
  const along_mm = Math.sqrt((it.area_mm2 * it.along_mm) / it.across_mm)
  const across_mm = Math.sqrt((it.area_mm2 * it.across_mm) / it.along_mm)
  const still_W_m2K = still_W_mK / metres(along_mm)
  const convection_W_m2K = across_mm < narrow_mm ? still_W_m2K : Math.max(still_W_m2K, stirred_W_m2K)
  const slope = along_mm / across_mm
  const view = (1 + Math.sqrt(1 + slope * slope) - slope) / 2
  const exchange = 1 / (1 / it.emissivity[0] + 1 / it.emissivity[1] - 1)
  const layer_m2K_W = 1 / (convection_W_m2K + radiation_W_m2K * exchange * view)
  const closed_W_mK = conductivityOf_W_mK(along_mm, layer_m2K_W)
  return it.vented === 'closed' ? closed_W_mK : slightlyFactor * closed_W_mK
}
