// node tests/bench/window-heat.mjs: the frame of a sample is dragged with heat shown. What the worker takes for an answer
// with its lines and numbers, by its own clock, and what a frame takes of the page's main thread, as CPU time.
import { chromium } from 'playwright-core'
import { ensureBuilt, windowFolder } from '../../app/start/build.mjs'
import { serve } from '../../app/start/serve.mjs'
import { calibration, cpuOf, flags } from './in-browser.mjs'

/** The sample whose jamb has the most triangles. */
const sample = process.argv[2] ?? 'unheld-head'
const [warmUp, runs] = [60, 200]

const at = (times, share) => times.toSorted((a, b) => a - b)[Math.floor(share * times.length)] ?? NaN

await ensureBuilt()
const { server, address, at: place } = await serve({ folder: windowFolder, port: 0 })
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: flags })
const page = await browser.newPage({ viewport: { width: 1280, height: 720 } })
// Every answer of a worker passes here: its time and how it was reached are noted.
await page.addInitScript(`
  window.answers = []
  const Real = Worker
  window.Worker = class extends Real {
    constructor(...of) {
      super(...of)
      this.addEventListener('message', it => {
        if (it.data?.kind === 'picture') window.answers.push([it.data.spent_ms, it.data.how])
      })
    }
  }
`)
await page.goto(address)
await page.goto(`${place}/#${sample}`)
await page.reload()
await page.locator('[data-grip]').first().waitFor()
const loop = await calibration(page)
console.log(`calibration loop: ${loop.toFixed(2)} ms`)
const cdp = await page.context().newCDPSession(page)
await cdp.send('Performance.enable', { timeDomain: 'threadTicks' })

for (const grip of ['opening.position', 'joint.planned', 'reveal.cover']) {
  for (const isShown of [false, true]) {
    const box = page.locator('[data-heat="lines"]')
    if ((await box.count()) > 0 !== isShown) await page.keyboard.press('Alt+Digit3')
    const pill = page.locator(`[data-grip="${grip}"] .pill`).first()
    if ((await pill.count()) === 0) continue
    const { x, y, width, height } = await pill.boundingBox()
    const [px, py] = [x + width / 2, y + height / 2]
    await page.mouse.move(px, py)
    await page.mouse.down()
    const frames = []
    for (let n = 0; n < warmUp + runs; n++) {
      if (n === warmUp) await page.evaluate('window.answers.length = 0')
      const before = await cpuOf(cdp)
      const swing = 12 * Math.sin(n / 9)
      await page.mouse.move(px + swing, py + swing)
      await page.evaluate('new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))')
      if (n >= warmUp) frames.push((await cpuOf(cdp)).TaskDuration - before.TaskDuration)
    }
    await page.mouse.up()
    const frame = `main thread ${at(frames, 0.5).toFixed(1)} ms a frame (${(at(frames, 0.5) / loop).toFixed(1)} loops), 95 % ${at(frames, 0.95).toFixed(1)} ms; wanted 16 ms`
    if (!isShown) {
      console.log(`${grip}, heat not shown: ${frame}`)
      continue
    }
    const answers = await page.evaluate('window.answers')
    const times = answers.map(([ms]) => ms)
    const followed = answers.filter(([, how]) => how === 'followed').length
    console.log(
      `${grip}, heat shown: ${frame}; worker ${at(times, 0.5).toFixed(1)} ms (${(at(times, 0.5) / loop).toFixed(1)} loops), 95 % ${at(times, 0.95).toFixed(1)} ms; wanted 8 and 16 ms; ${times.length} answers, ${followed} followed`,
    )
  }
}
await browser.close()
server.close()
