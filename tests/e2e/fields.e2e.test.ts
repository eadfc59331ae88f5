import { describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { fieldsOfPart, isSame, missingOf } from '../../app/window/fields/fields-of-part'
import { isAbout } from '../../app/window/parts/rows'
import { beginWith, frameOf, starters, zonesOf } from '../../core/detail'
import { check } from '../../core/rules'
import { chooseWord, rowOf, unfold } from './journey'
import { painted, soon, valueOf, withWindow } from './window'

const open = withWindow()
const joint = 'Joint, this side'

/** What stands below a field, with plain spaces. */
const hint = async (page: Page, at: string): Promise<string> =>
  (await page.locator(at).innerText()).replaceAll('\u00a0', ' ')

describe('a range field', () => {
  it.each([
    ['12,5', '9.5–15.5', '12,5 read as 12.5 mm'],
    ['10..15', '10 to 15', '10..15 read as 10–15 mm'],
    ['10-15', '10 to 15', '10-15 read as 10–15 mm'],
    ['12 -2/+3', '10 to 15', '12 -2/+3 read as 10–15 mm'],
    ['15 to 10', '10 to 15', 'swapped'],
  ])('takes %s as %s and says how it was read', async (typed, shown, echo) => {
    const { page } = await open()
    const field = page.getByRole('textbox', { name: joint, exact: true })
    await field.fill(typed)
    expect(await hint(page, '#hint-joint')).toContain(echo)
    await field.press('Enter')
    expect(await hint(page, '#hint-joint')).toContain(echo)
    expect(await valueOf(page, joint)).toBe(shown)
    await page.keyboard.press('Control+z')
    expect(await valueOf(page, joint)).toBe('11 to 17')
  })
})

describe('a group that is folded away', () => {
  it('says how many of its values verdicts wait for, and no more once they are stated', async () => {
    const plan = starters.find(it => it.id === 'clad-concrete')
    if (plan === undefined) throw new Error('no such wall')
    const project = beginWith(plan, 'DE')
    const place = zonesOf(project).find(it => it.side === 'left')
    if (place === undefined) throw new Error('no left jamb')
    const missing = missingOf(check(project).findings.filter(it => isAbout(it, place)))
    const { groups } = fieldsOfPart(project, place, [], frameOf(project, place.opening).id)
    const waiting = new Map(
      groups.map(it => [it.id, it.rows.filter(row => missing.some(one => isSame(one, row.at))).length]),
    )
    const asked = waiting.get('work') ?? 0
    expect(asked).toBeGreaterThan(1)

    const { page } = await open({ atStart: true })
    await page.locator('.walls button', { hasText: 'Concrete with ventilated cladding' }).click()
    await page.locator('[data-grip]').first().waitFor()
    await rowOf(page, /Frame \d/).click()
    const said = async (id: string): Promise<number> => {
      const waits = page.locator(`[aria-controls="group-${id}"] .waits span`).first()
      return (await waits.count()) === 0 ? 0 : parseInt(await waits.innerText(), 10)
    }
    for (const [id, count] of waiting) if (id !== 'main') expect(await said(id), id).toBe(count)
    await unfold(page, 'work')
    await chooseWord(page, 'opening.corners', 'Closed')
    await soon(async () => expect(await said('work')).toBe(asked - 1))
    await page.keyboard.press('Control+z')
    await soon(async () => expect(await said('work')).toBe(asked))
  })
})

describe('a field', () => {
  it('reckons sums and units', async () => {
    const { page } = await open()
    const field = page.getByRole('textbox', { name: 'Frame width', exact: true })
    await field.fill('1200+2*15')
    expect(await hint(page, '[id^="hint-opening.width"]')).toContain('1230 mm')
    await field.press('Enter')
    expect(await valueOf(page, 'Frame width')).toBe('1230')
  })

  it('keeps the old value and the typed text where no geometry exists, and says the range', async () => {
    const { page } = await open()
    const field = page.getByRole('textbox', { name: 'From bearing layer', exact: true })
    await field.fill('4000')
    await field.press('Enter')
    expect(await field.inputValue()).toBe('4000')
    expect(await field.getAttribute('aria-invalid')).toBe('true')
    expect(await hint(page, '[id^="hint-opening.position"]')).toMatch(/Kept 15\./)
    await field.press('Escape')
    expect(await field.inputValue()).toBe('15')
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true)
  })

  it('asks before it takes a number that may have been meant with thousands', async () => {
    const { page } = await open()
    const field = page.getByRole('textbox', { name: 'Frame height', exact: true })
    await field.fill('1.480')
    expect(await hint(page, '[id^="hint-opening.height"]')).toMatch(/1\.48 mm/)
    await field.press('Escape')
    expect(await field.inputValue()).toBe('1480')
  })

  it('keeps its own undo while its text is not taken', async () => {
    const { page } = await open()
    await page.getByRole('textbox', { name: 'Frame width', exact: true }).fill('1300')
    await page.keyboard.press('Enter')
    const field = page.getByRole('textbox', { name: 'Frame height', exact: true })
    await field.click()
    await page.keyboard.type('99')
    await page.keyboard.press('Control+z')
    await painted(page)
    expect(await valueOf(page, 'Frame width')).toBe('1300')
  })

  it('turns a guess into a specified value on request', async () => {
    const { page } = await open()
    const chip = page.getByRole('button', { name: 'Basis: assumed' }).first()
    await chip.click()
    await page.getByRole('menuitem', { name: 'Confirm the assumed value' }).click()
    expect(await page.getByRole('button', { name: 'Basis: assumed' }).count()).toBe(0)
    await page.keyboard.press('Control+z')
    expect(await page.getByRole('button', { name: 'Basis: assumed' }).count()).toBe(1)
  })

  it('of a layer is typed in the build-up too', async () => {
    const { page } = await open()
    await page.getByRole('button', { name: 'Mineral wool, 140 mm' }).click()
    await page.keyboard.type('160')
    await page.keyboard.press('Enter')
    expect(await page.getByRole('button', { name: 'Mineral wool, 160 mm' }).count()).toBe(1)
    expect(await valueOf(page, 'Thickness')).toBe('160')
  })
})
