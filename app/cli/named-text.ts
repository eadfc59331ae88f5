import { type Edit, type Project, titleTexts } from '../../core/detail'
import { type Result, ok } from '../../core/units'
import { filled, same } from '../../core/words'
import { done } from './change-project'
import type { NamedValue } from './named'

/** The texts of the title block, by the names that they are stated under. */
export const textNames: readonly string[] = titleTexts.map(it => `title.${it}`)

/** A text of the title block by its name, or the own name of a part; nothing where the name is none of these. */
export const namedText = (project: Project, name: string, part: unknown): Result<NamedValue> | undefined => {
  const text = titleTexts.find(it => `title.${it}` === name)
  if (text !== undefined) return written(name, to => ({ kind: 'entitle', text, to }))
  if (name !== 'name') return undefined
  const [first = ''] = Object.keys(project.openings)
  const named = typeof part === 'string' ? part : first
  return written(`${named} ${name}`, to => ({ kind: 'rename', part: named, to }))
}

const written = (at: string, edit: (to: string) => Edit): Result<NamedValue> => {
  const as = (to: string) => done([edit(to)], filled(same('{0}: {1}'), at, to))
  return ok({ read: as, clear: () => as('') })
}
