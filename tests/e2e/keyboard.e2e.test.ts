import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { painted, valueOf, withWindow } from './window'

const open = withWindow()

const focused = (page: Page): Promise<string> =>
  page.evaluate(`document.activeElement?.closest('[data-area]')?.dataset.area ?? ''`)

describe('by keyboard alone', () => {
  it('F6 goes round the areas in their order and back', async () => {
    const { page } = await open()
    const round: string[] = []
    for (let at = 0; at < 9; at++) {
      await page.keyboard.press('F6')
      round.push(await focused(page))
    }
    expect(round).toEqual([
      'head',
      'all-round',
      'parts',
      'build-up',
      'section',
      'planes',
      'fields',
      'verdicts',
      'foot',
    ])
    await page.keyboard.press('F6')
    expect(await focused(page)).toBe('head')
    await page.keyboard.press('Shift+F6')
    expect(await focused(page)).toBe('foot')
  })

  it('a part is chosen in the list, its value typed, and taken back', async () => {
    const { page } = await open()
    for (let at = 0; at < 3; at++) await page.keyboard.press('F6')
    await page.keyboard.press('Home')
    await page.keyboard.press('ArrowDown')
    expect(await page.locator('#fields-title').innerText()).toBe('Mineral wool')
    expect(await page.getByTestId('polite').innerText()).toContain('part 2')
    await page.keyboard.press('Enter')
    await page.keyboard.type('12 cm')
    await page.keyboard.press('Enter')
    expect(await valueOf(page, 'Thickness')).toBe('120')
    await page.keyboard.press('Control+z')
    expect(await valueOf(page, 'Thickness')).toBe('140')
    await page.keyboard.press('Control+y')
    expect(await valueOf(page, 'Thickness')).toBe('120')
  })

  it('arrows on the board nudge the frame: 40 repeats are one undo', async () => {
    const { page } = await open()
    await page.locator('[data-area="section"]').focus()
    for (let at = 0; at < 40; at++) await page.keyboard.down('ArrowRight')
    await page.keyboard.up('ArrowRight')
    expect(await valueOf(page, 'From bearing layer')).toBe('55')
    await page.keyboard.press('Control+z')
    expect(await valueOf(page, 'From bearing layer')).toBe('15')
    await page.keyboard.press('Alt+ArrowRight')
    expect(await valueOf(page, 'From bearing layer')).toBe('15.1')
    await page.keyboard.press('Shift+ArrowLeft')
    expect(await valueOf(page, 'From bearing layer')).toBe('5.1')
  })

  it('the ring is walked along a side and across its planes', async () => {
    const { page } = await open()
    await page.locator('#stretch-outer-left').focus()
    await page.keyboard.press('ArrowRight')
    expect(await page.evaluate('document.activeElement.id')).toBe('stretch-middle-left')
    await page.keyboard.press('ArrowUp')
    expect(await page.evaluate('document.activeElement.id')).toBe('stretch-middle-head')
    await page.keyboard.press('Enter')
    await painted(page)
    expect(await page.getByRole('region', { name: 'Section through the head' }).count()).toBe(1)
  })

  it('F8 goes to the verdicts that are not met, and Tab to what cures them', async () => {
    const { page } = await open({ sample: 2 })
    await page.keyboard.press('F8')
    await painted(page)
    expect(await page.evaluate('document.activeElement.dataset.verdict')).toBe('not-met')
  })

  it('comma and point make the joint colder and hotter, but not in a text', async () => {
    const { page } = await open()
    const slider = page.getByRole('slider', { name: 'Joint at' })
    await page.locator('[data-area="section"]').focus()
    await page.keyboard.press(',')
    await page.keyboard.press(',')
    expect(await slider.inputValue()).toBe('-0.2')
    await page.keyboard.press('.')
    expect(await slider.inputValue()).toBe('-0.1')
    await page.getByRole('textbox', { name: 'Frame width', exact: true }).click()
    await page.keyboard.press('.')
    expect(await slider.inputValue()).toBe('-0.1')
  })

  it('a command is found by its name', async () => {
    const { page } = await open()
    await page.keyboard.press('Control+k')
    await page.keyboard.type('german')
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { name: 'Umlaufend' }).waitFor()
    expect(await page.evaluate('document.documentElement.lang')).toBe('de')
  })

  it.each([
    ['Cyrillic letters', { key: 'я', code: 'KeyZ' }],
    ['a German keyboard', { key: 'z', code: 'KeyY' }],
  ])('undo is found on %s', async (_, pressed) => {
    const { page } = await open()
    await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill('1300')
    await page.keyboard.press('Enter')
    await page.evaluate(
      `document.body.dispatchEvent(new KeyboardEvent('keydown', { ...${JSON.stringify(pressed)}, ctrlKey: true, bubbles: true, cancelable: true }))`,
    )
    expect(await valueOf(page, 'Frame width')).toBe('1230')
  })
})
