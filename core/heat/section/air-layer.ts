import { conductivityOf_W_mK } from '../si'

/** Which way the heat goes through a layer. */
export type HeatDirection = 'up' | 'horizontal' | 'down'

/** Unventilated air layers: thickness in mm, resistance upwards, sideways, downwards in m²K/W (EN ISO 6946 table 8, published). */
const rows = [
  [0, 0, 0, 0],
  [5, 0.11, 0.11, 0.11],
  [7, 0.13, 0.13, 0.13],
  [10, 0.15, 0.15, 0.15],
  [15, 0.16, 0.17, 0.17],
  [25, 0.16, 0.18, 0.19],
  [50, 0.16, 0.18, 0.21],
  [100, 0.16, 0.18, 0.22],
  [300, 0.16, 0.18, 0.23],
] as const

/** Resistance of an unventilated air layer, m²K/W; between the rows straight, beyond 300 mm as at 300 mm. */
export const airLayer_m2K_W = (thickness_mm: number, direction: HeatDirection): number => {
  const column = direction === 'up' ? 1 : direction === 'horizontal' ? 2 : 3
  const next = rows.find(row => thickness_mm <= row[0]) ?? rows[rows.length - 1] ?? rows[0]
  const before = rows[Math.max(0, rows.indexOf(next) - 1)] ?? rows[0]
  const share = next === before ? 1 : Math.min(1, (thickness_mm - before[0]) / (next[0] - before[0]))
  return before[column] + share * (next[column] - before[column])
}

/** The conductivity that a body of the layer's thickness needs for the same resistance. */
export const airLayerConductivity_W_mK = (thickness_mm: number, direction: HeatDirection): number =>
  conductivityOf_W_mK(thickness_mm, airLayer_m2K_W(thickness_mm, direction))

/** A gap counts as an air layer, not as a cavity, when it is at least this many times as long as thick (EN ISO 6946, from memory). */
export const layerProportion = 10
