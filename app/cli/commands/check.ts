import { basename } from 'node:path'
import { type Practice, practiceOf, practices } from '../../../core/practice'
import type { Project } from '../../../core/detail'
import { type Report, check as checkProject } from '../../../core/rules'
import { type Result, marginOf, ok, refused } from '../../../core/units'
import { filled, words } from '../../../core/words'
import type { ExitCode } from '../io'
import { readProject } from '../read-project'
import { problemsText } from '../text/problems'
import { reportText } from '../text/report'
import type { Reported } from '../text/reported'
import type { Command } from './command'
import { languageOf, languageOption } from './language'

/** Holds a project against a practice and says every verdict with its reasons. */
export const check: Command = {
  name: 'check',
  says: 'check every joint of a project against a practice',
  takes: [{ name: 'file', says: 'the project file' }],
  options: [
    { flags: '--practice <id>', says: `practice to check by, instead of the project's own: ${ids(', ')}` },
    { flags: '--heat', says: 'solve heat and vapour of every zone too, and judge by them' },
    { flags: '--each', says: 'say every opening by itself, however many there are' },
    { flags: '--json', says: 'write findings as JSON, for other programs' },
    languageOption,
  ],
  run: async ([file = ''], chosen, io) => {
    const language = languageOf(chosen)
    const opened = await readProject(file)
    if (!opened.ok) return refuse(problemsText(file, opened.problems, language))
    const { project, notes } = opened.value
    const practice = practiceFor(project, chosen['practice'])
    if (!practice.ok) return refuse(problemsText('--practice', practice.problems, language))
    // The solver weighs as much as all the rest: only this option loads it.
    const physics = chosen['heat'] === true ? (await import('../../../core/vapour')).physicsDesk() : undefined
    const report = checkProject(project, practice.value, physics)
    const reported = { file: basename(file), project, practice: practice.value, report, notes }
    io.out(
      chosen['json'] === true
        ? reportJson(reported)
        : reportText(reported, language, chosen['each'] === true ? 'each' : 'all'),
    )
    return exitFor(report)

    function refuse(text: string): ExitCode {
      io.err(text)
      return 2
    }
  },
}

/** 1 for what is not met; 3 where nothing is, but somebody else must prove something or a value is missing. */
export const exitFor = ({ findings }: Report): ExitCode => {
  if (findings.some(it => it.verdict === 'not-met')) return 1
  return findings.some(it => it.verdict === 'refer' || it.verdict === 'unknown') ? 3 : 0
}

/** Changes when the members of the JSON change their meaning. */
const schema = 'jambwright-check/1'

const reportJson = ({ file, practice, report }: Reported): string =>
  `${JSON.stringify(
    {
      schema,
      file,
      practice: practice.id,
      edition: practice.edition,
      findings: report.findings.map(withMargin),
      notApplicable: report.notApplicable,
    },
    undefined,
    2,
  )}\n`

/** Readers of the JSON get the margin with its finding; in the program it is computed where it is shown. */
const withMargin = (it: Report['findings'][number]) => {
  if (!('compared' in it) || it.compared?.kind !== 'amount') return it
  return { ...it, margin: marginOf(it.compared.actual, it.compared.required) }
}

const practiceFor = (project: Project, id: unknown): Result<Practice> => {
  if (id === undefined) return ok(practiceOf(project.practice))
  const known = practices.find(it => it.id.toLowerCase() === String(id).toLowerCase())
  return known
    ? ok(practiceOf({ id: known.id, own: project.practice.own }))
    : refused({ at: '', say: filled(unknownPractice, String(id), ids(', ')) })
}

const unknownPractice = words(
  'no practice is called “{0}”; there are {1}',
  'kein Regelwerk heißt „{0}“; es gibt {1}',
)

function ids(between: string): string {
  return practices.map(it => it.id).join(between)
}
