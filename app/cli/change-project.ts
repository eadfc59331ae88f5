import { type Edit, type Project, applyEdits, openProject, saveProject, saveSafely } from '../../core/detail'
import { type Problem, type Result, ok } from '../../core/units'
import { type Words, words } from '../../core/words'
import type { Chosen } from './commands/command'
import { languageOf } from './commands/language'
import type { ExitCode, Io } from './io'
import { disk } from '../disk'
import { readProject } from './read-project'
import { problemsText } from './text/problems'

/** What is to be done to a project, and what is said of it when it is done. */
export type Change = { readonly edits: readonly Edit[]; readonly says: Words }

/** The option that every command has that changes a project. */
export const toOption = { flags: '--to <file>', says: 'write to another file' } as const

/**
 * Opens a project, changes it and writes it back, or to another file. Whatever is refused is said with the place that
 * it was asked at, and nothing is written.
 */
export const changeProject = async (
  file: string,
  how: { readonly chosen: Chosen; readonly io: Io; readonly at: string },
  change: (project: Project) => Result<Change> | Promise<Result<Change>>,
): Promise<ExitCode> => {
  const { chosen, io } = how
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
  const wanted = await change(opened.value.project)
  if (!wanted.ok) return refuse(how.at, wanted.problems)
  const edited = applyEdits(opened.value.project, wanted.value.edits)
  if (!edited.ok) return refuse(how.at, edited.problems)
  const written = await saved(to, edited.value)
  if (!written.ok) return refuse('', written.problems)
  const says = wanted.value.says[language]
  io.out(`${says === '' ? to : says}\n`)
  return 0
}

/** Writes a project so that at every moment a whole one has its name, proves it by opening it, and keeps the one before. */
const saved = (path: string, project: Project): ReturnType<typeof saveSafely> =>
  saveSafely(
    disk,
    path,
    new TextEncoder().encode(saveProject(project)),
    bytes => openProject(new TextDecoder().decode(bytes)).ok,
  )

/** A project to be read only, or every problem said; nothing where it does not open. */
export const openedProject = async (file: string, chosen: Chosen, io: Io): Promise<Project | undefined> => {
  const opened = await readProject(file)
  if (opened.ok) return opened.value.project
  io.err(problemsText(file, opened.problems, languageOf(chosen)))
  return undefined
}

/** Nothing to say but where the file was written. */
export const nothingSaid: Words = words('', '')
/** A change, ready to be made. */
export const done = (edits: readonly Edit[], says: Words): Result<Change> => ok({ edits, says })

const newer = words(
  'a newer program wrote this file; it can only be read',
  'ein neueres Programm hat diese Datei geschrieben; sie lässt sich nur lesen',
)
const notInSheet = words(
  'a sheet is not changed in place: name a project file with --to',
  'ein Blatt wird nicht an seiner Stelle geändert: mit --to eine Projektdatei nennen',
)
