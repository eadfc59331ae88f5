import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { gripAt, painted, withWindow } from './window'

const open = withWindow()

type Compared = { readonly seen: number; readonly off: number }

/**
 * How many pixels of the board have ink, and how many differ from a canvas that is painted from nothing. Where a pan
 * joins what slid with what came in, a pixel on the seam may be shaded a little otherwise.
 */
const againstWhole = (page: Page): Promise<Compared> =>
  page.evaluate(`(() => {
    const canvas = document.querySelector('.cv .stage canvas')
    const pixels = () => {
      // the canvas goes beyond the board and lies otherwise once it is painted anew
      const [board, all] = [document.querySelector('.cv'), canvas].map(it => it.getBoundingClientRect())
      const ratio = canvas.width / all.width
      const [x, y] = [board.left - all.left, board.top - all.top].map(it => Math.round(it * ratio))
      const [width, height] = [board.width, board.height].map(it => Math.floor(it * ratio))
      return canvas.getContext('2d').getImageData(x, y, width, height).data
    }
    const now = pixels().slice()
    canvas.dispatchEvent(new Event('contextrestored'))
    const whole = pixels()
    let [seen, off] = [0, 0]
    for (let at = 0; at < now.length; at += 4) {
      if (now[at + 3] > 0) seen++
      if ([0, 1, 2, 3].some(it => Math.abs(now[at + it] - whole[at + it]) > 8)) off++
    }
    return { seen, off }
  })()`)

/** Pixels with ink in the outermost columns of the board. */
const inkAtEdges = (page: Page): Promise<readonly number[]> =>
  page.evaluate(`(() => {
    const { width, height } = document.querySelector('.cv .stage canvas')
    const context = document.querySelector('.cv .stage canvas').getContext('2d')
    const inked = x => context.getImageData(x, 0, 4, height).data.filter((it, at) => at % 4 === 3 && it > 0).length
    return [inked(0), inked(width - 4)]
  })()`)

describe('the board', () => {
  it.each(['opening.position', 'joint.planned'])(
    'looks in the middle of a drag of %s as if it were painted anew',
    async grip => {
      const { page, faults } = await open()
      await page.keyboard.press('Alt+2')
      const [x, y] = await gripAt(page, grip)
      await page.mouse.move(x, y)
      await page.mouse.down()
      // far at first, then a little in each frame, as where what stands still is no longer painted
      for (const way of [1, 2, 3, 4, 4.1, 4.3, 4.4, 4.6, 4.7]) {
        await page.mouse.move(x - 10 * way, y + 4 * way)
        await painted(page)
      }
      const { seen, off } = await againstWhole(page)
      expect(seen).toBeGreaterThan(50_000)
      expect(off).toBe(0)
      await page.mouse.up()
      await painted(page)
      expect((await againstWhole(page)).off).toBe(0)
      expect(faults).toEqual([])
    },
  )

  it('shows no bare paper while it is panned, and nothing twice', async () => {
    const { page } = await open()
    const from = (await gripAt(page, 'opening.position')).map(it => it - 30) as [number, number]
    const before = await inkAtEdges(page)
    await page.mouse.move(...from)
    await page.mouse.down({ button: 'middle' })
    for (const [dx, dy] of [[-40, 0], [-140, 20], [-320, 35], [180, -30], [420, -90]] as const) {
      await page.mouse.move(from[0] + dx, from[1] + dy)
      await painted(page)
      const { seen, off } = await againstWhole(page)
      expect(seen, `${dx}`).toBeGreaterThan(20_000)
      expect(off, `${dx}`).toBeLessThan(40)
    } // prettier-ignore
    await page.mouse.up({ button: 'middle' })
    await page.keyboard.press('Control+0')
    await painted(page)
    expect(await inkAtEdges(page)).toEqual(before)
  })

  it('shows what has moved beyond its edge once that is panned in', async () => {
    const { page } = await open()
    await page.getByRole('checkbox', { name: 'Numbers' }).uncheck()
    const [x, y] = await gripAt(page, 'opening.position')
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x - 30, y)
    await painted(page)
    await page.mouse.up()
    await painted(page)
    await page.mouse.move(x, y - 30)
    await page.mouse.down({ button: 'middle' })
    await page.mouse.move(x, y - 80)
    await painted(page)
    expect((await againstWhole(page)).off).toBe(0)
    await page.mouse.up({ button: 'middle' })
  })

  it('is not painted again by a short pan: the canvas moves', async () => {
    const { page } = await open()
    const now = () =>
      page.evaluate<readonly [string, number]>(`(() => {
        const canvas = document.querySelector('.cv .stage canvas')
        return [canvas.toDataURL(), canvas.getBoundingClientRect().left]
      })()`)
    const [ink, left] = await now()
    const [x, y] = (await gripAt(page, 'opening.position')).map(it => it - 30) as [number, number]
    await page.mouse.move(x, y)
    await page.mouse.down({ button: 'middle' })
    await page.mouse.move(x - 25, y + 9.4)
    await painted(page)
    expect(await now()).toEqual([ink, left - 25])
    await page.mouse.up({ button: 'middle' })
  })

  it('is painted again when the screen took its canvas away and gave it back', async () => {
    const { page } = await open()
    const [seen, lost, back] = await page.evaluate<[number, number, number]>(`(() => {
      const canvas = document.querySelector('.cv .stage canvas')
      const context = canvas.getContext('2d')
      const inked = () => context.getImageData(0, 0, canvas.width, canvas.height).data.filter((it, at) => at % 4 === 3 && it > 0).length
      const seen = inked()
      canvas.dispatchEvent(new Event('contextlost'))
      context.reset()
      const lost = inked()
      canvas.dispatchEvent(new Event('contextrestored'))
      return [seen, lost, inked()]
    })()`)
    expect(lost).toBe(0)
    expect(back).toBe(seen)
  })

  it('is painted in the frame in which the pointer moved', async () => {
    const { page } = await open()
    const [x, y] = await gripAt(page, 'opening.position')
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x - 10, y)
    await painted(page)
    // What stands on the canvas and over it is compared at the end of one frame: first the outline, then the ink.
    const moved = await page.evaluate<readonly boolean[]>(`new Promise(done => {
      const canvas = document.querySelector('.cv .stage canvas')
      const ink = () => canvas.toDataURL()
      const outline = () => document.querySelector('.cv .selected').getAttribute('d')
      const [inkBefore, outlineBefore] = [ink(), outline()]
      const box = document.querySelector('.cv')
      box.dispatchEvent(new PointerEvent('pointermove', { clientX: ${x - 60}, clientY: ${y}, pointerId: 1, bubbles: true }))
      requestAnimationFrame(() => queueMicrotask(() => queueMicrotask(() => setTimeout(() =>
        done([outline() !== outlineBefore, ink() !== inkBefore])))))
    })`)
    expect(moved).toEqual([true, true])
    await page.mouse.up()
  })
})
