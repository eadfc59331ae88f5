import type { FieldAt } from '../detail'
import type { Term } from '../movement'
import { source, trustName } from '../sources'
import { basisName, inWords, usualDecimals, writeCompared, writeQuantity } from '../units'
import { filled, type Language, listed, same, type Words, words } from '../words'
import { fieldName } from './field-name'
import type { Compared, Finding, Remedy } from './finding'
import { governs, label, nothing } from './labels'

/**
 * A line under a finding: what it is, and what is said. A term of a sum has its sign and its number before the words. The
 * second and further lines of one kind have no label.
 */
export type FindingRow = {
  readonly label: Words
  readonly term?: { readonly sign: Term['sign']; readonly number: Words }
  readonly text: Words
}

/** What a finding rests on, line by line: compared values and margin, sum, source, assumed values, remedies. */
export const findingRows = (it: Finding): readonly FindingRow[] => [
  ...('compared' in it && it.compared ? comparedRows(it.compared) : []),
  ...sumRows(it.sum),
  ...(it.cite ? [{ label: label.source, text: sourceOf(it.cite) }] : []),
  ...(it.restsOn.length === 0 ? [] : [{ label: label.restsOn, text: namesOf(it.restsOn) }]),
  ...endRows(it),
]

const comparedRows = (it: Compared): readonly FindingRow[] => {
  switch (it.kind) {
    case 'amount': {
      const at = (part: 'actual' | 'required' | 'margin') =>
        inWords(language => writeCompared(it.actual, it.required, language)[part] ?? '')
      const margin = at('margin')
      return [
        {
          label: label.actual,
          text: it.governs ? filled(same('{0}, {1}'), at('actual'), governs[it.governs]) : at('actual'),
        },
        { label: label.required, text: at('required') },
        ...(margin.en === '' ? [] : [{ label: label.margin, text: margin }]),
      ]
    }
    case 'grade':
      return [
        { label: label.actual, text: it.scale[it.actual] ?? same('') },
        { label: label.required, text: it.scale[it.required] ?? same('') },
      ]
    case 'presence':
      return [
        { label: label.there, text: it.there.length === 0 ? nothing : listed(it.there) },
        ...(it.missing.length === 0 ? [] : [{ label: label.missing, text: listed(it.missing) }]),
      ]
  }
}

/** A sum as it is written by hand: one term a line, the sign before its number, then what it is. */
const sumRows = (sum: readonly Term[]): readonly FindingRow[] =>
  sum.map((term, at) => ({
    label: at === 0 ? label.sum : same(''),
    term: {
      sign: term.sign,
      number: inWords(language => writeTerm(term, language)),
    },
    text: term.basis === 'assumed' ? filled(same('{0} ({1})'), term.says, basisName.assumed) : term.says,
  }))

/** The number of a term with its unit; a negative one behind a sign stands in brackets: `− (−5 °C)`. */
export const writeTerm = (
  term: Term,
  language: Language,
  write: (value: number) => string = value => writeQuantity(value, term.unit, language),
): string => {
  const number = write(roundedIn(term))
  return term.value < 0 && term.sign !== '' && term.sign !== '=' ? `(${number})` : number
}

/** As many decimals as the number needs, at most two more than is usual for its unit. */
const roundedIn = ({ value, unit }: Term): number => Number(value.toFixed(usualDecimals[unit] + 2))

const sourceOf = (it: NonNullable<Finding['cite']>): Words => {
  const title = source(it.source)?.title ?? same(it.source)
  return filled(
    same('{0} ({1})'),
    it.clause ? filled(same('{0}, {1}'), title, it.clause) : title,
    trustName[it.trust],
  )
}

const endRows = (it: Finding): readonly FindingRow[] => {
  switch (it.verdict) {
    case 'met':
      return []
    case 'advice':
    case 'not-met':
      return it.remedies.map((remedy, at) => ({
        label: at === 0 ? label.remedy : same(''),
        text: remedyText(remedy),
      }))
    case 'refer':
      return [
        { label: label.to, text: it.to },
        ...(it.handOver.length === 0 ? [] : [{ label: label.handOver, text: listed(it.handOver) }]),
      ]
    case 'unknown':
      return [{ label: label.state, text: namesOf(it.missing) }]
  }
}

/** Work on site also says what to measure afterwards. */
const remedyText = (it: Remedy): Words =>
  it.kind === 'change'
    ? it.say
    : filled(words('{0}; {1}: {2}', '{0}; {1}: {2}'), it.say, label.then, fieldName(it.thenState))

const namesOf = (fields: readonly FieldAt[]): Words =>
  listed([...new Map(fields.map(fieldName).map(it => [it.en, it])).values()])
