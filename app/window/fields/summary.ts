import { choiceOf, fieldOf, type FieldAt, known, knownChoice, type Project } from '../../../core/detail'
import { writeNumber, writeQuantity } from '../../../core/units'
import { filled, type Language } from '../../../core/words'
import { say as words } from '../window-words'
import { type FieldGroup, type FieldRow, isStated } from './fields-of-part'

/** What a folded group says of its values: the numbers themselves where they are few and telling, else how many are stated. */
export const summaryOf = (project: Project, { id, rows }: FieldGroup, language: Language): string => {
  if (id === 'duties') return yesses(project, rows, language) || words.noneStated[language]
  if (id === 'declared' || id === 'reveal' || id === 'frame' || id === 'more')
    return numbers(project, rows, language) || words.noneStated[language]
  const stated = rows.filter(it => isStated(project, it))
  if (id === 'survey')
    return stated.length === 0
      ? words.notMeasured[language]
      : filled(words.measuredCount, `${stated.length}`)[language]
  if (id === 'sizes') return sizes(project, rows, language)
  return filled(words.statedOf, `${stated.length}`, `${rows.length}`)[language]
}

const yesses = (project: Project, rows: readonly FieldRow[], language: Language): string =>
  rows
    .flatMap(({ at }) =>
      knownChoice(project, at)?.value === 'yes' ? [choiceOf(at.field)?.name[language] ?? ''] : [],
    )
    .join(', ')

const numbers = (project: Project, rows: readonly FieldRow[], language: Language): string =>
  rows
    .flatMap(({ kind, at }) => {
      const field = kind === 'number' ? fieldOf(at.field) : undefined
      const value = field && known(project, at)
      return field && value ? [`${symbolOf(at)}${writeQuantity(value.value, field.unit, language)}`] : []
    })
    .slice(0, 3)
    .join(' · ')

/** The symbol of a value where it has one: λ, µ. */
const symbolOf = ({ field }: FieldAt): string => (/lambda/.test(field) ? 'λ ' : /mu-/.test(field) ? 'µ ' : '')

const sizes = (project: Project, rows: readonly FieldRow[], language: Language): string =>
  ['opening.width', 'opening.height']
    .flatMap(field => {
      const row = rows.find(it => it.at.field === field)
      const value = row && known(project, row.at)
      return value ? [writeNumber(value.value, language)] : []
    })
    .join(' × ')
