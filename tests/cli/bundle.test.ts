import { spawnSync } from 'node:child_process'
import { rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { root } from '../house/sources'
import { aFolder, sampleText } from './given'

const folder = aFolder()
const file = join(folder, 'tight-outside.jamb')
writeFileSync(file, sampleText('tight-outside'))

const run = (...args: readonly string[]) =>
  spawnSync(process.execPath, [`${root}/app/cli/run.mjs`, ...args], { encoding: 'utf8', cwd: folder })

it('the command line bundles itself when there is no bundle, and runs', () => {
  rmSync(`${root}/out/cli/jambwright.mjs`, { force: true })
  const { status, stdout, stderr } = run('check', file)
  expect(stderr).toBe('')
  expect(status).toBe(1)
  expect(stdout).toContain('not met')
})

it('bad input leaves one line on standard error and ends with 2', () => {
  const { status, stdout, stderr } = run('check', 'nowhere.jamb')
  expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
  expect(stderr).toBe('nowhere.jamb: file: there is no such file or folder\n')
})

it('a reader that has seen enough is no fault', () => {
  const shell = spawnSync(
    'bash',
    ['-c', `"${process.execPath}" "${root}/app/cli/run.mjs" check "${file}" | head -n 1`],
    {
      encoding: 'utf8',
    },
  )
  expect(shell.stderr).toBe('')
  expect(shell.stdout.split('\n')).toHaveLength(2)
})
