/**
 * Moist air. Saturation pressure over water and, below freezing, over ice, by the formulas of EN ISO 13788 and
 * DIN 4108-3 (published); everything else follows from them.
 */

/** What water vapour in air can reach at a temperature before it condenses, Pa. */
export const saturation_Pa = (temperature_C: number): number => {
  const { factor, offset_C } = temperature_C >= 0 ? overWater : overIce
  return triple_Pa * Math.exp((factor * temperature_C) / (offset_C + temperature_C))
}

/** The temperature at which a vapour pressure is saturation, °C: the dew point, below freezing the frost point. */
export const dewPoint_C = (vapour_Pa: number): number => {
  const { factor, offset_C } = vapour_Pa >= triple_Pa ? overWater : overIce
  const exponent = Math.log(vapour_Pa / triple_Pa)
  return (offset_C * exponent) / (factor - exponent)
}

/** Vapour pressure of air, Pa. */
export const vapour_Pa = (temperature_C: number, humidity_pct: number): number =>
  (humidity_pct / 100) * saturation_Pa(temperature_C)

/** Relative humidity of air, or at a surface of that temperature, per cent. */
export const humidity_pct = (temperature_C: number, pressure_Pa: number): number =>
  (100 * pressure_Pa) / saturation_Pa(temperature_C)

/**
 * The temperature of a surface at which the air that touches it has a relative humidity: with 80 % the line below which
 * mould can grow (EN ISO 13788, published). At 20 °C and 50 % that is 12.62 °C; the 12.5 °C that DIN 4108-2 gives beside
 * its fRsi of 0.70 are rounded and kept apart.
 */
export const surfaceLimit_C = (pressure_Pa: number, humidityAtSurface_pct: number): number =>
  dewPoint_C((100 * pressure_Pa) / humidityAtSurface_pct)

/** Relative humidity at a surface from which mould can grow (EN ISO 13788, DIN 4108-2, published). */
export const mould_pct = 80

/** fRsi = (θsi − θe) / (θi − θe): how far a surface is from outside to inside. */
export const surfaceFactor = (
  surface_C: number,
  { inside_C, outside_C }: { readonly inside_C: number; readonly outside_C: number },
): number => (surface_C - outside_C) / (inside_C - outside_C)

/** The temperature of a surface that has a factor. */
export const surfaceOf_C = (
  fRsi: number,
  { inside_C, outside_C }: { readonly inside_C: number; readonly outside_C: number },
): number => outside_C + fRsi * (inside_C - outside_C)

const triple_Pa = 610.5
const overWater = { factor: 17.269, offset_C: 237.3 }
const overIce = { factor: 21.875, offset_C: 265.5 }
