/** The only place of the heat room that changes units. Outlines are in millimetres, flows and films in SI. */

/** A film coefficient as flow per millimetre of surface and metre of depth: W/(m²K) to W/(m·K) per mm. */
export const perMillimetre = (film_W_m2K: number): number => film_W_m2K * 1e-3

/** A thickness in metres, as conductivities want it. */
export const metres = (length_mm: number): number => length_mm * 1e-3

/** Thermal resistance of a layer, m²K/W. */
export const resistance_m2K_W = (thickness_mm: number, lambda_W_mK: number): number =>
  metres(thickness_mm) / lambda_W_mK

/** The conductivity of a layer that has the given resistance, W/(mK). */
export const conductivityOf_W_mK = (thickness_mm: number, layer_m2K_W: number): number =>
  metres(thickness_mm) / layer_m2K_W

/** What a foil conducts along itself, per metre of depth and times its length: W/K. */
export const foilConductance_W_K = (thickness_mm: number, lambda_W_mK: number): number =>
  metres(thickness_mm) * lambda_W_mK

/** Kelvin from degrees Celsius. */
export const kelvin = (temperature_C: number): number => temperature_C + 273.15
