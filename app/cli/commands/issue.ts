import { type Edit, issueStates } from '../../../core/detail'
import { changeProject, done, nothingSaid, toOption } from '../change-project'
import type { Chosen, Command } from './command'
import { languageOption } from './language'

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
    toOption,
    languageOption,
  ],
  run: ([file = ''], chosen, io) =>
    changeProject(file, { chosen, io, at: file }, () => done(editsOf(chosen), nothingSaid)),
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
