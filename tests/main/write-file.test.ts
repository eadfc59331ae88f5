import { mkdir, mkdtemp, readFile, readdir, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeEach, expect, it } from 'vitest'
import { writeFile as writeWhole } from '../../app/main/write-file'
import { samples, saveProject } from '../../core/detail'

const text = saveProject((samples[0] ?? fail()).project)
const bytes = (it: string): Uint8Array => new TextEncoder().encode(it)

let folder = ''
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'jambwright-'))
})

it('a project is replaced whole, and the one before is kept beside it', async () => {
  const path = join(folder, 'a.jamb')
  await writeFile(path, 'a much longer old content')
  expect(await writeWhole(path, bytes(text))).toMatchObject({ ok: true })
  expect(await readFile(path, 'utf8')).toBe(text)
  expect((await readdir(folder)).toSorted()).toEqual(['a.jamb', 'a.jamb.previous'])
})

it('what would not open again never takes the place of a project', async () => {
  const path = join(folder, 'a.jamb')
  await writeFile(path, text)
  expect(await writeWhole(path, bytes(text.slice(0, -40)))).toMatchObject({ ok: false })
  expect(await readFile(path, 'utf8')).toBe(text)
  expect(await readdir(folder)).toEqual(['a.jamb'])
})

it('of a drawing no older one is kept', async () => {
  const path = join(folder, 'a.svg')
  await writeFile(path, 'old')
  expect(await writeWhole(path, bytes('new'))).toMatchObject({ ok: true })
  expect(await readFile(path, 'utf8')).toBe('new')
  expect(await readdir(folder)).toEqual(['a.svg'])
})

it('a write that fails at the last step leaves what was there and cleans up', async () => {
  const path = join(folder, 'taken.svg')
  await mkdir(join(path, 'inside'), { recursive: true })
  expect(await writeWhole(path, bytes('new'))).toMatchObject({ ok: false })
  expect(await readdir(folder)).toEqual(['taken.svg'])
  expect(await readdir(path)).toEqual(['inside'])
})

function fail(): never {
  throw new Error('no sample')
}
