import {
  type ChoiceField,
  type Field,
  type Project,
  choicesOf,
  fieldsOf,
  known,
  knownChoice,
  partIds,
  titleTexts,
} from '../../../core/detail'
import type { Id } from '../../../core/geometry'
import { basisName, writeBounds, writeQuantity } from '../../../core/units'
import { type Language, filled, words } from '../../../core/words'
import { lists } from '../named-list'

/**
 * What can be stated of a project, part by part: each value with its name, what is stated or used in its place, the
 * range or the words that it may have, and why. Only those whose name begins so, and only of one part where one is asked.
 */
export const valuesText = (
  project: Project,
  asked: { readonly name: string; readonly part: unknown },
  language: Language,
): string => {
  const title = titleTexts.map(it => `title.${it}  ${JSON.stringify(project.title[it] ?? '')}`)
  const parts = typeof asked.part === 'string' ? [asked.part] : partIds(project)
  const blocks = [
    ...(asked.part === undefined ? [['', title] as const] : []),
    ...parts.map(part => [part, linesOf(project, part, language)] as const),
  ]
  return blocks
    .map(([part, lines]) => [part, lines.filter(it => it.startsWith(asked.name))] as const)
    .filter(([, lines]) => lines.length > 0)
    .map(([part, lines]) => `${[part, ...lines.map(it => `  ${it}`)].filter(Boolean).join('\n')}\n`)
    .join('')
}

const linesOf = (project: Project, part: Id, language: Language): readonly string[] => [
  ...fieldsOf(project, part).map(it => fieldLine(project, part, it, language)),
  ...choicesOf(project, part).map(it => choiceLine(project, part, it, language)),
  ...lists
    .filter(it => it.has(project, part))
    .map(
      it => `${it.id}  ${it.name[language]}: ${it.says(project, part)?.[language] ?? notStated[language]}`,
    ),
]

const fieldLine = (project: Project, part: Id, field: Field<number>, language: Language): string => {
  const now = known(project, { field: field.id, part })
  const said = now && `${writeQuantity(now.value, field.unit, language)}, ${basisName[now.basis][language]}`
  const { bounds, because } = field.allowed(project, part)
  return `${field.id}  ${field.name[language]}: ${said ?? notStated[language]}; ${writeBounds(bounds, language)} (${because[language]})`
}

const choiceLine = (project: Project, part: Id, choice: ChoiceField, language: Language): string => {
  const now = knownChoice(project, { field: choice.id, part })
  const { choices, because } = choice.allowed(project, part)
  const said = now && (choices.find(it => it.value === now.value)?.name[language] ?? now.value)
  return `${choice.id}  ${choice.name[language]}: ${said ?? notStated[language]}; ${wordsOf(
    choices.map(it => it.value),
    language,
  )} (${because[language]})`
}

/** A list of words, cut short where it is a library. */
const wordsOf = (all: readonly string[], language: Language): string =>
  all.length <= most
    ? all.join(' | ')
    : `${all.slice(0, most).join(' | ')} | ${filled(more, all.length - most)[language]}`
const most = 12
const more = words('{0} more: state a wrong one to see them', '{0} weitere: ein falsches Wort nennt sie')

const notStated = words('not stated', 'nicht genannt')
