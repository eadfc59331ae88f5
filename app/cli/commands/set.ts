import { applyEdits, saveProject } from '../../../core/detail'
import type { Problem } from '../../../core/units'
import { words } from '../../../core/words'
import { namedValue } from '../named-value'
import { readProject } from '../read-project'
import { problemsText } from '../text/problems'
import { writeWhole } from '../write-file'
import type { Command } from './command'
import { languageOf, languageOption } from './language'

/** States one named value of a project, typed as in a field of the window. */
export const set: Command = {
  name: 'set',
  says: 'state one value of a project: set FILE joint.planned "12,5"',
  takes: [
    { name: 'file', says: 'the project file' },
    { name: 'field', says: 'name of the value, as in joint.planned' },
    {
      name: 'value',
      says: 'a number with or without its unit (sums and both decimal marks are read), or a word of its list',
    },
  ],
  options: [
    { flags: '--part <id>', says: 'part that has the value, where several have it' },
    { flags: '--to <file>', says: 'write to another file' },
    languageOption,
  ],
  run: async ([file = '', name = '', typed = ''], chosen, io) => {
    const language = languageOf(chosen)
    const refuse = (of: string, problems: readonly Problem[]) => {
      io.err(problemsText(of, problems, language))
      return 2 as const
    }
    const opened = await readProject(file)
    if (!opened.ok) return refuse(file, opened.problems)
    const to = typeof chosen['to'] === 'string' ? chosen['to'] : file
    if (/\.(pdf|svg)$/i.test(to)) return refuse(to, [{ at: '', say: notInSheet }])
    if (opened.value.readOnly) return refuse(file, [{ at: '', say: newer }])
    const { project } = opened.value
    const named = namedValue(project, name, chosen['part'])
    if (!named.ok) return refuse(name, named.problems)
    const { part, called, read } = named.value
    const value = read(typed)
    if (!value.ok) return refuse(name, value.problems)
    const edited = applyEdits(project, [{ kind: 'state', at: { field: name, part }, to: value.value.to }])
    if (!edited.ok) return refuse(name, edited.problems)
    const written = await writeWhole(to, saveProject(edited.value))
    if (!written.ok) return refuse('', written.problems)
    io.out(`${part}: ${called[language]} ${value.value.says[language]}\n`)
    return 0
  },
}

const newer = words(
  'a newer program wrote this file; it can only be read',
  'ein neueres Programm hat diese Datei geschrieben; sie lässt sich nur lesen',
)
const notInSheet = words(
  'a sheet is not changed in place: name a project file with --to',
  'ein Blatt wird nicht an seiner Stelle geändert: mit --to eine Projektdatei nennen',
)
