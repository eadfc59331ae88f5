/** Acceleration of gravity in m/s². */
const gravity = 9.81

/** Partial factors of EN 1990 on weight, wind and imposed load, and what goes with a leading action; from memory. */
export const factors = { dead: 1.35, wind: 1.5, guard: 1.5, windWith: 0.6, guardWith: 0.7 } as const

/** Weight of a mass in N. */
export const weight_N = (mass_kg: number): number => mass_kg * gravity

/** What the most loaded support carries: half of the weight, at the end of two or in the middle of three. In N. */
export const mostLoadedSupport_N = (mass_kg: number): number => weight_N(mass_kg) / 2

/** Design pressure under a block in N/mm². */
export const blockPressure_N_mm2 = (weight: number, length_mm: number, width_mm: number): number =>
  (factors.dead * weight) / (length_mm * width_mm)

/** Wind and guard on one fixing, design values in N, by which leads, and both in full. */
export type Combined = { readonly guardLeads: number; readonly windLeads: number; readonly inFull: number }

export const combined = (wind_N: number, guard_N: number): Combined => ({
  guardLeads: guard_N + factors.windWith * wind_N,
  windLeads: wind_N + factors.guardWith * guard_N,
  inFull: wind_N + guard_N,
})
