import { mkdir, mkdtemp, readFile, readdir, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeEach, expect, it } from 'vitest'
import { writeSafely } from '../../app/main/write-safely'

let folder = ''
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'jambwright-'))
})

it('a file is replaced whole, and nothing is left beside it', async () => {
  const path = join(folder, 'a.json')
  await writeFile(path, 'a much longer old content')
  await writeSafely(path, new TextEncoder().encode('new'))
  expect(await readFile(path, 'utf8')).toBe('new')
  expect(await readdir(folder)).toEqual(['a.json'])
})

it('a write that fails at the last step leaves the old thing untouched and cleans up', async () => {
  const path = join(folder, 'taken')
  await mkdir(join(path, 'inside'), { recursive: true })
  await expect(writeSafely(path, new Uint8Array([1]))).rejects.toThrow()
  expect(await readdir(folder)).toEqual(['taken'])
  expect(await readdir(path)).toEqual(['inside'])
})
