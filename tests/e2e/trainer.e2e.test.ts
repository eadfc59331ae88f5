import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { judged } from '../given/a-reader-of-pdf'
import { noPickers, reopened, savedAs, sheetDrawn } from './journey'
import { painted, soon, withWindow } from './window'

const open = withWindow()

describe('a trainer', () => {
  it(
    'puts a wrong opening beside the right one by keyboard, for a sheet that is the same in the dark',
    { timeout: 120_000 },
    async () => {
      const { page, faults } = await open({ before: noPickers })
      const press = async (...keys: readonly string[]) => {
        for (const key of keys) await page.keyboard.press(key)
        await painted(page)
      }
      const command = async (name: string) => {
        await page.keyboard.press('Control+k')
        await page.getByRole('combobox').waitFor()
        await page.keyboard.type(name)
        await press('Enter')
        await page.getByRole('combobox').waitFor({ state: 'detached' })
      }
      const select = async (name: RegExp) => {
        await page.locator('[data-area="parts"] [role="option"][tabindex="0"]').focus()
        await press('Home')
        for (
          let at = 0;
          at < 30 && !name.test(await page.evaluate<string>('document.activeElement.title'));
          at++
        )
          await press('ArrowDown')
        expect(await page.evaluate<string>('document.activeElement.title')).toMatch(name)
      }
      await press('Control+Shift+D')
      await select(/^Frame,/)
      // From the frame's row into its fields, on to the name of the opening.
      await press('Enter')
      for (
        let at = 0;
        at < 30 && (await page.evaluate('document.activeElement.ariaLabel')) !== 'Name of the opening';
        at++
      )
        await press('Tab')
      await page.keyboard.type('Wrong')
      await press('Enter')
      // Its seals change places: from the row into the fields, back to what can be done with the part.
      await select(/tape/i)
      await press('Enter')
      for (let at = 0; at < 6 && (await page.evaluate('document.activeElement.ariaLabel')) !== 'More'; at++)
        await press('Shift+Tab')
      await press('Enter')
      const exchange = page.getByRole('menuitem', { name: 'Change places with the inner plane' })
      await exchange.waitFor()
      for (let at = 0; at < 12 && !(await exchange.evaluate(it => it === document.activeElement)); at++)
        await press('ArrowUp')
      await press('Enter')
      // Its sill loses the upstand.
      for (
        let at = 0;
        at < 3 && (await page.getByRole('region', { name: 'Section through the sill' }).count()) === 0;
        at++
      )
        await command('next cut')
      await select(/Outside sill/)
      await press('Enter')
      for (
        let at = 0;
        at < 12 && (await page.evaluate('document.activeElement.ariaLabel')) !== 'Upstand at the frame';
        at++
      )
        await press('Tab')
      await page.keyboard.type('0')
      await press('Enter')
      expect(await page.evaluate('document.activeElement.ariaLabel')).toBe('Upstand at the frame')
      const broken = page.locator('.vr.not-met .t')
      await broken.filter({ hasText: 'Upstand of the sill at the frame' }).waitFor()
      await press('F8')
      await soon(async () => expect(await broken.count()).toBeGreaterThan(1))
      const titles = await broken.allInnerTexts()
      expect(new Set(titles).size).toBe(titles.length)
      expect(titles.length, titles.join()).toBeGreaterThanOrEqual(2)

      // The window in German, the sheet in English; it is the same sheet in the dark.
      await command('german')
      const { path, project } = await savedAs(page)
      expect(Object.values(project.openings).map(it => it.name)).toEqual(['W-07', 'Wrong'])
      await reopened(page, path)
      await page.keyboard.press('Control+2')
      const sheet = page.getByTestId('sheet')
      await sheet.locator('text', { hasText: 'Leibung' }).first().waitFor()
      await page.getByRole('radiogroup', { name: 'Sprache' }).getByText('English').click()
      await sheet.locator('text', { hasText: 'Left jamb' }).first().waitFor()
      const inLight = await sheet.innerHTML()
      const dark = await open({ theme: 'dark', before: noPickers })
      await reopened(dark.page, path)
      expect((await sheetDrawn(dark.page)) === inLight).toBe(true)

      // Right beside wrong on one A3 in black, at one scale, each fault with its number; the order may be turned.
      await page.locator('[data-area="sheets"] [role="option"][tabindex="0"]').focus()
      for (let at = 0; at < 7 && !(await page.locator('#sheet-beside.on').count()); at++)
        await press('ArrowDown')
      await page.getByRole('radio', { name: 'Farbe' }).focus()
      await press('ArrowRight')
      await page.getByRole('radio', { name: 'Links', exact: true }).focus()
      await press('ArrowRight', 'ArrowRight')
      const drawn = (words: string) => sheet.locator('text', { hasText: words }).first().waitFor()
      await drawn('Sill, two details compared')
      for (const words of ['Wrong', 'no fault', 'Faults', 'Tighter inside than outside']) await drawn(words)
      const colours = new Set((await sheet.innerHTML()).match(/#[0-9a-f]{6}\b/gi))
      expect([...colours].filter(it => !/^#(..)\1\1$/i.test(it))).toEqual([])
      const loading = page.waitForEvent('download')
      await page.locator('.act .btn').focus()
      await press('Enter')
      const pdf = new Uint8Array(readFileSync((await (await loading).path()) ?? ''))
      expect(judged(pdf, 'pdfinfo', 'FILE').said).toMatch(/Page size: +1190\.\d+ x 841\.\d+ pts/)
      const said = judged(pdf, 'pdftotext', '-layout', 'FILE', '-').said
      expect(said).toMatch(/scale 1:\d/)
      const listed = Number(/(\d+) faults/.exec(said)?.[1])
      expect(listed).toBeGreaterThanOrEqual(2)
      await page.getByRole('radio', { name: 'Diese, dann jene' }).focus()
      await press('ArrowRight')
      await sheet
        .locator('text', { hasText: /^Wrong$/ })
        .first()
        .waitFor()
      expect(faults).toEqual([])
    },
  )
})
