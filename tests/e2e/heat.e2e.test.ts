import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { samples } from '../../core/detail'
import { gripAt, numberIn, painted, withWindow } from './window'

const open = withWindow()

/** A worker answers within some frames; on a busy machine it may take longer. */
const patience = { timeout: 20_000 }

const coldest = async (page: Page): Promise<number> =>
  numberIn((await page.getByTestId('coldest-temperature').innerText()).replace(' °C', ''))

const show = async (page: Page): Promise<void> => {
  await page.keyboard.press('Alt+Digit3')
  await page.getByTestId('coldest-card').waitFor()
}

/** How many different colours lie on a canvas of the field: none where nothing is painted. */
const coloursOn = (page: Page, of: 'bands' | 'lines'): Promise<number> =>
  page.evaluate(name => {
    const canvas = document.querySelector<HTMLCanvasElement>(`[data-heat="${name}"]`)
    const context = canvas?.getContext('2d')
    if (!canvas || !context) return -1
    const { data } = context.getImageData(0, 0, canvas.width, canvas.height)
    const seen = new Set<number>()
    for (let at = 0; at < data.length; at += 4 * 97)
      if (data[at + 3] === 255)
        seen.add(((data[at] ?? 0) << 16) | ((data[at + 1] ?? 0) << 8) | (data[at + 2] ?? 0))
    return seen.size
  }, of)

describe('heat shown', () => {
  test('lies over the section, follows the frame while it is dragged, and goes again', async () => {
    const sample = samples.findIndex(it => it.file === 'bead-in-brick')
    const { page, faults, refusals, strangers } = await open({ sample })
    await show(page)
    expect(await coloursOn(page, 'bands')).toBeGreaterThan(10)
    expect(await coloursOn(page, 'lines')).toBeGreaterThan(0)
    const before = await coldest(page)
    const [x, y] = await gripAt(page, 'opening.position')
    await page.mouse.move(x, y)
    await page.mouse.down()
    const seen: number[] = []
    for (const by of [-40, -65, -90, -115]) {
      await page.mouse.move(x + by, y)
      await painted(page)
      await expect.poll(() => page.locator('.tag', { hasText: 'updating' }).count(), patience).toBe(0)
      await expect.poll(async () => (await coldest(page)) !== (seen.at(-1) ?? before), patience).toBe(true)
      seen.push(await coldest(page))
    }
    // Further out the reveal is colder, and every step is seen before the button is let go.
    expect(seen.every((it, i) => it < (i === 0 ? before : (seen[i - 1] ?? 0)))).toBe(true)
    await page.mouse.up()
    await page.keyboard.press('Control+z')
    await expect.poll(() => coldest(page), patience).toBe(before)
    await page.keyboard.press('Alt+Digit3')
    expect(await page.locator('[data-heat]').count()).toBe(0)
    expect([faults, await refusals(), strangers]).toEqual([[], [], []])
  })

  test('answers to the conditions, says how sure it is and what moves it, and its sum can be worked again', async () => {
    const { page } = await open({ language: 'de' })
    await show(page)
    const before = await coldest(page)
    const outside = page.locator('[data-area="heat"] input').first()
    await outside.fill('-15')
    await outside.press('Enter')
    await expect.poll(() => coldest(page), patience).toBeLessThan(before - 1)
    const loss = page.getByTestId('heat-loss')
    await loss.waitFor()
    const terms = (await loss.locator('dd').allInnerTexts()).map(it => numberIn(it.replace(/ W\/mK|\s/g, '')))
    const [through = 0, wall = 0, element = 0, psi = 0] = terms
    expect(through + wall + element).toBeCloseTo(psi, 2)
    expect(await page.locator('.sens b').count()).toBe(3)
  })

  test('compares places of the frame, and takes one', async () => {
    const { page } = await open()
    await show(page)
    await page.getByRole('button', { name: 'Compare positions' }).click()
    await page.locator('.beside table').waitFor()
    expect(await page.locator('.beside [data-position]').count()).toBeGreaterThan(2)
    const take = page.getByRole('button', { name: 'Take this place' }).first()
    const wanted = await page
      .locator('[data-position]')
      .filter({ has: take })
      .first()
      .getAttribute('data-position')
    await take.click()
    await expect.poll(() => page.locator('.beside .now').getAttribute('data-position'), patience).toBe(wanted)
    await page.keyboard.press('Escape')
    await expect.poll(() => page.locator('.beside').count(), patience).toBe(0)
  })

  test('goes onto the sheet in the place of hatches', async () => {
    const { page, faults } = await open()
    await page.keyboard.press('Control+2')
    const sheet = page.locator('main svg').first()
    await sheet.waitFor()
    expect(await page.getByText('mould limit').count()).toBe(0)
    await page.getByRole('radio', { name: 'Heat' }).check({ force: true })
    await page.getByText('mould limit').first().waitFor()
    expect(faults).toEqual([])
  })

  test('greys what is late, and says so when its worker is at fault, nowhere else', async () => {
    const { page } = await open({
      before: `
        const Real = Worker
        window.Worker = class extends Real {
          postMessage(...of) {
            if (window.held) window.held.push(() => super.postMessage(...of))
            else super.postMessage(...of)
          }
        }`,
    })
    await show(page)
    await page.evaluate('window.held = []')
    const outside = page.locator('[data-area="heat"] input').first()
    await outside.fill('-12')
    await outside.press('Enter')
    await page.locator('.tag', { hasText: 'updating' }).waitFor()
    await page.evaluate('{ const all = window.held; window.held = undefined; for (const one of all) one() }')
    await expect.poll(() => page.locator('.tag', { hasText: 'updating' }).count(), patience).toBe(0)
    // A question that no worker can read.
    await page.evaluate(`{
      const post = Worker.prototype.postMessage
      Worker.prototype.postMessage = function (of, ...more) { return post.call(this, of?.question ? { ...of, question: {} } : of, ...more) }
    }`)
    await outside.fill('-11')
    await outside.press('Enter')
    await page.locator('[data-fault]').waitFor()
    expect(await page.locator('[data-fault]').count()).toBe(1)
    expect(await page.locator('[data-grip]').count()).toBeGreaterThan(0)
  })
})
