import { type Problem, writeBounds } from '../../../core/units'
import type { Language } from '../../../core/words'

/** Every problem of an input, one a line: which input, where in it, what, and what would be taken. */
export const problemsText = (of: string, problems: readonly Problem[], language: Language): string =>
  problems.map(it => `${[of, it.at, sentence(it, language)].filter(Boolean).join(': ')}\n`).join('')

const sentence = ({ say, allowed }: Problem, language: Language): string => {
  const range = allowed && writeBounds(allowed, language)
  // A range that the words name already is not named twice.
  return range === undefined || say[language].includes(range)
    ? say[language]
    : `${say[language]} (${allowedWord[language]} ${range})`
}

const allowedWord = { en: 'allowed:', de: 'erlaubt:' }
