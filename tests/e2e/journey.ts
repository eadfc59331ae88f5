import { readFile } from 'node:fs/promises'
import type { Locator, Page } from 'playwright-core'
import { openProject, type Project } from '../../core/detail'
import { painted } from './window'

/** A browser without file pickers: files come by an input and go as downloads. */
export const noPickers = 'delete window.showOpenFilePicker; delete window.showSaveFilePicker'

/** The row of a part in the parts list. */
export const rowOf = (page: Page, name: RegExp): Locator =>
  page.locator('[data-area="parts"]').getByRole('option', { name }).first()

/** A line of the fields, by the name of its value. */
export const fieldNamed = (page: Page, name: string): Locator =>
  page.locator('[data-area="fields"]').getByRole('textbox', { name, exact: true })

/** Types a value into its line and takes it. */
export const stateValue = async (page: Page, name: string, text: string): Promise<void> => {
  await fieldNamed(page, name).fill(text)
  await fieldNamed(page, name).press('Enter')
  await painted(page)
}

/** Opens a group of fields that may be folded away. */
export const unfold = async (page: Page, id: string): Promise<void> => {
  const head = page.locator(`[data-area="fields"] [aria-controls="group-${id}"]`)
  if ((await head.getAttribute('aria-expanded')) === 'false') await head.click()
}

/** Chooses a word of a closed list among the fields. */
export const chooseWord = async (page: Page, field: string, word: string): Promise<void> => {
  await page.locator(`[data-area="fields"] [data-field="${field}"] button`).first().click()
  await page.getByRole('menuitem', { name: word }).click()
  await painted(page)
}

/** Saves as a download, and gives where it lies and what is in it. */
export const savedAs = async (page: Page): Promise<{ readonly path: string; readonly project: Project }> => {
  const download = page.waitForEvent('download')
  await page.keyboard.press('Control+s')
  const path = (await (await download).path()) ?? ''
  const read = openProject(await readFile(path, 'utf8'))
  if (!read.ok) throw new Error(read.problems[0].say.en)
  return { path, project: read.value.project }
}

/** Opens a file that was saved, in a window of its own choosing. */
export const reopened = async (page: Page, path: string): Promise<void> => {
  const chooser = page.waitForEvent('filechooser')
  await page.keyboard.press('Control+o')
  await (
    await chooser
  ).setFiles({
    name: 'again.jamb',
    mimeType: 'application/json',
    buffer: await readFile(path),
  })
  await page.locator('.saved', { hasText: /as opened|wie geöffnet/ }).waitFor()
  await painted(page)
}

/** The sheet that is shown, as it is drawn. */
export const sheetDrawn = async (page: Page): Promise<string> => {
  await page.keyboard.press('Control+2')
  await page.getByTestId('sheet').locator('svg').first().waitFor()
  const drawn = await page.getByTestId('sheet').innerHTML()
  await page.keyboard.press('Control+1')
  return drawn
}
