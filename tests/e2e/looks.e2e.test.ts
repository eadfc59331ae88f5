import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { clippedIn } from './clipped'
import { seriousIn } from './serious'
import { painted, withWindow } from './window'

const open = withWindow()
describe('at 1280 × 720', () => {
  const rows = (['en', 'de'] as const).flatMap(language => [0, 1, 2].map(sample => ({ language, sample })))
  it.each(rows)('nothing is clipped in $language, sample $sample', async ({ language, sample }) => {
    const { page } = await open({ language, sample })
    expect(await clippedIn(page)).toEqual([])
    for (const row of await page.getByRole('option').all()) {
      await row.click()
      await painted(page)
      expect(await clippedIn(page), await row.innerText()).toEqual([])
    }
    await page.locator('#view-sheet').click()
    await page.locator('.act .btn').first().waitFor()
    expect(await clippedIn(page)).toEqual([])
  })

  it('the ring, its key and eleven parts stand at the left without scrolling', async () => {
    const { page } = await open()
    // What stands in no section follows: blocks and members of the side.
    const numbered = page.locator('.row', { has: page.locator('.n:not(:empty)') })
    expect(await numbered.count()).toBe(11)
    const [list, last] = [await page.locator('.parts').boundingBox(), await numbered.last().boundingBox()]
    expect((last?.y ?? 0) + (last?.height ?? 0)).toBeLessThanOrEqual((list?.y ?? 0) + (list?.height ?? 0))
  })
})

describe('at the least size and at 200 % text', () => {
  it.each([
    ['1024 × 640', 'en', { width: 1024, height: 640 }],
    ['1024 × 640', 'de', { width: 1024, height: 640 }],
    ['640 × 360, which is 1280 × 720 at 200 %', 'en', { width: 640, height: 360 }],
  ] as const)('nothing is lost at %s in %s', async (_, language, size) => {
    const { page } = await open({ ...size, language })
    for (const tab of ['all-round', 'parts', 'fields', 'verdicts']) {
      await page.locator(`#tab-${tab}`).click()
      await painted(page)
      expect(await clippedIn(page), tab).toEqual([])
    }
  })
})

describe('by machine', () => {
  it.each(['light', 'dark'] as const)('axe finds nothing serious in %s', async theme => {
    const { page } = await open({ theme, sample: 2 })
    expect(await seriousIn(page)).toEqual([])
    await page.locator('#view-sheet').click()
    await page.locator('.act .btn').first().waitFor()
    expect(await seriousIn(page)).toEqual([])
  })

  it('axe finds nothing serious in menus and dialogs', async () => {
    const { page } = await open()
    await page.click('.file')
    expect(await seriousIn(page)).toEqual([])
    await page.keyboard.press('Escape')
    await page.keyboard.press('Control+k')
    await page.getByRole('combobox').waitFor()
    expect(await seriousIn(page)).toEqual([])
  })

  it('every part is in the accessibility tree with its value, also in forced colours', async () => {
    const { page } = await open()
    await page.emulateMedia({ forcedColors: 'active' })
    await painted(page)
    const tree = await page.locator('[data-area="parts"]').ariaSnapshot()
    for (const part of [/Mineral wool 140/, /Frame 78 × 58/, /Tape 20\/10–18 , (met|unknown|refer)/])
      expect(tree).toMatch(part)
  })
})

describe('the language', () => {
  it('changes at once, numbers with it, and is remembered', async () => {
    const { page } = await open()
    await page.getByRole('button', { name: 'Settings' }).click()
    await page.getByRole('menuitem', { name: 'Deutsch' }).click()
    await page.getByRole('heading', { name: 'Befunde' }).waitFor()
    expect(await page.locator('html').getAttribute('lang')).toBe('de')
    expect(await page.locator('.gauge .b').textContent()).toContain('10,7')
    const kept = await page.evaluate<string>(`localStorage.getItem('jambwright.liking')`)
    expect(JSON.parse(kept)).toMatchObject({ language: 'de' })
  })
})

describe('the theme', () => {
  it('changes the board, never the sheet', async () => {
    const light = await open({ theme: 'light' })
    const dark = await open({ theme: 'dark' })
    const paperOf = (page: Page) =>
      page.evaluate<string>(`getComputedStyle(document.querySelector('.cv')).backgroundColor`)
    expect(await paperOf(light.page)).not.toBe(await paperOf(dark.page))
    const sheetOf = async (page: Page): Promise<string> => {
      await page.locator('#view-sheet').click()
      await page.getByTestId('sheet').locator('svg').first().waitFor()
      return page.getByTestId('sheet').innerHTML()
    }
    expect(await sheetOf(dark.page)).toBe(await sheetOf(light.page))
  })
})
