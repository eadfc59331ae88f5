import { choiceOf, type Edit, type Project } from '../../detail'
import type { Id } from '../../geometry'
import { specified } from '../../units'
import { filled, same, type Words } from '../../words'
import type { Remedy } from '../finding'
import { choose, lengthIn, stateIt } from './fit'

/** Chooses another length: "Choose: corner distance 140 mm". */
export const lengthOf = (name: Words, field: string, part: Id, value_mm: number): readonly Remedy[] =>
  choose({
    edits: [stateIt(field, part, value_mm)],
    says: [filled(same('{0} {1}'), name, lengthIn(value_mm))],
  })

/** Chooses another word of a closed list. Nothing where the part cannot have it. */
export const wordOf = (project: Project, field: string, part: Id, value: string): readonly Remedy[] => {
  const choice = choiceOf(field)
  const word = choice?.allowed(project, part).choices.find(it => it.value === value)
  if (!choice || !word) return []
  const edit: Edit = { kind: 'state', at: { field, part }, to: specified(value) }
  return choose({ edits: [edit], says: [filled(same('{0}: {1}'), choice.name, word.name)] })
}

/** Work on site, and what is stated when it is done. */
export const act = (say: Words, field: string, part: Id): Remedy => ({
  kind: 'act',
  say,
  thenState: { field, part },
})
