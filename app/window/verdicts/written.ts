import { fieldOf, type Project } from '../../../core/detail'
import { fieldName, type Finding, findingKey, verdicts, type Verdict, writeTerm } from '../../../core/rules'
import { source, trustName } from '../../../core/sources'
import { writeCompared, writeNumber, writeQuantity } from '../../../core/units'
import { filled, type Language, listed } from '../../../core/words'
import { capital } from '../capital'
import { saysSame } from '../state/steady'
import { say } from '../window-words'

/** A verdict made ready to be read in one language. */
export type WrittenVerdict = {
  readonly actual: string
  readonly required: string
  /** at the right of the title: the margin, or the word of the verdict */
  readonly short: string
  readonly margin: string | undefined
}

/** Actual, required and margin of a finding, or what takes their place. */
export const writeVerdict = (it: Finding, language: Language): WrittenVerdict => {
  const word = say[it.verdict][language]
  if (it.verdict === 'unknown') {
    const names = listed(it.missing.map(fieldName))
    return { actual: filled(say.missing, names)[language], required: '', short: word, margin: undefined }
  }
  const compared = it.compared
  if (compared === undefined)
    return {
      actual: it.verdict === 'refer' ? it.to[language] : '',
      required: '',
      short: word,
      margin: undefined,
    }
  switch (compared.kind) {
    case 'amount': {
      const { actual, required, margin } = writeCompared(compared.actual, compared.required, language)
      return {
        actual,
        required,
        margin: margin && signed(margin),
        short: it.verdict === 'met' && margin ? signed(margin) : word,
      }
    }
    case 'grade': {
      const [actual, required] = [compared.scale[compared.actual], compared.scale[compared.required]]
      return {
        actual: actual?.[language] ?? '',
        required: required?.[language] ?? '',
        short: word,
        margin: undefined,
      }
    }
    case 'presence': {
      const { there, missing } = compared
      const gap = filled(say.missing, listed(missing))[language]
      return {
        actual: missing.length > 0 ? gap : listed(there)[language],
        required: '',
        margin: undefined,
        short: word,
      }
    }
  }
}

/** A margin inside its limit has a plus, none at all both signs, and what is short its own minus. */
const signed = (margin: string): string =>
  margin.startsWith('−') ? margin : /^0(?:[.,]0+)?(?![\d.,])/.test(margin) ? `±${margin}` : `+${margin}`

/** The assumed values beneath a finding, each once, with their present numbers. */
export const writeRests = (project: Project, it: Finding, language: Language): readonly string[] => [
  ...new Set(
    it.restsOn.map(at => {
      const field = fieldOf(at.field)
      const value = field?.read(project, at.part) ?? field?.fallback(project, at.part)
      const name = fieldName(at)[language]
      return field && value ? `${name} ${writeQuantity(value.value, field.unit, language)}` : name
    }),
  ),
]

/** The lines of a sum. Millimetres are what everybody reads; every other unit stands behind its number. */
export const writeSum = (it: Finding, language: Language) =>
  it.sum.map(term => {
    const number = term.unit === 'mm' ? writeTerm(term, language, value => writeNumber(value, language)) : writeTerm(term, language)
    return {
      number: `${term.sign === '' || term.sign === '=' ? '' : `${term.sign} `}${number}`,
      unit: term.unit,
      isTotal: term.sign === '=',
      says: term.says[language],
      basis: term.basis,
    }
  }) // prettier-ignore

/** Who says so, where, and how far it can be trusted. */
export const writeSource = (it: Finding, language: Language): string | undefined => {
  if (it.cite === undefined) return undefined
  const { source: id, clause, trust } = it.cite
  const title = source(id)?.title
  const name = title === undefined ? id : typeof title === 'string' ? title : title[language]
  return `${[name, clause].filter(Boolean).join(', ')}; ${trustName[trust][language]}.`
}

/** A finding of several sides that says the same everywhere is one row. */
export type Row = {
  readonly key: string
  readonly first: Finding
  readonly written: WrittenVerdict
  readonly sides: readonly NonNullable<Finding['where']['side']>[]
}

/** Whether two rows of the same finding are read the same, as long as they are closed. */
export const isReadSame = (a: Row, b: Row): boolean =>
  a.first.verdict === b.first.verdict &&
  saysSame(
    [a.first.title, a.first.where, a.written, a.sides],
    [b.first.title, b.first.where, b.written, b.sides],
  )

/** Findings as rows: of one side, or of all with alike ones drawn together. */
export const rowsOf = (findings: readonly Finding[], language: Language): readonly Row[] => {
  const rows = new Map<
    string,
    {
      first: Finding
      written: WrittenVerdict
      sides: NonNullable<Finding['where']['side']>[]
      key: string
    }
  >()
  for (const it of findings) {
    const written = writeVerdict(it, language)
    const { actual, required, margin } = written
    const alike = [it.rule, it.verdict, it.where.part, actual, required, margin].join('|')
    const found = rows.get(alike)
    if (found === undefined)
      rows.set(alike, {
        key: findingKey(it),
        first: it,
        written,
        sides: it.where.side ? [it.where.side] : [],
      })
    else if (it.where.side) found.sides.push(it.where.side)
  }
  return [...rows.values()]
}

/** How many findings there are of each verdict, worst first. */
export const countsOf = (
  findings: readonly Finding[],
): readonly { readonly verdict: Verdict; readonly count: number }[] =>
  verdicts.map(verdict => ({ verdict, count: findings.filter(it => it.verdict === verdict).length }))

/** The title of a row. */
export const titleOf = (it: Pick<Finding, 'title'>, language: Language): string => capital(it.title[language])
