import { existsSync } from 'node:fs'
import { mkdtemp, readFile, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { type HostNews, channels } from '../../app/bridge'
import { startProgram } from '../../app/main/program'
import { soon } from '../given/soon'
import { BrowserWindow, double } from './electron-double'

vi.mock('electron', () => import('./electron-double'))

const page = 'jambwright://window/index.html'
let folder = ''

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'jambwright-'))
  double.done.length = 0
  double.handlers.clear()
  double.listeners.clear()
  Object.assign(double.answers, { userData: folder, isFirst: true, locale: 'en-GB' })
  BrowserWindow.made = []
})

/** The program with its one window, as it is once it is ready. */
const started = async (args: readonly string[] = [], platform = 'linux') => {
  startProgram({ outFolder: '/out', platform, args })
  await soon(() => expect(BrowserWindow.made).toHaveLength(1))
  const window = BrowserWindow.made[0]
  if (window === undefined) throw new Error('no window was made')
  return window
}
const didOf = (what: string) => double.done.filter(([it]) => it === what)
const order = () => double.done.map(([what]) => what)
const newsOf = (window: BrowserWindow) => window.told.filter((it): it is HostNews => it !== undefined)

describe('the start', () => {
  it('puts the page into a sandbox, under its own scheme, and grants it nothing', async () => {
    await started()
    expect(order().slice(0, 2)).toEqual(['enableSandbox', 'registerSchemes'])
    expect(double.handlers.has('scheme:jambwright')).toBe(true)
    expect(order()).toEqual(
      expect.arrayContaining(['permissionRequest', 'permissionCheck', 'devicePermission']),
    )
  })
  it('a second one hands its file over and opens nothing', async () => {
    double.answers.isFirst = false
    startProgram({ outFolder: '/out', platform: 'linux', args: ['--flag', '/a/house.jamb'] })
    await Promise.resolve()
    expect(didOf('lock')).toEqual([['lock', { file: '/a/house.jamb' }]])
    expect(order()).toContain('quit')
    expect(BrowserWindow.made).toHaveLength(0)
  })
  it('the window opens where it was', async () => {
    const was = { x: 40, y: 50, width: 1100, height: 700, maximised: false }
    await writeFile(join(folder, 'window.json'), JSON.stringify(was))
    expect((await started()).options).toMatchObject({ x: 40, y: 50, width: 1100, height: 700 })
  })
  it('shows the sample that was asked for, by a plain name only', async () => {
    expect((await started(['--sample=right-jamb'])).sent).toContain(`${page}#right-jamb`)
    BrowserWindow.made = []
    expect((await started(['--sample=../../x'])).sent).toContain(page)
  })
  it('menus speak the language of the window from the next start on', async () => {
    await started()
    double.send(channels.language, page, 'de')
    await soon(() => expect(JSON.stringify(didOf('menu').at(-1))).toContain('Datei'))
    // What is remembered is on the disk a little later.
    await soon(async () => expect(await readFile(join(folder, 'language'), 'utf8')).toBe('de'))
    BrowserWindow.made = []
    double.done.length = 0
    await started()
    expect(JSON.stringify(didOf('menu')[0])).toContain('Datei')
  })
})

describe('a file from outside', () => {
  const aFile = async (name: string): Promise<string> => {
    const path = join(folder, name)
    await writeFile(path, name)
    return path
  }
  const nameOf = (news: HostNews | undefined): string | undefined =>
    news?.kind === 'file' && news.read.kind === 'read' ? news.read.file.name : undefined

  it('of the start waits until the page listens', async () => {
    const window = await started([await aFile('house.jamb')])
    expect(newsOf(window)).toEqual([])
    double.send(channels.ready, page)
    await soon(() => expect(newsOf(window).map(nameOf)).toEqual(['house.jamb']))
  })
  it('of macOS may come before the program is ready', async () => {
    const path = await aFile('early.jamb')
    startProgram({ outFolder: '/out', platform: 'darwin', args: [] })
    let isTaken = false
    double.happen('open-file', { preventDefault: () => (isTaken = true) }, path)
    expect(isTaken).toBe(true)
    await soon(() => expect(BrowserWindow.made).toHaveLength(1))
    double.send(channels.ready, page)
    await soon(() => expect(newsOf(BrowserWindow.made[0] ?? fail()).map(nameOf)).toEqual(['early.jamb']))
  })
  it('of a second start opens in the first window, which comes forward; its arguments are not looked at', async () => {
    const window = await started()
    double.send(channels.ready, page)
    window.isMinimised = true
    double.happen('second-instance', {}, ['--x', '/never.jamb'], '/', { file: await aFile('second.jamb') })
    await soon(() => expect(newsOf(window).map(nameOf)).toEqual(['second.jamb']))
    expect([window.isMinimised, window.isFocused]).toEqual([false, true])
    double.happen('second-instance', {}, [], '/', 'nonsense')
    expect(BrowserWindow.made).toHaveLength(1)
  })
  it('that is not there is said in the window', async () => {
    const window = await started([join(folder, 'none.jamb')])
    double.send(channels.ready, page)
    await soon(() => expect(newsOf(window)).toMatchObject([{ kind: 'file', read: { kind: 'failed' } }]))
  })
})

describe('quitting on macOS', () => {
  it('goes on once unsaved work is answered, and is forgotten when it was called off', async () => {
    await started([], 'darwin')
    double.send(channels.unsaved, page, true)
    double.happen('before-quit')
    double.send(channels.closeAnswered, page, false)
    double.send(channels.closeAnswered, page, true)
    expect(order()).not.toContain('quit')
    double.happen('before-quit')
    double.send(channels.closeAnswered, page, true)
    expect(order()).toContain('quit')
  })
  it('does not happen when only the window closes', async () => {
    await started([], 'darwin')
    double.happen('window-all-closed')
    expect(order()).not.toContain('quit')
  })
})

describe('a start without the graphics card', () => {
  it.each([
    ['asked for by a switch', ['--safe-start'], false],
    ['remembered', [], true],
  ])('%s is known before the lock', async (_, args, isFlagged) => {
    if (isFlagged) await writeFile(join(folder, 'safe-start'), '')
    await started(args)
    const [off, lock] = [order().indexOf('disableHardwareAcceleration'), order().indexOf('lock')]
    expect(off).toBeGreaterThanOrEqual(0)
    expect(off).toBeLessThan(lock)
    expect(await double.ask(channels.about, page)).toEqual({ version: '1.2.3', isSafe: true })
  })
  it('is otherwise not made', async () => {
    await started()
    expect(order()).not.toContain('disableHardwareAcceleration')
  })
  it('is remembered when it is asked for, and starts again only when the program really ends', async () => {
    await started(['/a/house.jamb'])
    double.send(channels.restart, page, 'safe')
    expect(existsSync(join(folder, 'safe-start'))).toBe(true)
    expect(order().at(-1)).toBe('quit')
    expect(order()).not.toContain('relaunch')
    double.happen('will-quit')
    expect(didOf('relaunch')).toEqual([['relaunch', { args: ['/a/house.jamb'] }]])
  })
  it('is not made after all by who cancels the question about unsaved work', async () => {
    await started()
    double.send(channels.restart, page, 'safe')
    double.send(channels.closeAnswered, page, false)
    double.happen('will-quit')
    expect(order()).not.toContain('relaunch')
    double.send(channels.restart, page, 'usual')
    expect(existsSync(join(folder, 'safe-start'))).toBe(false)
  })
})

function fail(): never {
  throw new Error('no window')
}
