import { mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { openFile } from '../../core/intake'
import { judged } from '../given/a-reader-of-pdf'
import { withWindow } from './window'

const open = withWindow()

const bare = 'delete window.showOpenFilePicker; delete window.showSaveFilePicker'

const sheetIn = async (page: Page): Promise<void> => {
  await page.locator('#view-sheet').click()
  await page.getByTestId('sheet').locator('svg').first().waitFor()
}

const choose = (page: Page, of: string, value: string): Promise<void> =>
  page.getByRole('radiogroup', { name: of, exact: true }).getByText(value, { exact: true }).click()

/** What the button of the sheet saves. */
const saved = async (page: Page): Promise<Uint8Array> => {
  const loading = page.waitForEvent('download')
  await page.locator('.act .btn').click()
  const path = join(mkdtempSync(join(tmpdir(), 'sheet-')), 'out')
  await (await loading).saveAs(path)
  return new Uint8Array(readFileSync(path))
}

describe('the view of sheets', () => {
  it('draws three cuts and the report, in a language of its own, on white in a dark window', async () => {
    const { page, faults, refusals } = await open({ theme: 'dark' })
    await sheetIn(page)
    const sheet = page.getByTestId('sheet')
    await page.locator('#sheet-cuts').click()
    await sheet.locator('text', { hasText: 'Left jamb' }).first().waitFor()
    await choose(page, 'Words', 'Deutsch')
    await sheet.locator('text', { hasText: 'Leibung links' }).first().waitFor()
    expect(await page.locator('#view-sheet').innerText()).toBe('Sheet')
    await choose(page, 'Lengths', 'inch')
    await sheet.locator('text', { hasText: 'Maße in Zoll' }).first().waitFor()
    const white = `getComputedStyle(document.querySelector('.paper')).backgroundColor`
    expect(await page.evaluate(white)).toBe('rgb(255, 255, 255)')
    await page.locator('#sheet-report').click()
    await sheet.locator('text', { hasText: 'Prüfbericht' }).first().waitFor()
    expect(await sheet.locator('svg').count()).toBeGreaterThan(2)
    expect(faults).toEqual([])
    expect(await refusals()).toEqual([])
  })

  it('draws the joint once more at the scale that is chosen, and says where that has no room', async () => {
    const { page, faults } = await open()
    await sheetIn(page)
    const sheet = page.getByTestId('sheet')
    await choose(page, 'Paper', 'A3')
    await choose(page, 'Enlarged', '1 : 1')
    await sheet.locator('text', { hasText: 'Detail X' }).first().waitFor()
    await choose(page, 'Scale', '1 : 2')
    await page.getByText('There is no room for the joint').waitFor()
    await choose(page, 'Enlarged', 'no')
    await page.getByText('There is no room for the joint').waitFor({ state: 'detached' })
    expect(await sheet.locator('text', { hasText: 'Detail X' }).count()).toBe(0)
    expect(faults).toEqual([])
  })

  it('says what is empty before it goes out, and no longer once it is filled in', async () => {
    const { page } = await open()
    await sheetIn(page)
    const before = page.getByTestId('before')
    await before.getByText('Approved by').waitFor()
    await page.getByText('Title block', { exact: true }).click()
    await page.getByLabel('Approved by').fill('Checker')
    await page.getByLabel('Approved by').blur()
    await before.getByText('Approved by').waitFor({ state: 'detached' })
    await page.getByLabel('Index').fill('A')
    await page.getByLabel('Date').fill('2026-03-14')
    await page.getByLabel('Change').fill('First issue')
    await page.getByRole('combobox', { name: 'State' }).selectOption('issued')
    await page.getByRole('button', { name: 'Set the state' }).click()
    await before.getByText('A, 2026-03-14').waitFor()
    await page.getByTestId('sheet').locator('text', { hasText: 'First issue' }).first().waitFor()
  })

  it('saves all sheets as one PDF that opens again', { timeout: 120_000 }, async () => {
    const { page, faults } = await open({ before: bare })
    await sheetIn(page)
    await choose(page, 'Sheets', 'All 6')
    const pdf = await saved(page)
    expect(judged(pdf, 'qpdf', '--check', 'FILE').code).toBe(0)
    expect(Number(/Pages: +(\d+)/.exec(judged(pdf, 'pdfinfo', 'FILE').said)?.[1])).toBeGreaterThan(6)
    expect(openFile(pdf).ok).toBe(true)
    expect(faults).toEqual([])
  })

  it('saves a picture of 300 dots to the inch', { timeout: 120_000 }, async () => {
    const { page, faults } = await open({ before: bare })
    await sheetIn(page)
    await choose(page, 'Format', 'PNG')
    const png = Buffer.from(await saved(page))
    expect(png.includes('pHYs')).toBe(true)
    // width and height stand behind the signature and the head of the first chunk
    const [width, height] = [png.readUInt32BE(16), png.readUInt32BE(20)]
    expect([width / 300, height / 300].map(it => Math.round(it * 25.4))).toEqual([210, 297])
    expect(faults).toEqual([])
  })

  it('draws an opening of another file beside, and leaves what is open as it is', async () => {
    const { page, faults } = await open({ before: bare })
    const name = await page.locator('.file .name').innerText()
    await sheetIn(page)
    await page.locator('#sheet-beside').click()
    const choose = async (file: string, text: string) => {
      const chooser = page.waitForEvent('filechooser')
      await page.getByRole('button', { name: 'From another file …' }).click()
      await (await chooser).setFiles({ name: file, mimeType: 'application/json', buffer: Buffer.from(text) })
    }
    await choose('broken.jamb', '{}')
    await page
      .getByTestId('urgent')
      .getByText(/broken\.jamb was not opened/)
      .waitFor({ state: 'attached' })
    await choose('other.jamb', readFileSync('assets/samples/tight-outside.jamb', 'utf8'))
    await page.getByTestId('sheet').locator('text', { hasText: 'two details compared' }).first().waitFor()
    expect(await page.locator('.beside optgroup').first().getAttribute('label')).toBe('other.jamb')
    expect(await page.locator('.file .name').innerText()).toBe(name)
    expect(faults).toEqual([])
  })

  it('stops writing where it is told to, and writes nothing', async () => {
    const { page } = await open({ before: bare })
    await sheetIn(page)
    await choose(page, 'Sheets', 'All 6')
    let loaded = false
    page.on('download', () => (loaded = true))
    await page.locator('.act .btn').click()
    await page.locator('.busy .btn').click()
    await page.locator('.busy').waitFor({ state: 'detached' })
    expect(await page.locator('.act .btn').isEnabled()).toBe(true)
    expect(loaded).toBe(false)
  })
})
