// node tests/bench/window-drag.mjs: main-thread work of a frame in which something is dragged, measured in the browser.
// CPU time of the page's main thread is counted, not the clock, so that a busy machine does not count as slow code.
import { chromium } from 'playwright-core'
import { ensureBuilt, windowFolder } from '../../app/start/build.mjs'
import { serve } from '../../app/start/serve.mjs'
import { calibration, cpuOf, flags, median } from './in-browser.mjs'

const [warmUp, runs] = [20, 100]

/** Work of one frame each: the pointer moves, the model, the board and the panels follow. */
const dragged = async (page, cdp, grip) => {
  const box = await page.locator(`[data-grip="${grip}"] .pill`).first().boundingBox()
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  const all = []
  const script = []
  for (let at = 0; at < warmUp + runs; at++) {
    const before = await cpuOf(cdp)
    await page.mouse.move(x - 20 + (at % 40) * 1.3, y + (at % 40) * 0.4)
    await page.evaluate('new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))')
    const after = await cpuOf(cdp)
    if (at < warmUp) continue
    all.push(after.TaskDuration - before.TaskDuration)
    script.push(after.ScriptDuration - before.ScriptDuration)
  }
  await page.mouse.up()
  return { all: median(all), script: median(script) }
}

await ensureBuilt()
const { server, address } = await serve({ folder: windowFolder, port: 0 })
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: flags })
const page = await browser.newPage({ viewport: { width: 1280, height: 720 } })
await page.goto(`${address}#right-jamb`)
await page.locator('[data-grip]').first().waitFor()
const loop = await calibration(page)
console.log(`calibration loop: ${loop.toFixed(2)} ms`)
const cdp = await page.context().newCDPSession(page)
await cdp.send('Performance.enable', { timeDomain: 'threadTicks' })
for (const grip of ['opening.position', 'joint.planned']) {
  const { all, script } = await dragged(page, cdp, grip)
  console.log(
    `drag frame, ${grip}: ${all.toFixed(1)} ms of the main thread (${(all / loop).toFixed(1)} loops), of it ${script.toFixed(1)} ms script (${(script / loop).toFixed(1)} loops); wanted 8 ms`,
  )
}
await browser.close()
server.close()
