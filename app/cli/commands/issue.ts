import { type Edit, applyEdits, issueStates, saveProject } from '../../../core/detail'
import type { Problem } from '../../../core/units'
import { words } from '../../../core/words'
import { readProject } from '../read-project'
import { problemsText } from '../text/problems'
import { writeWhole } from '../write-file'
import type { Chosen, Command } from './command'
import { languageOf, languageOption } from './language'

/** Puts the sheets of a project to a state, with a line in their table of revisions. */
export const issue: Command = {
  name: 'issue',
  says: 'put the sheets of a project to a state: issue FILE --status issued --index A --date 2026-03-14',
  takes: [{ name: 'file', says: 'the project file' }],
  options: [
    {
      flags: '--status <status>',
      says: 'how far the sheets have come',
      choices: issueStates,
      usually: 'draft',
    },
    { flags: '--index <index>', says: 'index of the revision; what is issued needs one' },
    { flags: '--date <day>', says: 'day of the revision, as in 2026-03-14' },
    { flags: '--note <text>', says: 'what has changed' },
    { flags: '--author <name>', says: 'who made the sheets' },
    { flags: '--approver <name>', says: 'who approved them' },
    { flags: '--to <file>', says: 'write to another file' },
    languageOption,
  ],
  run: async ([file = ''], chosen, io) => {
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
    const edited = applyEdits(opened.value.project, editsOf(chosen))
    if (!edited.ok) return refuse(file, edited.problems)
    const written = await writeWhole(to, saveProject(edited.value))
    if (!written.ok) return refuse('', written.problems)
    io.out(`${written.value}\n`)
    return 0
  },
}

/** Names come before the revision: its digest holds them. */
const editsOf = (chosen: Chosen): readonly Edit[] => {
  const text = (key: string) => (typeof chosen[key] === 'string' ? chosen[key] : '')
  const status = issueStates.find(it => it === chosen['status']) ?? 'draft'
  return [
    ...(['author', 'approver'] as const).flatMap((it): Edit[] =>
      typeof chosen[it] === 'string' ? [{ kind: 'entitle', text: it, to: text(it) }] : [],
    ),
    {
      kind: 'issue',
      status,
      ...(text('index') !== '' && {
        revision: { index: text('index'), date: text('date'), note: text('note') },
      }),
    },
  ]
}

const newer = words(
  'a newer program wrote this file; it can only be read',
  'ein neueres Programm hat diese Datei geschrieben; sie lässt sich nur lesen',
)
const notInSheet = words(
  'a sheet is not changed in place: name a project file with --to',
  'ein Blatt wird nicht an seiner Stelle geändert: mit --to eine Projektdatei nennen',
)
