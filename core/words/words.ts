/** The languages of the window. Sheets may carry further ones as overlays. */
export const languages = ['en', 'de'] as const
export type Language = (typeof languages)[number]

/** What the program says, in every language of the window. Core speaks; the window and the sheets choose. */
export type Words = Readonly<Record<Language, string>>

/** A list that is never empty. */
export type Some<T> = readonly [T, ...T[]]

/** Whether a list has anything in it. */
export const isSome = <T>(list: readonly T[]): list is Some<T> => list.length > 0

/** Words from a pair, in the order of `languages`. */
export const words = (en: string, de: string): Words => ({ en, de })

/** The same text in every language: numbers, symbols, names that nobody translates. */
export const same = (text: string): Words => ({ en: text, de: text })

/** The mark between whole and broken part, by language. Thousands are never marked. */
export const decimalMark: Readonly<Record<Language, string>> = { en: '.', de: ',' }

/**
 * Puts values into words: `{0}` is replaced by the first value, and so on. A value may itself be words; a number gets
 * the decimal mark of its language.
 */
export const filled = (it: Words, ...values: readonly (Words | string | number)[]): Words => {
  const put = (language: Language) =>
    it[language].replace(/\{(\d)\}/g, (_, at: string) => {
      const value = values[Number(at)]
      if (typeof value === 'number') return `${value}`.replace('.', decimalMark[language])
      return value === undefined ? '' : typeof value === 'string' ? value : value[language]
    })
  return { en: put('en'), de: put('de') }
}

/** A list in a sentence: "a, b and c". */
export const listed = (items: readonly Words[]): Words => ({
  en: joined(
    items.map(it => it.en),
    'and',
  ),
  de: joined(
    items.map(it => it.de),
    'und',
  ),
})

const joined = (items: readonly string[], and: string): string =>
  items.length < 2
    ? items.join('')
    : `${items.slice(0, -1).join(', ')} ${and} ${items[items.length - 1] ?? ''}`
