import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { gripAt, painted, valueOf, withWindow } from './window'

const open = withWindow()

/**
 * The model point under a place of the screen, from two faces whose places in the model are known in the first sample:
 * the outer face of the frame at 15 mm in depth, its flank at 14 mm across and 15 + 39 mm in depth.
 */
const modelPoint = async (
  page: Page,
  [px, py]: readonly [number, number],
): Promise<readonly [number, number]> => {
  const face = await gripAt(page, 'opening.position')
  const flank = await gripAt(page, 'joint.planned')
  const mm = (flank[0] - face[0]) / 39
  return [14 + (py - flank[1]) / mm, 15 + (px - face[0]) / mm]
}

describe('the wheel', () => {
  it.each([-240, -120, 120, 360])('by %i keeps the point under the pointer', async turn => {
    const { page } = await open()
    const at = [620, 300] as const
    const before = await modelPoint(page, at)
    await page.mouse.move(...at)
    await page.mouse.wheel(0, turn)
    await painted(page)
    const after = await modelPoint(page, at)
    expect(Math.hypot(after[0] - before[0], after[1] - before[1])).toBeLessThan(0.01)
    expect(await page.locator('.scale').innerText()).not.toContain('2.3')
  })
})

describe('the board', () => {
  it('pans with the middle button and shows the whole again', async () => {
    const { page } = await open()
    const before = await gripAt(page, 'opening.position')
    await page.mouse.move(500, 300)
    await page.mouse.down({ button: 'middle' })
    await page.mouse.move(460, 330, { steps: 4 })
    await page.mouse.up({ button: 'middle' })
    await painted(page)
    const after = await gripAt(page, 'opening.position')
    expect(after[0] - before[0]).toBeCloseTo(-40, 0)
    expect(after[1] - before[1]).toBeCloseTo(30, 0)
    await page.keyboard.press('Control+0')
    await painted(page)
    expect(await gripAt(page, 'opening.position')).toEqual(before)
  })

  it('selects the part that is clicked, everywhere', async () => {
    const { page } = await open()
    const face = await gripAt(page, 'opening.position')
    await page.mouse.click(face[0] - 120, face[1] - 100)
    await painted(page)
    expect(await page.locator('[role="option"][aria-selected="true"]').innerText()).toContain('Mineral wool')
    expect(await page.locator('#fields-title').innerText()).toBe('Mineral wool')
  })

  it('is as large as its place, never as the drawing, and sharp at any pixel ratio', async () => {
    const { page } = await open()
    const cdp = await page.context().newCDPSession(page)
    for (const ratio of [1, 2, 1.25, 4]) {
      await cdp.send('Emulation.setDeviceMetricsOverride', {
        width: 1280,
        height: 720,
        deviceScaleFactor: ratio,
        mobile: false,
      })
      await page.mouse.move(400 + ratio, 300)
      await painted(page)
      const [canvas, shown] = await page.evaluate<[number, number]>(
        `(() => { const it = document.querySelector('.cv canvas'); return [it.width, it.getBoundingClientRect().width] })()`,
      )
      expect(shown).toBeLessThanOrEqual(1280)
      expect(Math.abs(canvas - shown * Math.min(3, ratio))).toBeLessThanOrEqual(1)
      const face = await gripAt(page, 'opening.position')
      await page.mouse.click(face[0] + 30, face[1] - 20)
      expect(await page.locator('[role="option"][aria-selected="true"]').innerText()).toContain('Frame')
    }
  })

  it('goes from a size to its field with a double click', async () => {
    const { page } = await open()
    await page.locator('text[data-size="reveal.cover"]').dblclick()
    await page.keyboard.type('25')
    await page.keyboard.press('Enter')
    expect(await valueOf(page, 'Cover of the frame')).toBe('25')
    expect(await page.locator('text[data-size="reveal.cover"]').textContent()).toBe('25')
  })

  it('opens and closes the joint between cold and hot', async () => {
    const { page } = await open()
    const slider = page.getByRole('slider', { name: 'Joint at' })
    const now = () => page.locator('.js svg text').last().textContent()
    expect(await now()).toBe('14 now')
    await slider.fill('-1')
    expect(await now()).toBe('17.3 now')
    await slider.fill('1')
    expect(await now()).toBe('10.7 now')
    expect(await valueOf(page, 'Joint, this side')).toBe('11 to 17')
  })

  it('cuts another side when a stretch is picked, with outside still at the left', async () => {
    const { page } = await open()
    await page.locator('#stretch-outer-sill').click()
    await painted(page)
    expect(await page.getByRole('region', { name: 'Section through the sill' }).count()).toBe(1)
    const face = await gripAt(page, 'joint.planned')
    await page.locator('#stretch-outer-head').click()
    await painted(page)
    expect(Math.abs((await gripAt(page, 'joint.planned'))[0] - face[0])).toBeLessThan(1)
  })
})
