import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Page } from 'playwright-core'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { openProject, samples, saveProject } from '../../core/detail'
import { aDesk } from '../main/a-desk'
import { double } from '../main/electron-double'
import { withBridge } from './a-bridge'
import { valueOf, soon, withWindow } from './window'

vi.mock('electron', () => import('../main/electron-double'))

/**
 * The window with the built bridge in it, talking to the real handlers. This proves our code on both sides of the
 * bridge; that the runtime keeps page and bridge apart is not shown here, because its program is not needed for tests.
 */
const open = withWindow()
let unsaved: boolean[] = []
let answered: boolean[] = []
let userData = ''

beforeEach(async () => {
  unsaved = []
  answered = []
  userData = await mkdtemp(join(tmpdir(), 'jambwright-'))
  aDesk(userData, {
    setUnsaved: now => unsaved.push(now),
    closeAnswered: may => answered.push(may),
  })
})

const opened = async () => {
  const folder = await mkdtemp(join(tmpdir(), 'jambwright-'))
  const path = join(folder, 'house.jamb')
  const project = samples[1]?.project
  if (project === undefined) throw new Error('no second sample')
  await writeFile(path, saveProject(project))
  double.answers.open = { canceled: false, filePaths: [path] }
  const watched = await open({ ready: withBridge, atStart: true })
  await watched.page.keyboard.press('Control+o')
  await watched.page.getByText('W-11').first().waitFor()
  return { ...watched, path }
}

it('a file is opened, changed and saved in its place without a dialog', async () => {
  const { page, path, faults } = await opened()
  await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill('1777')
  await page.keyboard.press('Enter')
  await soon(() => expect(unsaved.at(-1)).toBe(true))
  await page.keyboard.press('Control+s')
  await page.getByText('Saved and read back').first().waitFor()
  const read = openProject(await readFile(path, 'utf8'))
  expect(read.ok && Object.values(read.value.project.openings)[0]?.width_mm.value).toBe(1777)
  await soon(() => expect(unsaved.at(-1)).toBe(false))
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
  await soon(() => expect(answered).toEqual([false]))
  await page.evaluate(`window.heardByPage['window:close-asked']()`)
  await page.getByRole('alertdialog').getByRole('button', { name: 'Don’t save' }).click()
  await soon(() => expect(answered).toEqual([false, true]))
})

/** Types a frame width and takes it. */
const widen = async (page: Page, width: number): Promise<void> => {
  await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill(`${width}`)
  await page.keyboard.press('Enter')
}
const widthIn = async (path: string): Promise<number | undefined> => {
  const read = openProject(await readFile(path, 'utf8'))
  return read.ok ? Object.values(read.value.project.openings)[0]?.width_mm.value : undefined
}
const answer = (page: Page, name: string | RegExp) =>
  page.getByRole('alertdialog').getByRole('button', { name }).click()
/** What the runtime tells the page when its window comes to the front. */
const comeBack = (page: Page) => page.evaluate(`window.dispatchEvent(new Event('focus'))`)

describe('a file that somebody else has changed', () => {
  const changeOutside = async (path: string, width: number): Promise<void> => {
    const text = await readFile(path, 'utf8')
    const read = openProject(text)
    if (!read.ok) throw new Error('the file does not open')
    const { project } = read.value
    const openings = Object.entries(project.openings).map(([id, it]) => [
      id,
      { ...it, width_mm: { ...it.width_mm, value: width } },
    ])
    await writeFile(path, saveProject({ ...project, openings: Object.fromEntries(openings) }))
  }

  it('is read again where no work is at stake; a touch and an own save are nothing', async () => {
    const { page, path } = await opened()
    await writeFile(path, await readFile(path))
    await widen(page, 1700)
    await page.keyboard.press('Control+s')
    await page.getByText('Saved and read back').first().waitFor()
    await comeBack(page)
    await changeOutside(path, 1555)
    await comeBack(page)
    await page.getByRole('button', { name: 'Read it again' }).click()
    await soon(async () => expect(await valueOf(page, 'Frame width')).toBe('1555'))
    expect(await page.locator('.note.advice').count()).toBe(0)
  })

  it('and here too is asked about when it is saved', async () => {
    const { page, path } = await opened()
    const copy = path.replace('house', 'copy')
    double.answers.save = { canceled: false, filePath: copy }
    await widen(page, 1700)
    await changeOutside(path, 1555)
    const asked = async (choice: string): Promise<void> => {
      await page.keyboard.press('Control+s')
      await answer(page, choice)
      await page.getByRole('alertdialog').waitFor({ state: 'detached' })
    }
    await asked('Cancel')
    expect([await widthIn(path), await valueOf(page, 'Frame width')]).toEqual([1555, '1700'])

    await asked('Save mine over it')
    await soon(async () => expect(await widthIn(path)).toBe(1700))
    // What was replaced is not thrown away.
    expect(await widthIn(`${path}.previous`)).toBe(1555)

    await widen(page, 1710)
    await changeOutside(path, 1566)
    await asked('Drop mine, read the file')
    await soon(async () => expect(await valueOf(page, 'Frame width')).toBe('1566'))

    await widen(page, 1720)
    await changeOutside(path, 1577)
    await asked('Save mine elsewhere …')
    await soon(async () => expect(await widthIn(copy)).toBe(1720))
    expect([await widthIn(path), await valueOf(page, 'Frame width')]).toEqual([1577, '1720'])
  })
})

describe('after a crash', () => {
  const copiesIn = async (): Promise<readonly string[]> => readdir(join(userData, 'copies')).catch(() => [])
  /** Makes so many edits, one after the other, as quickly as the page takes them. */
  const edit = (page: Page, times: number, from: number): Promise<void> =>
    page.evaluate(`(async () => {
      const input = document.querySelector('[data-area="fields"] input[aria-label="Frame width"]')
      input.focus()
      for (let at = 0; at < ${times}; at++) {
        input.value = String(${from} + at)
        input.dispatchEvent(new InputEvent('input', { bubbles: true }))
        input.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }))
        await new Promise(done => setTimeout(done))
      }
    })()`)
  /** Works until a copy is due. */
  const work = async (page: Page): Promise<void> => {
    await edit(page, 20, 1601)
    await page.locator('.copy').waitFor()
  }

  it('the work is offered with its time and picture, goes on unsaved, and saves into its file', async () => {
    const { page, path } = await opened()
    await work(page)
    expect(await copiesIn()).toMatchObject({ length: 1 })
    await page.context().close()

    aDesk(userData, { setUnsaved: now => unsaved.push(now) })
    const again = await open({ ready: withBridge, atStart: true })
    const offer = again.page.locator('[data-area="kept"]')
    await offer.locator('img').waitFor()
    expect(await offer.innerText()).toMatch(/W-11\s+today \d\d:\d\d.* newer than its file/)
    await offer.getByRole('button', { name: 'Look' }).click()
    await soon(async () => expect(await valueOf(again.page, 'Frame width')).toBe('1620'))
    expect(await again.page.locator('.saved').innerText()).toBe('not saved')
    await again.page.keyboard.press('Control+s')
    await again.page.getByText('Saved and read back').first().waitFor()
    expect(await widthIn(path)).toBe(1620)
    await soon(async () => expect(await copiesIn()).toEqual([]))
  })

  it('nothing is offered where the work was saved, or not wanted', async () => {
    const { page } = await opened()
    await work(page)
    await page.keyboard.press('Control+s')
    await page.getByText('Saved and read back').first().waitFor()
    await soon(async () => expect(await copiesIn()).toEqual([]))
    await work(page)
    await page.evaluate(`window.heardByPage['window:close-asked']()`)
    await answer(page, 'Don’t save')
    await soon(() => expect(answered).toEqual([true]))
    expect(await copiesIn()).toEqual([])
  })

  it('a copy that cannot be kept is said loudly and once, with a way out', async () => {
    const { page } = await opened()
    await rm(userData, { recursive: true })
    await writeFile(userData, 'in the way')
    await edit(page, 20, 1601)
    await edit(page, 20, 1621)
    await page.locator('.note.not-met').waitFor()
    expect(await page.locator('.note.not-met').allInnerTexts()).toHaveLength(1)
    expect(await page.locator('.note.not-met').innerText()).toContain('No copy for a crash can be kept')
    expect(await page.locator('.copy').count()).toBe(0)
    await page.getByRole('button', { name: 'Save now' }).click()
    await page.getByText('Saved and read back').first().waitFor()
  })
})

describe('the start view', () => {
  it('lists the last files with their worst verdict, and what is gone with a way to take it off', async () => {
    const { page, path } = await opened()
    await soon(async () =>
      expect(await double.ask('recent:list', 'jambwright://window/index.html')).toHaveLength(1),
    )
    await page.context().close()
    const again = await open({ ready: withBridge, atStart: true })
    const row = again.page.locator('[data-area="recent"] li')
    await row.waitFor()
    expect(await row.innerText()).toMatch(/Weir House · W-11[^]*1800 × 2200[^]*\d+ not met/)
    await rm(path)
    await again.page.reload()
    await again.page.getByText('file not found').waitFor()
    await again.page.getByRole('button', { name: 'Remove house.jamb from this list' }).click()
    await again.page.getByText('Files that you open or save are listed here.').waitFor()
  })
})

it('the page sees small named functions and nothing of the runtime', async () => {
  const { page } = await open({ ready: withBridge })
  const names = await page.evaluate<readonly string[]>('Object.keys(window.jambwrightBridge)')
  expect(names.toSorted()).toEqual(
    'about answerClose copies dropped forget forgetAll keepCopy letGo onCloseAsked onNews open openRecent peek print recents remember restart save saveAs setLanguage setUnsaved'.split(
      ' ',
    ),
  )
  expect(await page.evaluate('typeof require + typeof process')).toBe('undefinedundefined')
})
