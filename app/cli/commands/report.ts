import { extname } from 'node:path'
import type { Problem } from '../../../core/units'
import { words } from '../../../core/words'
import { readProject } from '../read-project'
import { problemsText } from '../text/problems'
import type { Command } from './command'
import { languageOf, languageOption } from './language'

/** Writes the check of a project as a document of A4 pages. */
export const report: Command = {
  name: 'report',
  says: 'write the check of a project as a PDF: inputs with their basis, findings with sums and sources',
  takes: [{ name: 'file', says: 'the project file' }],
  options: [
    { flags: '--to <file>', says: 'where to write, as in report.pdf' },
    {
      flags: '--ink <ink>',
      says: 'black for copiers, or colour',
      choices: ['black', 'colour'],
      usually: 'black',
    },
    {
      flags: '--without-heat',
      says: 'leave out heat and vapour: sums, verdicts on them and temperature fields',
    },
    languageOption,
  ],
  run: async ([file = ''], chosen, io) => {
    const language = languageOf(chosen)
    const refuse = (of: string, problems: readonly Problem[]) => {
      io.err(problemsText(of, problems, language))
      return 2 as const
    }
    // Pages and formats weigh more than all the rest: only writing loads them.
    const { targetOf, writeReport } = await import('../write-sheet')
    const target = targetOf(chosen['to'])
    if (!target.ok) return refuse('--to', target.problems)
    if (target.value.format.holds !== 'sheets')
      return refuse('--to', [{ at: extname(target.value.to), say: onePage }])
    const opened = await readProject(file)
    if (!opened.ok) return refuse(file, opened.problems)
    const palette = chosen['ink'] === 'colour' ? 'colour' : 'black'
    const withHeat = chosen['withoutHeat'] !== true
    const written = await writeReport(opened.value.project, target.value, { language, palette, withHeat })
    if (!written.ok) return refuse('', written.problems)
    io.out(`${written.value}\n`)
    return 0
  },
}

const onePage = words(
  'a file of this kind holds one page; a report has several: name a .pdf',
  'eine Datei dieser Art fasst eine Seite, ein Bericht hat mehrere: eine .pdf nennen',
)
