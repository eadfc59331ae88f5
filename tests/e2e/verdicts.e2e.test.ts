import { expect, it } from 'vitest'
import { painted, withWindow } from './window'

const open = withWindow()

const brokenCount = async (page: Awaited<ReturnType<typeof open>>['page']): Promise<number> => {
  const count = page.locator('.count.not-met b')
  return (await count.count()) === 0 ? 0 : Number(await count.innerText())
}

it('the worst verdict of a wrong detail is open with its proof', async () => {
  const { page } = await open({ sample: 2 })
  const row = page.locator('.vr.open')
  await row.waitFor()
  expect(await row.getAttribute('class')).toContain('not-met')
  expect(await row.innerText()).toMatch(/Why:[\s\S]*Source/)
  expect(await row.locator('.trio, .there').count()).toBe(1)
})

it('every change that is offered cures its verdict in one click and one undo', async () => {
  const { page, faults } = await open({ sample: 2 })
  const before = await brokenCount(page)
  expect(before).toBeGreaterThan(0)
  const rows = page.locator('.vr.not-met .top')
  let tried = 0
  for (let at = 0; at < before; at++) {
    const top = rows.nth(at)
    if ((await top.getAttribute('aria-expanded')) === 'false') await top.click()
    const key = await top.getAttribute('id')
    const buttons = page.locator('.vr.open .rem .btn')
    if ((await buttons.count()) === 0) continue
    await buttons.first().click()
    await painted(page)
    tried++
    expect(await page.locator(`#${key}[data-verdict="not-met"]`).count()).toBe(0)
    expect(await brokenCount(page)).toBeLessThan(before)
    await page.keyboard.press('Control+z')
    await painted(page)
    expect(await brokenCount(page)).toBe(before)
  }
  expect(tried).toBeGreaterThan(0)
  expect(faults).toEqual([])
})

it('a verdict that changes is said aloud once the change has settled', async () => {
  const { page } = await open({ sample: 2 })
  const before = await brokenCount(page)
  const top = page.locator('.vr.not-met .top')
  for (let at = 0; at < before && (await page.locator('.vr.open .rem .btn').count()) === 0; at++)
    await top.nth(at).click()
  await page.locator('.vr.open .rem .btn').first().click()
  await painted(page)
  expect(await page.getByTestId('polite').innerText()).toMatch(new RegExp(`not met, was ${before}`))
})

it('an empty plane is filled from its cell', async () => {
  const { page } = await open({ sample: 1 })
  await page.getByRole('button', { name: 'Fill the inner plane' }).click()
  await page.getByRole('menuitem').first().click()
  await painted(page)
  expect(await page.getByRole('button', { name: 'Fill the inner plane' }).count()).toBe(0)
  await page.keyboard.press('Control+z')
  expect(await page.getByRole('button', { name: 'Fill the inner plane' }).count()).toBe(1)
})

it('the counts filter the list', async () => {
  const { page } = await open({ sample: 2 })
  const count = page.locator('.count.met')
  const met = Number(await count.locator('b').innerText())
  await count.click()
  expect(await page.locator('.vr').count()).toBe(met)
  expect(await page.locator('.vr.not-met').count()).toBe(0)
})

it('another practice changes the verdicts and is one undo', async () => {
  const { page } = await open({ sample: 2 })
  // What is worked out of heat comes a moment later: only what is judged at once is compared.
  const text = async () => {
    const all = await page
      .locator('.vr .top')
      .evaluateAll(tops => tops.map(it => `${it.id} ${it.getAttribute('data-verdict')} ${it.textContent}`))
    return all
      .filter(it => !/surface-criterion|dries|condensate/.test(it))
      .toSorted()
      .join('\n')
  }
  const before = await text()
  await page.getByRole('button', { name: /^Practice/ }).click()
  await page.getByRole('menuitem', { name: /^UK/ }).click()
  await painted(page)
  expect(await text()).not.toBe(before)
  await page.keyboard.press('Control+z')
  await painted(page)
  expect(await text()).toBe(before)
})
