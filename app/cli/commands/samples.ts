import { mkdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { extension, samples as allSamples, saveProject } from '../../../core/detail'
import { type Problem, refused } from '../../../core/units'
import { words } from '../../../core/words'
import { faultOf, reasons } from '../read-project'
import { problemsText } from '../text/problems'
import { writeWhole } from '../write-file'
import type { Command } from './command'
import { languageOf, languageOption } from './language'

/** Writes the projects that come with the program into a folder. A file that is there and differs is left alone. */
export const samples: Command = {
  name: 'samples',
  says: 'write the projects that come with the program into a folder',
  takes: [],
  options: [{ flags: '--to <folder>', says: 'the folder; it is made if it is missing' }, languageOption],
  run: async (_given, chosen, io) => {
    const language = languageOf(chosen)
    const folder = chosen['to']
    if (typeof folder !== 'string') {
      io.err(
        problemsText(
          '--to',
          [{ at: '', say: words('a folder is needed', 'ein Ordner wird gebraucht') }],
          language,
        ),
      )
      return 2
    }
    const fault = await mkdir(folder, { recursive: true }).then(() => undefined, faultOf)
    if (fault !== undefined) {
      const say =
        reasons[fault.code] ?? words('the folder cannot be made', 'der Ordner lässt sich nicht anlegen')
      io.err(problemsText(folder, [{ at: '', say }], language))
      return 2
    }
    const problems: Problem[] = []
    for (const sample of allSamples) {
      const path = join(folder, `${sample.file}.${extension}`)
      const written = await writeNew(path, saveProject(sample.project))
      if (written.ok) io.out(`${path}  ${sample.name[language]}\n`)
      else problems.push(...written.problems)
    }
    if (problems.length === 0) return 0
    io.err(problemsText('', problems, language))
    return 2
  },
}

const writeNew = async (path: string, text: string): ReturnType<typeof writeWhole> => {
  const there = await readFile(path, 'utf8').catch(() => undefined)
  if (there === undefined || there === text) return writeWhole(path, text)
  return refused({
    at: path,
    say: words(
      'there is another file of that name; it was left as it is',
      'es gibt schon eine andere Datei dieses Namens; sie blieb, wie sie ist',
    ),
  })
}
