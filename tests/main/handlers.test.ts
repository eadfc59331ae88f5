import { mkdtemp, readFile, readdir, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { channels } from '../../app/bridge'
import { samples, saveProject } from '../../core/detail'
import { handleMessages } from '../../app/main/handlers'
import { newPlaces } from '../../app/main/places'
import { double } from './electron-double'

vi.mock('electron', () => import('./electron-double'))

const page = 'jambwright://window/index.html'
const bytes = new TextEncoder().encode(samples.map(it => saveProject(it.project))[0] ?? '')
let folder = ''
let unsaved: boolean | undefined

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'jambwright-'))
  unsaved = undefined
  double.answers.open = { canceled: true, filePaths: [] }
  double.answers.save = { canceled: true, filePath: '' }
  handleMessages({
    places: newPlaces(),
    window: () => undefined,
    setUnsaved: now => (unsaved = now),
    closeAnswered: () => undefined,
    ready: () => undefined,
  })
})

describe('who may ask', () => {
  it.each([
    ['a page from the network', 'https://example.invalid/index.html'],
    ['a page whose address starts like ours', 'jambwright://window.example/index.html'],
    ['a frame inside our page', `${page}#inner`],
    ['a local file', 'file:///tmp/index.html'],
  ])('%s is refused', async (_, from) => {
    await expect(double.ask(channels.open, from)).rejects.toThrow('refused')
    expect(() => double.send(channels.unsaved, from, true)).toThrow('refused')
    expect(unsaved).toBeUndefined()
  })

  it('our own page is heard', () => {
    double.send(channels.unsaved, page, true)
    expect(unsaved).toBe(true)
  })
})

describe('what may be asked', () => {
  it.each([
    ['a path for a name', ['../outside.jamb', 'jamb', bytes]],
    ['a Windows path for a name', ['C:\\outside.jamb', 'jamb', bytes]],
    ['a hidden name', ['.profile', 'jamb', bytes]],
    ['a long extension', ['a.jamb', 'json/../../x', bytes]],
    ['text for bytes', ['a.jamb', 'jamb', 'text']],
    ['too few arguments', ['a.jamb']],
    ['too many arguments', ['a.jamb', 'jamb', bytes, '/etc/passwd']],
  ])('%s is refused before any dialog opens', async (_, args) => {
    double.answers.save = { canceled: false, filePath: join(folder, 'never') }
    await expect(double.ask(channels.saveAs, page, ...args)).rejects.toThrow('refused')
    expect(await readdir(folder)).toEqual([])
  })
})

describe('files', () => {
  it('a made-up token never becomes a path: the user is asked where', async () => {
    expect(await double.ask(channels.save, page, '/etc/hostname', 'a.jamb', bytes)).toEqual({
      kind: 'cancelled',
    })
  })

  it('what was opened is saved in its place and read back the same', async () => {
    const path = join(folder, 'house.jamb')
    await writeFile(path, 'old')
    double.answers.open = { canceled: false, filePaths: [path] }
    const opened = (await double.ask(channels.open, page)) as { name: string; token: string }
    expect(opened.name).toBe('house.jamb')
    expect(await double.ask(channels.save, page, opened.token, 'house.jamb', bytes)).toEqual({
      kind: 'written',
      name: 'house.jamb',
      token: opened.token,
    })
    expect(new Uint8Array(await readFile(path))).toEqual(bytes)
    expect((await readdir(folder)).toSorted()).toEqual(['house.jamb', 'house.jamb.previous'])
  })

  it('save as gives a place that later saves go to', async () => {
    const path = join(folder, 'copy.jamb')
    double.answers.save = { canceled: false, filePath: path }
    const first = (await double.ask(channels.saveAs, page, 'copy.jamb', 'jamb', bytes)) as { token: string }
    double.answers.save = { canceled: true, filePath: '' }
    const second = await double.ask(channels.save, page, first.token, 'copy.jamb', bytes)
    expect(second).toMatchObject({ kind: 'written', name: 'copy.jamb' })
    expect(new Uint8Array(await readFile(path))).toEqual(bytes)
  })

  it('a place that cannot be written is said, not thrown', async () => {
    double.answers.save = { canceled: false, filePath: join(folder, 'none', 'a.jamb') }
    expect(await double.ask(channels.saveAs, page, 'a.jamb', 'jamb', bytes)).toMatchObject({ kind: 'failed' })
  })

  it('a folder in the place of a project is refused with words', async () => {
    double.answers.open = { canceled: false, filePaths: [folder] }
    await expect(double.ask(channels.open, page)).rejects.toThrow()
  })
})
