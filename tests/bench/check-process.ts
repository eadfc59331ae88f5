import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { samples, saveProject } from '../../core/detail'
import type { Bench } from './bench'

/** The command line as a whole process: start, open, check, write, end. Standing at the root of the project. */
export const checkProcess: readonly Bench[] = samples.slice(0, 1).map(({ file, project }) => {
  const path = join(mkdtempSync(join(tmpdir(), 'jambwright-bench-')), `${file}.jamb`)
  writeFileSync(path, saveProject(project))
  return {
    name: `check ${file} as a process of its own`,
    wanted_ms: 300,
    warmUp: 2,
    runs: 15,
    run: () => spawnSync(process.execPath, ['app/cli/run.mjs', 'check', path]),
  }
})
