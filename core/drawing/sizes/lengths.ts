import { type Band, writeNumber } from '../../units'
import type { Language, Words } from '../../words'

/** What lengths on a sheet are written in: one or the other, never both. The model always keeps millimetres. */
export const lengthUnits = ['mm', 'inch'] as const
export type LengthUnit = (typeof lengthUnits)[number]

const mm_in = 25.4

/** How a unit of length is written after a number, and how long it is. */
export const lengthSign: Readonly<Record<LengthUnit, string>> = { mm: 'mm', inch: 'in' }
export const lengthOf_mm: Readonly<Record<LengthUnit, number>> = { mm: 1, inch: mm_in }

/** Tenths of a millimetre, or hundredths of an inch: finer than anything is built. Ours. */
export const stepsIn: Readonly<Record<LengthUnit, number>> = { mm: 10, inch: 100 }

/** A length without its unit, to the step of the unit. */
export const writeLength = (length_mm: number, unit: LengthUnit, language: Language): string =>
  writeNumber(Math.round((length_mm / lengthOf_mm[unit]) * stepsIn[unit]) / stepsIn[unit], language)

/**
 * A size with its range: `12 ±3` where both sides are alike, else `10…15`; a bare number only where nothing may vary.
 */
export const bandWords = (
  planned_mm: number,
  band: Band,
  language: Language,
  unit: LengthUnit = 'mm',
): string => {
  const [below, above] = [planned_mm - band.min, band.max - planned_mm]
  const write = (it_mm: number) => writeLength(it_mm, unit, language)
  if (Math.abs(below - above) > 0.05) return `${write(band.min)}…${write(band.max)}`
  return above < 0.05 ? write(planned_mm) : `${write(planned_mm)} ±${write(above)}`
}

/** Numbers of a note are lengths in mm unless one of these follows. */
const length =
  /(?<![\p{L}\d_.,])(\d+(?:[.,]\d+)?)(?![\d.,]*\d)(?!\s*(?:m|%|°|kg|K|W|N|Pa)(?![\p{L}]))(?:\s*mm(?![\p{L}]))?/gu

/** A note with its lengths in the unit of the sheet: `20 mm` becomes `0.79 in`, `tape 20/10` `tape 0.79/0.39`. */
export const noteIn = (note: Words, unit: LengthUnit): Words => {
  if (unit === 'mm') return note
  const put = (language: Language) =>
    note[language].replaceAll(length, (all: string, number: string) => {
      const written = writeLength(Number(number.replace(',', '.')), unit, language)
      return all.endsWith('mm') ? `${written} ${lengthSign[unit]}` : written
    })
  return { en: put('en'), de: put('de') }
}
