import { type Edit, editKinds, refusedBy } from '../../../core/detail'
import { type Problem, type Result, ok, refused } from '../../../core/units'
import { filled, isSome, words } from '../../../core/words'
import { changeProject, nothingSaid, toOption } from '../change-project'
import type { Command } from './command'
import { languageOption } from './language'

/** Changes a project by any edit, as data: what the window does in one step can be done here, and in a script. */
export const edit: Command = {
  name: 'edit',
  says: 'change a project by edits as JSON, one or a list: edit FILE \'{"kind":"split-zone","zone":"zone-11","at_mm":600}\'',
  takes: [
    { name: 'file', says: 'the project file' },
    { name: 'edits', says: `an edit or a list of them; kinds: ${Object.keys(editKinds).join(', ')}` },
  ],
  options: [toOption, languageOption],
  run: ([file = '', text = ''], chosen, io) =>
    changeProject(file, { chosen, io, at: 'edit' }, () => {
      const edits = editsIn(text)
      return edits.ok ? ok({ edits: edits.value, says: nothingSaid }) : edits
    }),
}

const editsIn = (text: string): Result<readonly Edit[]> => {
  const raw = parsed(text)
  if (!raw.ok) return raw
  const all: readonly unknown[] = Array.isArray(raw.value) ? raw.value : [raw.value]
  const read = all.map(readEdit)
  const problems: readonly Problem[] = read.flatMap((it, i) =>
    it.ok
      ? []
      : it.problems.map((one): Problem => ({ ...one, at: all.length > 1 ? `${i + 1}. ${one.at}` : one.at })),
  )
  return isSome(problems) ? refused(...problems) : ok(read.flatMap(it => (it.ok ? [it.value] : [])))
}

const parsed = (text: string): Result<unknown> => {
  try {
    return ok(JSON.parse(text))
  } catch {
    // JSON.parse has no other way to say that a text is none.
    return refused({ at: '', say: words('this is no valid JSON', 'das ist kein gültiges JSON') })
  }
}

const readEdit = (raw: unknown): Result<Edit> => {
  const kind = typeof raw === 'object' && raw !== null && 'kind' in raw ? raw.kind : undefined
  const found = Object.values(editKinds).find(it => it.kind === kind)
  if (found === undefined)
    return refused({ at: 'kind', say: filled(words('one of: {0}', 'eines von: {0}'), Object.keys(editKinds).join(', ')) }) // prettier-ignore
  const result = found.schema.safeParse(raw)
  return result.success ? ok(result.data) : refusedBy(result.error)
}
