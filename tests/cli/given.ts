import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll } from 'vitest'
import { runProgram } from '../../app/cli/program'
import { samples, saveProject } from '../../core/detail'

/** A folder for the files of one test file, gone when it is through. */
export const aFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'jambwright-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

/** What a command line said and how it ended. */
export const typed = async (...args: readonly string[]) => {
  const said = { out: '', err: '' }
  const code = await runProgram(args, { out: it => void (said.out += it), err: it => void (said.err += it) })
  return { code, ...said }
}

/** The text of a sample's file, by its name. */
export const sampleText = (file: string): string => {
  const sample = samples.find(it => it.file === file)
  if (!sample) throw new Error(`no sample is called ${file}`)
  return saveProject(sample.project)
}
