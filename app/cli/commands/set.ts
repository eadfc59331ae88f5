import {
  type Field,
  type Project,
  applyEdits,
  fields,
  fieldsOf,
  partsOf,
  saveProject,
  zonesOf,
} from '../../../core/detail'
import type { Id } from '../../../core/geometry'
import {
  type Problem,
  type Result,
  ok,
  readQuantity,
  refused,
  specified,
  writeQuantity,
} from '../../../core/units'
import { filled, same, words } from '../../../core/words'
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
    { name: 'value', says: 'the value, with or without its unit; sums and both decimal marks are read' },
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
    const place = placeOf(project, name, chosen['part'])
    if (!place.ok) return refuse(name, place.problems)
    const { field, part } = place.value
    const read = readQuantity(typed, { unit: field.unit, allowed: field.allowed(project, part).bounds })
    if (!read.ok) return refuse(name, read.problems)
    if (read.value.asks) return refuse(name, [{ at: '', say: filled(ambiguous, same(typed)) }])
    const edited = applyEdits(project, [
      { kind: 'state', at: { field: field.id, part }, to: specified(read.value.value) },
    ])
    if (!edited.ok) return refuse(name, edited.problems)
    const written = await writeWhole(to, saveProject(edited.value))
    if (!written.ok) return refuse('', written.problems)
    io.out(`${part}: ${field.name[language]} ${writeQuantity(read.value.value, field.unit, language)}\n`)
    return 0
  },
}

const placeOf = (
  project: Project,
  name: string,
  asked: unknown,
): Result<{ readonly field: Field<number>; readonly part: Id }> => {
  const field = fields.find(it => it.id === name)
  if (field === undefined)
    return refused({ at: '', say: filled(noField, fields.map(it => it.id).join(', ')) })
  const parts = partsWith(project, field)
  const named = parts.join(', ')
  if (typeof asked === 'string')
    return parts.includes(asked)
      ? ok({ field, part: asked })
      : refused({ at: asked, say: filled(otherPart, named) })
  const [part, ...others] = parts
  if (part === undefined) return refused({ at: '', say: noPart })
  return others.length === 0 ? ok({ field, part }) : refused({ at: '', say: filled(whichPart, named) })
}

const partsWith = (project: Project, field: Field<number>): readonly Id[] => {
  const tables = [project.walls, project.frames, project.joints, project.openings].flatMap(it =>
    Object.keys(it),
  )
  const parts = zonesOf(project).flatMap(place => partsOf(project, place).map(it => it.id))
  return [...new Set([...tables, ...parts])].filter(id => fieldsOf(project, id).includes(field))
}

const newer = words(
  'a newer program wrote this file; it can only be read',
  'ein neueres Programm hat diese Datei geschrieben; sie lässt sich nur lesen',
)
const notInSheet = words(
  'a sheet is not changed in place: name a project file with --to',
  'ein Blatt wird nicht an seiner Stelle geändert: mit --to eine Projektdatei nennen',
)
const noField = words('there is no such value; there are {0}', 'diesen Wert gibt es nicht; es gibt {0}')
const noPart = words('no part of this project has this value', 'kein Teil dieses Projekts hat diesen Wert')
const otherPart = words(
  'this part does not have the value; these do: {0}',
  'dieses Teil hat den Wert nicht; diese haben ihn: {0}',
)
const whichPart = words(
  'several parts have this value; choose with --part: {0}',
  'mehrere Teile haben diesen Wert; mit --part wählen: {0}',
)
const ambiguous = words(
  '“{0}” may be thousands or decimals; write 1200 or 1.2',
  '„{0}“ kann Tausender oder Dezimalen meinen; bitte 1200 oder 1,2 schreiben',
)
