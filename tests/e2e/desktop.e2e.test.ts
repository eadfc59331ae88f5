import { mkdtemp, readFile, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { beforeEach, expect, it, vi } from 'vitest'
import { handleMessages } from '../../app/main/handlers'
import { newPlaces } from '../../app/main/places'
import { openProject, samples, saveProject } from '../../core/detail'
import { double } from '../main/electron-double'
import { withWindow } from './window'

vi.mock('electron', () => import('../main/electron-double'))

/**
 * The window with the built bridge in it, talking to the real handlers. This proves our code on both sides of the
 * bridge; that the runtime keeps page and bridge apart is not shown here, because its program is not needed for tests.
 */
const open = withWindow()
const pageAddress = 'jambwright://window/index.html'
let unsaved: boolean[] = []
let answered: boolean[] = []

beforeEach(() => {
  unsaved = []
  answered = []
  handleMessages({
    places: newPlaces(),
    window: () => undefined,
    setUnsaved: now => unsaved.push(now),
    closeAnswered: may => answered.push(may),
    ready: () => undefined,
  })
})

/** Bytes go between page and test as lists of numbers, marked as such. */
const packed = `(it => it instanceof Uint8Array ? { bytes: [...it] } : it)`
const unpacked = (it: unknown): unknown =>
  typeof it === 'object' && it !== null && 'bytes' in it && Array.isArray(it.bytes) && !('name' in it)
    ? new Uint8Array(it.bytes)
    : it

const withBridge = async (page: Page): Promise<void> => {
  await page.exposeBinding('askMain', async (_, channel: string, args: readonly unknown[]) => {
    const answer = await double.ask(channel, pageAddress, ...args.map(unpacked))
    // A file comes back with its bytes as a list.
    return typeof answer === 'object' && answer !== null && 'bytes' in answer
      ? { ...answer, bytes: [...(answer.bytes as Uint8Array)] }
      : answer
  })
  await page.exposeBinding('tellMain', (_, channel: string, args: readonly unknown[]) =>
    double.send(channel, pageAddress, ...args.map(unpacked)),
  )
  const preload = await readFile(
    fileURLToPath(new URL('../../out/preload/index.cjs', import.meta.url)),
    'utf8',
  )
  await page.addInitScript(`
    window.heardByPage = {}
    ;(function (require, exports) { ${preload} })(() => ({
      contextBridge: { exposeInMainWorld: (name, bridge) => { window[name] = bridge } },
      ipcRenderer: {
        invoke: (channel, ...args) => window.askMain(channel, args.map(${packed})).then(it => it?.bytes ? { ...it, bytes: new Uint8Array(it.bytes) } : it),
        send: (channel, ...args) => { void window.tellMain(channel, args.map(${packed})) },
        on: (channel, listener) => { window.heardByPage[channel] = listener },
      },
    }), {})
  `)
}

const opened = async () => {
  const folder = await mkdtemp(join(tmpdir(), 'jambwright-'))
  const path = join(folder, 'house.jamb')
  const project = samples[1]?.project
  if (project === undefined) throw new Error('no second sample')
  await writeFile(path, saveProject(project))
  double.answers.open = { canceled: false, filePaths: [path] }
  const watched = await open({ ready: withBridge })
  await watched.page.keyboard.press('Control+o')
  await watched.page.getByText('W-11').first().waitFor()
  return { ...watched, path }
}

it('a file is opened, changed and saved in its place without a dialog', async () => {
  const { page, path, faults } = await opened()
  await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill('1777')
  await page.keyboard.press('Enter')
  await vi.waitFor(() => expect(unsaved.at(-1)).toBe(true))
  await page.keyboard.press('Control+s')
  await page.getByText('Saved and read back').first().waitFor()
  const read = openProject(await readFile(path, 'utf8'))
  expect(read.ok && Object.values(read.value.project.openings)[0]?.width_mm.value).toBe(1777)
  await vi.waitFor(() => expect(unsaved.at(-1)).toBe(false))
  expect(faults).toEqual([])
})

it('save as writes a copy, and the file that was opened stays as it was', async () => {
  const { page, path } = await opened()
  const before = await readFile(path, 'utf8')
  const copy = path.replace('house', 'copy')
  double.answers.save = { canceled: false, filePath: copy }
  await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill('1666')
  await page.keyboard.press('Enter')
  await page.keyboard.press('Control+Shift+s')
  await page.getByText('Saved and read back').first().waitFor()
  expect(await readFile(path, 'utf8')).toBe(before)
  expect(openProject(await readFile(copy, 'utf8')).ok).toBe(true)
})

it('a save that fails stays on the screen with its reason, and the work stays unsaved', async () => {
  const { page } = await opened()
  await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill('1555')
  await page.keyboard.press('Enter')
  double.answers.save = { canceled: false, filePath: join(tmpdir(), 'no-such-folder', 'a.jamb') }
  await page.keyboard.press('Control+Shift+s')
  await page.locator('.note.not-met').waitFor()
  expect(await page.locator('.note.not-met').innerText()).toContain('Not saved')
  expect(await page.locator('.saved').innerText()).toBe('not saved')
})

it('closing with unsaved work asks in the window and answers the program', async () => {
  const { page } = await opened()
  await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill('1555')
  await page.keyboard.press('Enter')
  await page.evaluate(`window.heardByPage['window:close-asked']()`)
  await page.getByRole('alertdialog').getByRole('button', { name: 'Cancel' }).click()
  await vi.waitFor(() => expect(answered).toEqual([false]))
  await page.evaluate(`window.heardByPage['window:close-asked']()`)
  await page.getByRole('alertdialog').getByRole('button', { name: 'Don’t save' }).click()
  await vi.waitFor(() => expect(answered).toEqual([false, true]))
})

it('the page sees small named functions and nothing of the runtime', async () => {
  const { page } = await open({ ready: withBridge })
  expect(await page.evaluate('Object.keys(window.jambwrightBridge).toSorted()')).toEqual([
    'answerClose',
    'onCloseAsked',
    'onNews',
    'open',
    'save',
    'saveAs',
    'setUnsaved',
  ])
  expect(await page.evaluate('typeof require + typeof process')).toBe('undefinedundefined')
})
