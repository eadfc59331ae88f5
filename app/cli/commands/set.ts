import { changeProject, openedProject, toOption } from '../change-project'
import { namedValue } from '../named-value'
import { problemsText } from '../text/problems'
import { valuesText } from '../text/values'
import type { Command } from './command'
import { languageOf, languageOption } from './language'

/** States one named value of a project, typed as in a field of the window; without a value, lists what can be stated. */
export const set: Command = {
  name: 'set',
  says: 'state one value of a project: set FILE joint.planned "12,5"; without a value, list what can be stated, with its range and why',
  takes: [
    { name: 'file', says: 'the project file' },
    { name: 'field', says: 'name of the value, as in joint.planned', mayMiss: true },
    {
      name: 'value',
      says: 'a number with or without its unit (sums and both decimal marks are read), a word of its list, or a text',
      mayMiss: true,
    },
  ],
  options: [
    {
      flags: '--part <id>',
      says: 'part that has the value, where several have it; a place along a flank is written opening-15.left@600',
    },
    { flags: '--clear', says: 'take the value back instead of stating one' },
    toOption,
    languageOption,
  ],
  run: async ([file = '', name = '', typed = ''], chosen, io) => {
    if (typed !== '' || chosen['clear'] === true)
      return changeProject(file, { chosen, io, at: name }, project => {
        const named = namedValue(project, name, chosen['part'])
        if (!named.ok) return named
        return chosen['clear'] === true ? named.value.clear() : named.value.read(typed)
      })
    const project = await openedProject(file, chosen, io)
    if (project === undefined) return 2
    const language = languageOf(chosen)
    const listed = valuesText(project, { name, part: chosen['part'] }, language)
    if (listed !== '') {
      io.out(listed)
      return 0
    }
    const named = namedValue(project, name, chosen['part'])
    io.err(named.ok ? '' : problemsText(name, named.problems, language))
    return 2
  },
}
