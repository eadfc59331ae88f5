import { decimalMark, type Language, type Words } from '../words'
import type { Band, Bounds } from './band'
import { type Unit, unitSign } from './unit'

/** Stands before a negative number: the true minus sign, as wide as a plus. */
export const minus = '\u2212'

/** Stands between a number and its unit, so that no line breaks there. */
export const noBreak = '\u00a0'

/** Finest step that is ever written: a millionth of the unit. */
export const mostDecimals = 6

/**
 * A number as it stands in a text of the language: `−12,5`. With `decimals` it has exactly that many,
 * without it has as many as the value needs, at most `mostDecimals`. Throws on NaN, which no input can cause.
 */
export const writeNumber = (value: number, language: Language, decimals?: number): string => {
  if (Number.isNaN(value)) throw new Error(`not a number to write: ${value}`)
  const digits = digitsOf(Math.abs(value), decimals)
  const sign = value < 0 && /[1-9∞]/.test(digits) ? minus : ''
  return sign + digits.replace('.', decimalMark[language])
}

/** A number with its unit: `12,5 mm`, `3°`. */
export const writeQuantity = (value: number, unit: Unit, language: Language, decimals?: number): string =>
  writeNumber(value, language, decimals) + writeUnit(unit, language)

/** What follows the number: the sign of the unit after a no-break space; an angle needs no space, a bare number nothing. */
export const writeUnit = (unit: Unit, language: Language): string => {
  const sign = unitSign[unit][language]
  return sign === '' || unit === 'deg' ? sign : noBreak + sign
}

/** A band with its unit: `10–15 mm`, `−2 to 3 mm`; a single value where both ends look alike. */
export const writeBand = (band: Band, unit: Unit, language: Language, decimals?: number): string => {
  const min = writeNumber(band.min, language, decimals)
  const max = writeNumber(band.max, language, decimals)
  const span = min === max ? min : band.min < 0 ? `${min} ${upTo[language]} ${max}` : `${min}–${max}`
  return span + writeUnit(unit, language)
}

/** Bounds with their unit: `≥ 10 mm`, `≤ 15 mm`, `6–15 mm`; a word where everything is allowed. */
export const writeBounds = (bounds: Bounds, language: Language, decimals?: number): string => {
  const { min, max, unit } = bounds
  if (min === undefined && max === undefined) return anything[language]
  if (min === undefined) return `≤${noBreak}${writeQuantity(max ?? 0, unit, language, decimals)}`
  if (max === undefined) return `≥${noBreak}${writeQuantity(min, unit, language, decimals)}`
  return writeBand({ min, max }, unit, language, decimals)
}

/** Something written in every language of the window. */
export const inWords = (write: (language: Language) => string): Words => ({
  en: write('en'),
  de: write('de'),
})

const upTo: Words = { en: 'to', de: 'bis' }
const anything: Words = { en: 'any', de: 'beliebig' }

const digitsOf = (size: number, decimals: number | undefined): string => {
  if (size === Infinity) return '∞'
  // toFixed turns to exponents here; numbers this large have no broken part left.
  if (size >= 1e21) return BigInt(size).toString()
  if (decimals !== undefined) return size.toFixed(decimals)
  return trimmed(size.toFixed(mostDecimals))
}

/** Digits without the zeros, and without the mark, that end them for nothing. */
const trimmed = (digits: string): string =>
  digits.includes('.') ? digits.replace(/0+$/, '').replace(/\.$/, '') : digits
