import { inWords, writeNumber } from '../../units'
import { type Words, same } from '../../words'

/** Words and numbers in columns, ready for a terminal or a page. The first column is of words, the others of numbers. */
export type Table = {
  readonly title: Words
  readonly head: readonly Words[]
  readonly rows: readonly (readonly Words[])[]
  /** what has to be said below */
  readonly notes: readonly Words[]
}

/** A number with so many decimals in every language. */
export const decimals = (value: number, places: number): Words =>
  inWords(language => writeNumber(Number(value.toFixed(places)), language, places))

/** A number with its sign, as a difference is written. */
export const difference = (value: number, places: number): Words => {
  const text = decimals(Math.abs(value), places)
  const sign = value < 0 ? '−' : '+'
  return { en: sign + text.en, de: sign + text.de }
}

/** A cell with nothing in it. */
export const empty: Words = same('')
