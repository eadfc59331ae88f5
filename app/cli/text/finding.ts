import type { FieldAt } from '../../../core/detail'
import { sideName } from '../../../core/kinds'
import type { Term } from '../../../core/movement'
import { type Compared, type Finding, type Remedy, fieldName, labels } from '../../../core/rules'
import { source, trustName } from '../../../core/sources'
import { basisName, usualDecimals, writeCompared, writeQuantity } from '../../../core/units'
import { type Language, type Words, listed } from '../../../core/words'
import { wrapped } from './wrap'

const { governs, label, nothing, verdictName } = labels

/** A finding as lines: verdict and title, then what it rests on, in a column of labels. */
export const findingLines = (it: Finding, language: Language): readonly string[] => {
  const { mark, word } = verdictName[it.verdict]
  const row = rowIn(language)
  return [
    ...wrapped(
      `${mark} ${word[language].padEnd(wordWidth[language])}  `,
      it.title[language] + cornerOf(it, language),
    ),
    ...('compared' in it && it.compared ? comparedRows(it.compared, row, language) : []),
    ...sumRows(it.sum, row, language),
    ...(it.cite ? row(label.source, sourceOf(it.cite, language)) : []),
    ...(it.restsOn.length === 0 ? [] : row(label.restsOn, namesOf(it.restsOn)[language])),
    ...endRows(it, row, language),
  ]
}

/** Room for the longest word of a verdict, so that titles stand in line. */
export const wordWidth: Readonly<Record<Language, number>> = { en: 7, de: 13 }

/** A corner is named behind the title: no heading stands for it. */
const cornerOf = ({ where: { corner } }: Finding, language: Language): string =>
  corner === undefined ? '' : ` (${corner.map(it => sideName[it][language]).join(' – ')})`

type Row = (label: Words, text: string) => readonly string[]

/** Lines with a label at the left, under the title of the finding. */
const rowIn =
  (language: Language): Row =>
  (of, text) =>
    wrapped(`${' '.repeat(4)}${of[language].padEnd(14)}`, text)

const comparedRows = (it: Compared, row: Row, language: Language): readonly string[] => {
  switch (it.kind) {
    case 'amount': {
      const { actual, required, margin } = writeCompared(it.actual, it.required, language)
      const where = it.governs ? `, ${governs[it.governs][language]}` : ''
      return [
        ...row(label.actual, actual + where),
        ...row(label.required, required),
        ...(margin === undefined ? [] : row(label.margin, margin)),
      ]
    }
    case 'grade':
      return [
        ...row(label.actual, it.scale[it.actual]?.[language] ?? ''),
        ...row(label.required, it.scale[it.required]?.[language] ?? ''),
      ]
    case 'presence':
      return [
        ...row(label.there, (it.there.length === 0 ? nothing : listed(it.there))[language]),
        ...(it.missing.length === 0 ? [] : row(label.missing, listed(it.missing)[language])),
      ]
  }
}

/** A sum as it is written by hand: one term a line, the sign before its number, what it is behind. */
const sumRows = (sum: readonly Term[], row: Row, language: Language): readonly string[] => {
  const numbers = sum.map(it => `${it.sign === '' ? ' ' : it.sign} ${termNumber(it, language)}`)
  const width = Math.max(0, ...numbers.map(it => it.length))
  return sum.flatMap((term, at) => {
    const basis = term.basis === 'assumed' ? ` (${basisName.assumed[language]})` : ''
    // A sign first would be taken for the indent of the row, so number and words are put together here.
    const [first = '', ...more] = row(at === 0 ? label.sum : none, '·')
    const head = first.slice(0, -1) + (numbers[at] ?? '').padEnd(width + 2)
    return [...wrapped(head, term.says[language] + basis), ...more]
  })
}

const none: Words = { en: '', de: '' }

/** As many decimals as the number needs, at most two more than is usual for its unit. */
const termNumber = ({ value, unit }: Term, language: Language): string => {
  const most = usualDecimals[unit] + 2
  return writeQuantity(Number(value.toFixed(most)), unit, language)
}

const sourceOf = (it: NonNullable<Finding['cite']>, language: Language): string => {
  const title = source(it.source)?.title[language] ?? it.source
  return `${[title, it.clause].filter(Boolean).join(', ')} (${trustName[it.trust][language]})`
}

const endRows = (it: Finding, row: Row, language: Language): readonly string[] => {
  switch (it.verdict) {
    case 'met':
      return []
    case 'advice':
    case 'not-met':
      return it.remedies.flatMap(remedy => row(label.remedy, remedyText(remedy)[language]))
    case 'refer':
      return [
        ...row(label.to, it.to[language]),
        ...(it.handOver.length === 0 ? [] : row(label.handOver, listed(it.handOver)[language])),
      ]
    case 'unknown':
      return row(label.state, namesOf(it.missing)[language])
  }
}

/** Work on site also says what to measure afterwards. */
const remedyText = (it: Remedy): Words =>
  it.kind === 'change'
    ? it.say
    : {
        en: `${it.say.en}; ${label.then.en}: ${fieldName(it.thenState).en}`,
        de: `${it.say.de}; ${label.then.de}: ${fieldName(it.thenState).de}`,
      }

const namesOf = (fields: readonly FieldAt[]): Words => {
  const names = fields.map(fieldName)
  return listed(names.filter((it, at) => names.findIndex(other => other.en === it.en) === at))
}
