import { mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { type HostFile, type KeptCopy, type Read, type RecentFile, channels } from '../../app/bridge'
import { samples, saveProject } from '../../core/detail'
import { aDesk } from './a-desk'
import { BrowserWindow, double } from './electron-double'

vi.mock('electron', () => import('./electron-double'))

const page = 'jambwright://window/index.html'
const bytes = new TextEncoder().encode(samples.map(it => saveProject(it.project))[0] ?? '')
const aCopy: KeptCopy = {
  document: 'one',
  stamp: '',
  name: 'house.jamb',
  at: new Date().toISOString(),
  text: new TextDecoder().decode(bytes),
  token: '',
}
/** The file of an answer that must be one. */
const openedBy = async (answer: Promise<unknown>): Promise<HostFile> => {
  const read = (await answer) as Read
  if (read.kind !== 'read') throw new Error(`not read: ${JSON.stringify(read)}`)
  return read.file
}
let folder = ''
let unsaved: boolean | undefined

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'jambwright-'))
  unsaved = undefined
  double.answers.open = { canceled: true, filePaths: [] }
  double.answers.save = { canceled: true, filePath: '' }
  aDesk(join(folder, 'data'), { setUnsaved: now => (unsaved = now) })
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

  it.each([
    ['a copy whose document leads out of its folder', channels.keepCopy, [{ ...aCopy, document: '../../x' }]],
    ['a copy with more in it than a copy has', channels.keepCopy, [{ ...aCopy, place: '/etc/passwd' }]],
    ['letting go of a path', channels.letGo, ['../outside']],
    ['paper of no size', channels.print, [{ width_mm: 0, height_mm: 297 }]],
    ['paper of no number', channels.print, [{ width_mm: NaN, height_mm: 297 }]],
    ['a file of no name', channels.dropped, ['']],
    ['a list entry of another form', channels.remember, ['token', { title: 'a' }]],
  ])('%s is refused', async (_, channel, args) => {
    await expect(double.ask(channel, page, ...args)).rejects.toThrow('refused')
  })

  it('every question of the bridge has its form and its answer', () => {
    const answered = new Set([...double.handlers.keys(), ...double.listeners.keys()])
    const toThePage: readonly string[] = [channels.closeAsked, channels.news]
    expect(Object.values(channels).filter(it => !toThePage.includes(it) && !answered.has(it))).toEqual([])
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
    const opened = await openedBy(double.ask(channels.open, page))
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
    expect(await double.ask(channels.open, page)).toMatchObject({
      kind: 'failed',
      why: { en: expect.stringContaining('is not a file') as string },
    })
  })

  it('what was dropped opens by its path; a program or a picture does not', async () => {
    const [path, other] = [join(folder, 'house.JAMB'), join(folder, 'setup.exe')]
    for (const it of [path, other]) await writeFile(it, bytes)
    expect((await openedBy(double.ask(channels.dropped, page, path))).bytes).toEqual(bytes)
    expect(await double.ask(channels.dropped, page, other)).toMatchObject({ kind: 'failed' })
  })

  it('a file can be looked at again, and is gone when it is gone', async () => {
    const path = join(folder, 'house.jamb')
    await writeFile(path, bytes)
    const { token } = await openedBy(double.ask(channels.dropped, page, path))
    await writeFile(path, 'theirs')
    expect(await double.ask(channels.peek, page, token)).toEqual(new Uint8Array(Buffer.from('theirs')))
    await rm(path)
    expect(await double.ask(channels.peek, page, token)).toBeUndefined()
    expect(await double.ask(channels.peek, page, '/etc/hostname')).toBeUndefined()
  })
})

describe('recent files', () => {
  const about = { title: 'Weir House', of: 'brick' }

  it('are listed newest first, with the ones that are gone marked, and opened by token', async () => {
    for (const name of ['a', 'b']) {
      const path = join(folder, `${name}.jamb`)
      await writeFile(path, bytes)
      const { token } = await openedBy(double.ask(channels.dropped, page, path))
      await double.ask(channels.remember, page, token, about)
    }
    await rm(join(folder, 'a.jamb'))
    // As after another start: nothing but the user's data is left.
    aDesk(join(folder, 'data'))
    const list = (await double.ask(channels.recents, page)) as readonly RecentFile[]
    expect(list.map(it => [it.name, it.isThere])).toEqual([
      ['b.jamb', true],
      ['a.jamb', false],
    ])
    expect(JSON.stringify(list)).not.toContain(folder)
    expect((await openedBy(double.ask(channels.openRecent, page, list[0]?.token))).bytes).toEqual(bytes)
    await double.ask(channels.forget, page, list[1]?.token)
    expect(await double.ask(channels.recents, page)).toHaveLength(1)
    await double.ask(channels.forgetAll, page)
    expect(await double.ask(channels.recents, page)).toEqual([])
    expect(double.done.map(([what]) => what)).toContain('clearRecentDocuments')
  })
})

describe('copies of unsaved work', () => {
  it('survive the program, know their file by a token, and go when they are let go of', async () => {
    const path = join(folder, 'house.jamb')
    await writeFile(path, 'theirs')
    const { token } = await openedBy(double.ask(channels.dropped, page, path))
    expect(await double.ask(channels.keepCopy, page, { ...aCopy, token })).toEqual({ kind: 'kept' })
    aDesk(join(folder, 'data'))
    const [copy] = (await double.ask(channels.copies, page)) as readonly KeptCopy[]
    expect(copy).toMatchObject({ document: 'one', name: 'house.jamb', text: aCopy.text })
    expect(JSON.stringify(copy)).not.toContain(folder)
    expect(await double.ask(channels.peek, page, copy?.token)).toEqual(new Uint8Array(Buffer.from('theirs')))
    await double.ask(channels.letGo, page, 'one')
    expect(await double.ask(channels.copies, page)).toEqual([])
  })

  it('that cannot be kept is said at once: the place for them is a file', async () => {
    await writeFile(join(folder, 'data'), 'in the way')
    expect(await double.ask(channels.keepCopy, page, aCopy)).toMatchObject({ kind: 'failed' })
  })
})

describe('printing', () => {
  it('is at true size on paper as large as the sheet, without margins', async () => {
    const window = new BrowserWindow({})
    // The double has the calls of a window that are used.
    aDesk(join(folder, 'data'), { window: () => window as never })
    await double.ask(channels.print, page, { width_mm: 420, height_mm: 297 })
    expect(window.printed).toEqual([
      {
        silent: false,
        printBackground: true,
        margins: { marginType: 'none' },
        scaleFactor: 100,
        pageSize: { width: 420_000, height: 297_000 },
      },
    ])
  })
})
