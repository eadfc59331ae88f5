import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { mkdtemp, readFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'
import { bundleEntries, classKeys, fileType, linuxFiles } from '../../app/start/file-type.mjs'
import { extension } from '../../core/detail'

const start = fileURLToPath(new URL('../../app/start/start.mjs', import.meta.url))

it('every system is told the same extension and what a project is called in both languages', () => {
  expect(fileType.extension).toBe(extension)
  const linux = Object.values(linuxFiles('/data', '/top')).join('\n')
  for (const words of [`*.${extension}`, fileType.name.en, fileType.name.de, fileType.media])
    expect(linux).toContain(words)
  expect(JSON.stringify(bundleEntries())).toContain(`"public.filename-extension":["${extension}"]`)
  expect(classKeys('C:\\Jambwright.exe')).toMatchObject({ [`.${extension}`]: 'Jambwright.Project' })
})

it('a place with signs that a command line reads keeps its words', () => {
  const entry = linuxFiles('/data', '/home/x/a "b" 100 %/$c')['/data/applications/jambwright.desktop']
  expect(entry).toContain(`"/home/x/a \\"b\\" 100 %%/\\$c/app/start/start.mjs" %f`)
})

it('npm start registers the type for this user on Linux, and takes it back', async () => {
  if (process.platform !== 'linux') return
  const data = await mkdtemp(join(tmpdir(), 'jambwright-'))
  const run = (how: string) =>
    execFileSync(process.execPath, [start, how], {
      env: { ...process.env, ...Object.fromEntries([['XDG_DATA_HOME', data]]) },
      encoding: 'utf8',
    })
  const entry = join(data, 'applications', 'jambwright.desktop')
  expect(run('--register')).toContain(entry)
  expect(await readFile(entry, 'utf8')).toContain(start)
  expect(run('--unregister')).toContain(entry)
  expect(existsSync(entry)).toBe(false)
})
