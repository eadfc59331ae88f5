import { describe, expect, it } from 'vitest'
import { gripAt, numberIn, painted, valueOf, withWindow } from './window'

const open = withWindow()

/** The faces that can be dragged here, with the part to select first and how the hand goes. */
const faces = [
  { grip: 'opening.position', part: 'Frame', field: 'From bearing layer', by: [-31, 4] },
  { grip: 'joint.planned', part: 'Frame', field: 'Joint, this side', by: [3, 9] },
  { grip: 'layer.thickness', part: 'Mineral wool', field: 'Thickness', by: [-24, 0] },
] as const

describe('a drag', () => {
  it.each(faces)(
    'of $grip shows in size, card and field at once, and is one step of undo',
    async ({ grip, part, field, by }) => {
      const { page, faults } = await open()
      await page.getByRole('option', { name: new RegExp(`^\\d+ ${part} \\d`) }).click()
      const start = await valueOf(page, field)
      const [x, y] = await gripAt(page, grip)
      await page.mouse.move(x, y)
      await page.mouse.down()
      for (let step = 1; step <= 60; step++)
        await page.mouse.move(x + (by[0] * step) / 60, y + (by[1] * step) / 60)
      await painted(page)

      const card = numberIn(/^[−\d.]+/.exec(await page.getByTestId('measure-card').innerText())?.[0] ?? '')
      const size = numberIn((await page.locator('.dims.live text').first().textContent()) ?? '')
      const live = await valueOf(page, field)
      const inField = field.startsWith('Joint') ? middleOf(live) : numberIn(live)
      expect(size).toBe(card)
      expect(Math.abs(inField - card)).toBeLessThanOrEqual(0.1)
      expect(live).not.toBe(start)
      expect(await page.locator('.dims.live text').count()).toBeGreaterThanOrEqual(2)
      expect(await page.locator('.ghost').count()).toBe(1)

      await page.mouse.up()
      await painted(page)
      expect(await page.getByTestId('measure-card').count()).toBe(0)
      const settled = await valueOf(page, field)
      expect(
        Math.abs((field.startsWith('Joint') ? middleOf(settled) : numberIn(settled)) - card),
      ).toBeLessThanOrEqual(0.1)
      await page.keyboard.press('Control+z')
      expect(await valueOf(page, field)).toBe(start)
      expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true)
      expect(faults).toEqual([])
    },
  )

  it('is judged by the time the hand rests, before it lets go', async () => {
    const { page } = await open()
    // Rows keep their places while something moves, so what they say is compared in the order of letters.
    const judged = async () =>
      (
        await page
          .locator('[data-area="verdicts"] .top[data-verdict="not-met"], [data-area="all-round"] .tag')
          .allTextContents()
      ).toSorted()
    const before = await judged()
    const [x, y] = await gripAt(page, 'joint.planned')
    await page.mouse.move(x, y)
    await page.mouse.down()
    for (let step = 1; step <= 12; step++) await page.mouse.move(x, y - step * 3)
    await painted(page)
    const held = await judged()
    await page.mouse.up()
    await painted(page)
    expect(held).toEqual(await judged())
    expect(held).not.toEqual(before)
  })

  it('is shown the same by every panel, while the hand rests and after it lets go', async () => {
    const { page } = await open()
    const widths = async () => [
      await valueOf(page, 'Joint, this side'),
      await page.locator('.parts .row.joint .v').innerText(),
      await page.locator('.tag.on .mm').textContent(),
    ]
    const said = async () => (await widths()).map(it => (it ?? '').split(/\D*(?: to |–)/).map(numberIn))
    const before = await said()
    const [x, y] = await gripAt(page, 'joint.planned')
    await page.mouse.move(x, y)
    await page.mouse.down()
    for (let step = 1; step <= 12; step++) await page.mouse.move(x, y - step * 3)
    await painted(page)
    const held = await said()
    await page.mouse.up()
    await painted(page)
    const after = await said()
    for (const it of [held, after]) {
      expect(it[1]).toEqual(it[2])
      expect(Math.abs((it[0]?.[0] ?? 0) - (it[1]?.[0] ?? 0))).toBeLessThanOrEqual(0.5)
    }
    expect(held.slice(1)).toEqual(after.slice(1))
    expect(held).not.toEqual(before)
  })

  it('goes back to where it began with Esc', async () => {
    const { page } = await open()
    const start = await valueOf(page, 'From bearing layer')
    const [x, y] = await gripAt(page, 'opening.position')
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x - 20, y)
    await painted(page)
    await page.keyboard.press('Escape')
    await page.mouse.up()
    expect(await valueOf(page, 'From bearing layer')).toBe(start)
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true)
  })

  it('is taken over by a typed number', async () => {
    const { page } = await open()
    const [x, y] = await gripAt(page, 'opening.position')
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x - 20, y)
    await page.keyboard.type('22,5')
    await page.keyboard.press('Enter')
    await page.mouse.up()
    expect(await valueOf(page, 'From bearing layer')).toBe('22.5')
  })

  it('is caught by a face of the wall, and not while Ctrl is held', async () => {
    const { page } = await open()
    const [x, y] = await gripAt(page, 'opening.position')
    const mm = await pixelsOfMillimetre(page)
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x - 15 * mm + 3, y)
    await painted(page)
    expect(await valueOf(page, 'From bearing layer')).toBe('0.0')
    expect(await page.locator('svg.over [data-snap]').getAttribute('data-snap')).toMatch(/corner|face/)
    await page.keyboard.down('Control')
    await page.mouse.move(x - 15 * mm + 3.5, y)
    await painted(page)
    expect(numberIn(await valueOf(page, 'From bearing layer'))).toBeGreaterThan(0.5)
    expect(await page.locator('svg.over [data-snap]').count()).toBe(0)
    await page.mouse.up()
    await page.keyboard.up('Control')
  })

  it('of the body of the frame moves the frame', async () => {
    const { page } = await open()
    const [x, y] = await gripAt(page, 'opening.position')
    await page.mouse.move(x + 25, y - 25)
    await page.mouse.down()
    await page.mouse.move(x + 55, y - 25, { steps: 5 })
    await painted(page)
    await page.mouse.up()
    expect(numberIn(await valueOf(page, 'From bearing layer'))).toBeGreaterThan(20)
  })
})

const middleOf = (range: string): number => {
  const [a = '', b = ''] = range.split(/ to |–/)
  return (numberIn(a) + numberIn(b)) / 2
}

/** Screen pixels of a millimetre, from the size of the cover, which is 30 mm here. */
const pixelsOfMillimetre = async (page: Awaited<ReturnType<typeof open>>['page']): Promise<number> => {
  const words = await page.locator('.scale').innerText()
  return 96 / 25.4 / numberIn(/([\d.]+) on/.exec(words)?.[1] ?? '1')
}
