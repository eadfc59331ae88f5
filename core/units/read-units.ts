import { type Unit, unitSign } from './unit'

/** A unit as it may be typed, and how many of the value's own unit it is. `feet` may be followed by inches. */
export type TypedUnit = {
  readonly sign: string
  readonly size: number
  readonly isFeet: boolean
  readonly isMetre: boolean
}

/** What may stand after a number when a value of this unit is asked for, the longest first. */
export const typedUnits = (unit: Unit): readonly TypedUnit[] =>
  [...own(unit), ...lengths(unit)].toSorted((a, b) => b.sign.length - a.sign.length)

/** Inches to a foot. */
export const inchesToFoot = 12

const own = (unit: Unit): readonly TypedUnit[] =>
  unit === 'mm' || unit === 'm'
    ? []
    : [...new Set([unitSign[unit].en, unitSign[unit].de, ...alsoTyped[unit]])]
        .filter(sign => sign !== '')
        .map(sign => ({ sign, size: 1, isFeet: false, isMetre: false }))

/** Spellings for keyboards without the right signs. */
const alsoTyped: Readonly<Record<Exclude<Unit, 'mm' | 'm'>, readonly string[]>> = {
  deg: ['deg', 'grad'],
  pct: ['percent', 'prozent'],
  C: ['C', '° C'],
  K: [],
  Pa: [],
  N: [],
  N_m: [],
  N_mm2: ['N/mm2', 'MPa'],
  Nm: ['Nm'],
  cm4: ['cm4'],
  dB: [],
  kg: [],
  one: [],
  W_mK: ['W/mK', 'W/(mK)', 'W/m·K'],
  mm_m: [],
  W_m2K: ['W/m²K', 'W/m2K', 'W/(m2K)', 'W/(m²K)'],
  m2K_W: ['m²K/W', 'm2K/W'],
  kg_m2: ['kg/m²', 'kg/m2'],
  W_m: [],
}

/** Millimetres in a unit of length. The inch is 25.4 mm by definition (international yard and pound agreement, 1959). */
const spellings: readonly (readonly [size_mm: number, ...signs: readonly string[]])[] = [
  [1, 'mm'],
  [10, 'cm'],
  [1000, 'm'],
  [25.4, 'in', 'inch', 'inches', 'zoll', '"', '″', '”', "''"],
  [304.8, 'ft', 'foot', 'feet', 'fuß', "'", '′', '’'],
]

const lengths = (unit: Unit): readonly TypedUnit[] => {
  if (unit !== 'mm' && unit !== 'm') return []
  const own_mm = unit === 'm' ? 1000 : 1
  return spellings.flatMap(([size_mm, ...signs]) =>
    signs.map(sign => ({
      sign,
      size: size_mm / own_mm,
      isFeet: size_mm === 304.8,
      isMetre: size_mm === 1000,
    })),
  )
}
