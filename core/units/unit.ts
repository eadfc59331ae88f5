import { type Words, same, words } from '../words'

/** Every quantity of the model is kept in one of these units, whatever was typed. */
export const units = [
  'mm', 'm', 'deg', 'pct', 'C', 'K', 'Pa', 'N', 'N_m', 'N_mm2', 'Nm', 'cm4', 'dB', 'kg', 'one', 'W_mK', 'mm_m', 'W_m2K', 'm2K_W', 'W_m', 'kg_m2',
] as const // prettier-ignore
export type Unit = (typeof units)[number]

/** How a unit is written after its number. */
export const unitSign: Readonly<Record<Unit, Words>> = {
  mm: same('mm'),
  m: same('m'),
  deg: same('°'),
  pct: same('%'),
  C: same('°C'),
  K: same('K'),
  Pa: same('Pa'),
  N: same('N'),
  N_m: same('N/m'),
  N_mm2: same('N/mm²'),
  Nm: same('N·m'),
  cm4: same('cm⁴'),
  dB: same('dB'),
  kg: same('kg'),
  one: words('', ''),
  W_mK: same('W/(m·K)'),
  mm_m: same('mm/m'),
  W_m2K: same('W/(m²·K)'),
  m2K_W: same('m²·K/W'),
  W_m: same('W/m'),
  kg_m2: same('kg/m²'),
}
