import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { openProject, samples, saveProject } from '../../core/detail'
import { openSample, valueOf, soon, withWindow } from './window'

const open = withWindow()

/** A browser without file pickers: files come by an input and go as downloads. */
const noPickers = 'delete window.showOpenFilePicker; delete window.showSaveFilePicker'

/** Pickers that give a file of the browser's own file system, as one that the user has chosen. */
const ownPickers = `
  window.ownFile = async () => [await (await navigator.storage.getDirectory()).getFileHandle('house.jamb', { create: true })]
  window.showOpenFilePicker = ownFile
  window.showSaveFilePicker = async () => (await ownFile())[0]
`
const ownText = (page: Page) =>
  page.evaluate<string>(`(async () => (await (await ownFile())[0].getFile()).text())()`)

const [first, second] = samples.map(it => saveProject(it.project))
if (first === undefined || second === undefined) throw new Error('two samples are needed')

const widen = async (page: Page, width: number): Promise<void> => {
  await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill(`${width}`)
  await page.keyboard.press('Enter')
}
const answer = async (page: Page, name: string): Promise<void> => {
  await page.getByRole('alertdialog').getByRole('button', { name, exact: true }).click()
  await page.getByRole('alertdialog').waitFor({ state: 'detached' })
}
const widthIs = (page: Page, width: string) =>
  soon(async () => expect(await valueOf(page, 'Frame width')).toBe(width))

/** Drops files, each a name and its text, or a link where there is none. */
const drop = (page: Page, ...files: readonly (readonly [name: string, text: string])[]): Promise<void> =>
  page.evaluate(`(() => {
    const what = new DataTransfer()
    for (const [name, text] of ${JSON.stringify(files)}) what.items.add(new File([text], name))
    if (${files.length} === 0) what.setData('text/uri-list', 'https://example.invalid/')
    const event = new DragEvent('drop', { dataTransfer: what, bubbles: true, cancelable: true })
    document.querySelector('main').dispatchEvent(event)
    if (!event.defaultPrevented) throw new Error('the page would be left')
  })()`)

describe('what is dropped on the window', () => {
  it('opens where it is one file of ours, else is said, and never leads away', async () => {
    const { page, faults } = await open({ atStart: true })
    const at = page.url()
    await drop(page, ['house.jamb', second])
    await page.getByText('W-11').first().waitFor()
    const said = async (words: RegExp): Promise<void> => {
      const note = page.locator('.note.not-met').last()
      await soon(async () => expect(await note.innerText()).toMatch(words))
      await note.getByRole('button', { name: 'Close' }).click()
    }
    await drop(page, ['a.jamb', first], ['b.jamb', second])
    await said(/Several files were dropped/)
    await drop(page)
    await said(/What was dropped is no file/)
    await drop(page, ['setup.exe', 'MZ'])
    await said(/setup\.exe was not opened/)
    await drop(page, ['sheet.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>'])
    await said(/no project is attached to this sheet/)
    expect(await page.getByText('W-11').count()).toBeGreaterThan(0)
    expect(page.url()).toBe(at)
    expect(faults).toEqual([])
  })
})

describe('unsaved work', () => {
  const triggers: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
    ['a sample', page => openSample(page, 1)],
    ['what is dropped', page => drop(page, ['house.jamb', second])],
    ['a file that is opened', async page => {
      const chooser = page.waitForEvent('filechooser')
      await page.keyboard.press('Control+o')
      await (await chooser).setFiles({ name: 'back.jamb', mimeType: 'application/json', buffer: Buffer.from(second) })
    }],
    ['a new joint', async page => {
      await page.keyboard.press('Control+n')
      await page.locator('.walls button').first().click()
    }],
  ] // prettier-ignore

  it.each(triggers)('is asked about before %s takes its place', async (_, trigger) => {
    const { page } = await open({ before: noPickers })
    await widen(page, 1300)
    await trigger(page)
    // Esc is Cancel.
    await page.getByRole('alertdialog').waitFor()
    await page.keyboard.press('Escape')
    await page.getByRole('alertdialog').waitFor({ state: 'detached' })
    await page.keyboard.press('Control+1')
    expect(await valueOf(page, 'Frame width')).toBe('1300')
    expect(await page.locator('.saved').innerText()).toBe('not saved')

    const download = page.waitForEvent('download')
    await trigger(page)
    // Enter is Save.
    await page.getByRole('alertdialog').waitFor()
    await page.keyboard.press('Enter')
    const saved = openProject(await readFile((await (await download).path()) ?? '', 'utf8'))
    expect(saved.ok && Object.values(saved.value.project.openings)[0]?.width_mm.value).toBe(1300)
    await soon(async () => expect(await valueOf(page, 'Frame width')).not.toBe('1300'))

    await widen(page, 1310)
    await trigger(page)
    await answer(page, 'Don’t save')
    await soon(async () => expect(await valueOf(page, 'Frame width')).not.toBe('1310'))
  })
})

describe('a file in a browser that gives files', () => {
  it('is saved in its place, listed, opened again, and watched for changes from elsewhere', async () => {
    const { page } = await open({ before: ownPickers })
    await widen(page, 1300)
    await page.keyboard.press('Control+s')
    await page.getByText('Saved and read back').first().waitFor()
    await widen(page, 1310)
    await page.keyboard.press('Control+s')
    await soon(async () => expect(await ownText(page)).toContain('1310'))

    await page.reload()
    await page.locator('[data-area="recent"] button').click()
    await widthIs(page, '1310')
    await page.evaluate(`(async () => {
      const [handle] = await ownFile()
      const stream = await handle.createWritable()
      await stream.write(${JSON.stringify(second)})
      await stream.close()
    })()`)
    await widen(page, 1320)
    await page.keyboard.press('Control+s')
    await answer(page, 'Drop mine, read the file')
    await page.getByText('W-11').first().waitFor()
  })

  it('leaves a copy after a crash, which is offered once nobody works on it', async () => {
    const { page } = await open({ before: ownPickers })
    for (let at = 0; at < 20; at++) await widen(page, 1301 + at)
    await page.locator('.copy').waitFor()
    const beside = await open({ atStart: true, beside: page })
    await beside.page.getByText('Files that you open or save are listed here.').waitFor()
    expect(await beside.page.locator('[data-area="kept"]').count()).toBe(0)
    // The page ends without a word, as in a crash.
    await page.close()
    await beside.page.reload()
    await beside.page.getByRole('button', { name: 'Look' }).click()
    await widthIs(beside.page, '1320')
    expect(await beside.page.locator('.saved').innerText()).toBe('not saved')
  })
})

describe('the safety of what is kept', () => {
  it('an older or newer file says so; a newer one is saved elsewhere only', async () => {
    const { page } = await open({ atStart: true, before: noPickers })
    const newer = first.replace('"version": 2', '"version": 3')
    expect(newer).not.toBe(first)
    await drop(page, ['newer.jamb', newer])
    await page.getByText('A newer program wrote this file: it opens for reading only.').first().waitFor()
    expect(await page.locator('.saved').innerText()).toBe('opened for reading')
  })
})
