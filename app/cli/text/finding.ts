import { sideName } from '../../../core/kinds'
import { type Finding, type FindingRow, findingRows, labels } from '../../../core/rules'
import type { Language } from '../../../core/words'
import { wrapped } from './wrap'

/** A finding as lines: verdict and title, then what it rests on, in a column of labels. */
export const findingLines = (it: Finding, language: Language): readonly string[] => {
  const { mark, word } = labels.verdictName[it.verdict]
  const rows = findingRows(it)
  const terms = Math.max(0, ...rows.map(row => termOf(row, language).length))
  return [
    ...wrapped(
      `${mark} ${word[language].padEnd(wordWidth[language])}  `,
      it.title[language] + cornerOf(it, language),
    ),
    ...rows.flatMap(row => rowLines(row, terms, language)),
  ]
}

/** Room for the longest word of a verdict, so that titles stand in line. */
export const wordWidth: Readonly<Record<Language, number>> = { en: 7, de: 13 }

/** A corner is named behind the title: no heading stands for it. */
const cornerOf = ({ where: { corner } }: Finding, language: Language): string =>
  corner === undefined ? '' : ` (${corner.map(it => sideName[it][language]).join(' – ')})`

/** Lines with a label at the left, under the title of the finding; the terms of a sum stand below each other. */
const rowLines = (row: FindingRow, terms: number, language: Language): readonly string[] => {
  const head = `${' '.repeat(4)}${row.label[language].padEnd(14)}`
  const term = termOf(row, language)
  return wrapped(term === '' ? head : `${head}${term.padEnd(terms + 2)}`, row.text[language])
}

/** A term as it is written by hand: the sign before its number. */
const termOf = ({ term }: FindingRow, language: Language): string =>
  term ? `${term.sign === '' ? ' ' : term.sign} ${term.number[language]}` : ''
