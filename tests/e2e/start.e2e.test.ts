import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { starters } from '../../core/detail'
import { contentsOf, strokesOf, unpacked } from '../given/a-reader-of-pdf'
import { clippedIn, lengthenWords } from './clipped'
import { numberIn, painted, valueOf, soon, withWindow } from './window'

const open = withWindow()

describe('the start', () => {
  it('shows every wall to one scale with its frame, and asks nothing', async () => {
    const { page, faults, strangers } = await open({ atStart: true })
    expect(await page.locator('.walls button').count()).toBe(starters.length)
    expect(await page.getByRole('dialog').count()).toBe(0)
    // One scale: what a millimetre is wide is the same on every card, and the frame stands where the starter says.
    const drawn = await page.evaluate<readonly (readonly [layers: number, from: number])[]>(`
      [...document.querySelectorAll('.walls svg.picture')].map(it => {
        const widths = [...it.querySelectorAll('.cut')].map(cut => cut.getBoundingClientRect())
        return [widths.at(-1).right - widths[0].left, it.querySelector('.frame').getBoundingClientRect().left - widths[0].left]
      })`)
    const sum = (it: readonly (readonly [string, number, ...unknown[]])[]): number =>
      it.reduce((all, [, thickness_mm]) => all + thickness_mm, 0)
    const px_mm = (drawn[0]?.[0] ?? 0) / sum(starters[0]?.layers ?? [])
    for (const [at, plan] of starters.entries()) {
      const before = plan.layers.slice(
        0,
        plan.layers.findIndex(it => it.includes('bearing')),
      )
      expect((drawn[at]?.[0] ?? 0) / px_mm, plan.id).toBeCloseTo(sum(plan.layers), 0)
      expect((drawn[at]?.[1] ?? 0) / px_mm, plan.id).toBeCloseTo(sum(before) + plan.position_mm, 0)
    }
    // Found while nobody waits: U of the walls, pictures and worst verdicts of the samples.
    await soon(async () => expect(await page.locator('.walls .u').allInnerTexts()).not.toContain(''))
    expect((await page.locator('.walls .u').first().innerText()).replace('U ', '')).toMatch(/^0\.2\d$/)
    await soon(async () => expect(await page.locator('.pairs img').count()).toBe(8))
    await soon(async () => expect(await page.locator('.pairs .mark').count()).toBe(8))
    expect(await page.locator('.pairs .mark.not-met').count()).toBe(4)
    expect([faults, strangers]).toEqual([[], []])
  })

  it('begins a joint by keyboard alone, under the practice that was chosen, and goes there and back', async () => {
    const { page } = await open({ atStart: true })
    for (let at = 0; at < 2; at++) await page.keyboard.press('F6')
    expect(await page.evaluate(`document.activeElement.closest('[data-area]').dataset.area`)).toBe('walls')
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('ArrowUp')
    await page.keyboard.press('Enter')
    await page.locator('[data-grip]').first().waitFor()
    await painted(page)
    expect(await page.locator('.saved').innerText()).toBe('as opened')
    expect(await page.getByRole('option', { name: /expanded polystyrene/i }).count()).toBe(1)
    // A joint that was just begun rests on what nobody has said yet.
    expect(await page.locator('[data-area="fields"] .assumed').count()).toBeGreaterThan(0)
    await page.keyboard.press('Control+n')
    await page.locator('.walls button').first().waitFor()
    // Commands of the joint rest while no joint is in sight.
    await page.keyboard.press('Delete')
    await page.keyboard.press('Control+1')
    await page.locator('[data-grip]').first().waitFor()
    await painted(page)
    expect(await page.locator('.saved').innerText()).toBe('as opened')
  })
})

describe('the views', () => {
  it('change by Ctrl and a digit; work and teach say what will be there', async () => {
    const { page } = await open()
    for (const [key, view] of [['2', 'sheet'], ['3', 'work'], ['4', 'teach'], ['1', 'joint']] as const) {
      await page.keyboard.press(`Control+${key}`)
      expect(await page.locator(`#view-${view}`).getAttribute('aria-selected')).toBe('true')
    } // prettier-ignore
    await page.keyboard.press('Control+3')
    await page.getByText('Not there yet').waitFor()
    // Away from a verdict, F1 says what the program is and every key.
    await page.keyboard.press('F1')
    await page.getByRole('dialog').getByText('Ctrl Shift S').waitFor()
    await page.keyboard.press('Escape')
    await page.getByRole('dialog').waitFor({ state: 'hidden' })
    await page.keyboard.press('Control+,')
    await page.getByRole('menuitem', { name: 'Deutsch' }).click()
    await page.getByText('Noch nicht da').waitFor()
  })

  it.each([
    ['1280 × 720', { width: 1280, height: 720 }],
    ['200 % text of that', { width: 640, height: 360 }],
  ])('hold words two fifths longer at %s', async (_, size) => {
    const { page } = await open({ ...size, atStart: true })
    const fits = async (what: string): Promise<void> => {
      await painted(page)
      expect(await clippedIn(page), what).toEqual([])
      await lengthenWords(page)
      expect(await clippedIn(page), `${what}, longer words`).toEqual([])
    }
    await fits('start')
    // A sheet of paper is drawn anew with each view: what was lengthened is gone with it.
    const { page: joint } = await open({ ...size, beside: page })
    for (const view of ['joint', 'sheet', 'work'] as const) {
      await joint.locator(`#view-${view}`).click()
      // Panels are built in frames of their own: words are made longer when the last one stands.
      if (view === 'joint') await joint.locator('main.joint[aria-busy="false"]').waitFor()
      await painted(joint)
      expect(await clippedIn(joint), view).toEqual([])
      await lengthenWords(joint)
      await painted(joint)
      expect(await clippedIn(joint), `${view}, longer words`).toEqual([])
    }
  })
})

describe('the columns', () => {
  const widths = (page: Page) =>
    page.evaluate<readonly [left: number, right: number]>(
      `['.col.left', '.col.right'].map(it => Math.round(document.querySelector(it).getBoundingClientRect().width))`,
    )
  it('are drawn aside by hand and by key, within their bounds, and are remembered', async () => {
    const { page } = await open()
    expect(await widths(page)).toEqual([240, 344])
    const left = page.getByRole('separator', { name: 'Width of the left column' })
    const box = await left.boundingBox()
    if (box === null) throw new Error('no line to draw')
    await page.mouse.move(box.x + box.width / 2, 300)
    await page.mouse.down()
    await page.mouse.move(box.x + box.width / 2 + 60, 300, { steps: 4 })
    expect((await widths(page))[0]).toBe(300)
    await page.mouse.move(1200, 300)
    expect((await widths(page))[0]).toBe(400)
    await page.mouse.move(20, 300)
    await page.mouse.up()
    expect((await widths(page))[0]).toBe(208)
    await page.getByRole('separator', { name: 'Width of the right column' }).focus()
    for (let at = 0; at < 2; at++) await page.keyboard.press('ArrowLeft')
    expect((await widths(page))[1]).toBe(376)
    await page.keyboard.press('End')
    expect((await widths(page))[1]).toBe(480)
    const kept = JSON.parse(
      await page.evaluate<string>(`localStorage.getItem('jambwright.liking')`),
    ) as object
    expect(kept).toMatchObject({ left: 13, right: 30 })
    await left.dblclick()
    expect((await widths(page))[0]).toBe(240)
    expect(await clippedIn(page)).toEqual([])
  })
})

describe('the line between fields and verdicts', () => {
  const shares = (page: Page) =>
    page.evaluate<readonly [fields: number, verdicts: number]>(
      `['fields', 'verdicts'].map(it => document.querySelector('.right > .' + it).getBoundingClientRect().height / document.querySelector('.col.right').clientHeight)`,
    )
  it('is drawn by hand and by key, gives both what is left, and is remembered', async () => {
    const { page } = await open()
    const line = page.getByRole('separator', { name: 'Height of the fields' })
    const usual = await shares(page)
    expect(usual[0]).toBeLessThanOrEqual(0.51)
    const box = await line.boundingBox()
    if (box === null) throw new Error('no line to draw')
    const x = box.x + box.width / 2
    await page.mouse.move(x, box.y + box.height / 2)
    await page.mouse.down()
    await page.mouse.move(x, 500, { steps: 4 })
    await page.mouse.up()
    // The column begins below the head bar, at 40, and is 650 high.
    const [fields, verdicts] = await shares(page)
    expect(fields).toBeCloseTo(460 / 650, 2)
    expect(fields + verdicts).toBeCloseTo(1, 2)
    await line.focus()
    await page.keyboard.press('End')
    expect((await shares(page))[0]).toBeCloseTo(0.92, 2)
    await page.getByRole('heading', { name: 'Verdicts' }).waitFor()
    await page.keyboard.press('Home')
    expect((await shares(page))[0]).toBeCloseTo(0.2, 2)
    await page.keyboard.press('ArrowDown')
    expect(await line.getAttribute('aria-valuenow')).toBe('24')
    expect(await clippedIn(page)).toEqual([])
    const kept = JSON.parse(
      await page.evaluate<string>(`localStorage.getItem('jambwright.liking')`),
    ) as object
    expect(kept).toMatchObject({ fields: 24 })
    await line.dblclick()
    expect((await shares(page))[0]).toBeCloseTo(usual[0], 2)
  })
})

describe('print', () => {
  it('is to scale: the 100 mm of the ruler are 100 mm on paper as large as the sheet', async () => {
    const { page } = await open({ before: 'window.print = () => { window.hasPrinted = true }' })
    await page.keyboard.press('Control+p')
    await soon(async () => expect(await page.evaluate('window.hasPrinted')).toBe(true))
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true })
    // The cut is on the first page; a small sheet goes on with its lists on a second.
    const [content] = contentsOf(unpacked(pdf))
    const mm = 72 / 25.4
    const lengths = strokesOf(content ?? '').flatMap(({ points }) =>
      points
        .slice(1)
        .map(([x, y], at) => Math.hypot(x - (points[at]?.[0] ?? x), y - (points[at]?.[1] ?? y)) / mm),
    )
    const near = lengths.reduce((best, it) => (Math.abs(it - 100) < Math.abs(best - 100) ? it : best), 0)
    expect(Math.abs(near - 100)).toBeLessThan(0.2)
    const [, wide, high] = /\/MediaBox \[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(unpacked(pdf)) ?? []
    expect([Number(wide) / mm, Number(high) / mm].map(Math.round)).toEqual([210, 297])
    // The page looks as before once it is printed.
    await page.evaluate(`window.dispatchEvent(new Event('afterprint'))`)
    expect(await page.locator('.printed').count()).toBe(0)
  })
})

describe('a planner', () => {
  it('goes from a wall to a saved joint: layers, total, frame, joint, and nothing is lost on the way', async () => {
    const { page } = await open({ atStart: true, before: 'delete window.showSaveFilePicker' })
    await page.locator('.walls button').first().click()
    const state = async (part: RegExp, field: string, value: string): Promise<void> => {
      await page.getByRole('option', { name: part }).first().click()
      await page.getByRole('textbox', { name: field, exact: true }).fill(value)
      await page.keyboard.press('Enter')
    }
    await state(/Calcium silicate/, 'Thickness', '240')
    await state(/Mineral wool/, 'Thickness', '14 cm')
    await state(/Gypsum plaster/, 'Thickness', '15')
    // 8 + 140 + 240 + 15
    await page.getByRole('option', { name: /Calcium silicate/ }).click()
    const total = page.getByRole('textbox', { name: /whole wall/i }).first()
    expect(await total.inputValue()).toBe('403')
    await state(/Calcium silicate/, 'Thickness', '365')
    expect(await total.inputValue()).toBe('528')
    await page.keyboard.press('Control+z')
    await state(/^\d* ?Frame \d/, 'From bearing layer', '-60')
    expect(numberIn(await valueOf(page, 'From bearing layer'))).toBe(-60)
    // Out and back: what was said is there, and the file holds it.
    await page.keyboard.press('Control+n')
    await page.locator('.walls button').nth(2).click()
    await page.getByRole('alertdialog').getByRole('button', { name: 'Cancel' }).click()
    await page.keyboard.press('Control+1')
    expect(numberIn(await valueOf(page, 'From bearing layer'))).toBe(-60)
    const download = page.waitForEvent('download')
    await page.keyboard.press('Control+s')
    expect((await download).suggestedFilename()).toBe('insulated-masonry.jamb')
  })
})

describe('an installer', () => {
  it('types sizes as they come: units, sums, a doubtful point; and a width that cannot be meant is not taken', async () => {
    const { page } = await open()
    const width = page.getByRole('textbox', { name: 'Frame width', exact: true })
    for (const [typed, read] of [['1,18 m', 1180], ['1.18m', 1180], ['1180', 1180], ['46 7/16 in', 1179.5]] as const) {
      await width.fill(typed)
      await page.keyboard.press('Enter')
      expect(Number(await valueOf(page, 'Frame width')), typed).toBeCloseTo(read, 0)
    } // prettier-ignore
    // Centimetres, probably: what was meant is named, and nothing is changed.
    await width.fill('118')
    await page.keyboard.press('Enter')
    expect(await page.locator('[data-area="fields"]').innerText()).toMatch(/1180\smm/)
    await page.keyboard.press('Escape')
    expect(Number(await valueOf(page, 'Frame width'))).toBeCloseTo(1179.5, 0)
    await width.fill('1.200')
    await page.keyboard.press('Enter')
    expect(await page.locator('[data-area="fields"]').innerText()).toMatch(/1\.2\smm/)
    await page.keyboard.press('Escape')
    expect(Number(await valueOf(page, 'Frame width'))).toBeCloseTo(1179.5, 0)
  })
})
