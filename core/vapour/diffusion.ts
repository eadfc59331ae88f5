/** What still air lets through: vapour permeability, kg/(m·s·Pa) (EN ISO 13788, DIN 4108-3: 2·10⁻¹⁰, published). */
export const permeability_kg_msPa = 2e-10

/** Air films count for vapour as this much air on either side (from memory; without weight beside anything else). */
export const film_m = 0.01

/** Seconds of days. */
export const seconds = (days: number): number => days * 86_400

/** The equivalent air layer of a thickness: µ·d. The only place of the room that changes millimetres to metres. */
export const airLayer_m = (mu: number, thickness_mm: number): number => (mu * thickness_mm) / 1000

/** What flows through an equivalent air layer, kg/(m²·s). Without a layer nothing holds the pressures apart: they are one. */
export const through_kg_m2s = (drop_Pa: number, sd_m: number): number =>
  sd_m > 0 ? (permeability_kg_msPa * drop_Pa) / sd_m : 0
