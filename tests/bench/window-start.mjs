// node tests/bench/window-start.mjs: how long the built window takes to its first useful paint, and to open the largest
// sample. The clock is given for what a user waits, and the main thread's CPU time, which a busy machine does not change.
import { readdir, readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'
import { ensureBuilt, windowFolder } from '../../app/start/build.mjs'
import { serve } from '../../app/start/serve.mjs'
import { calibration, cpuOf, flags, median } from './in-browser.mjs'

const runs = 7

const samples = fileURLToPath(new URL('../../assets/samples', import.meta.url))
const texts = await Promise.all(
  (await readdir(samples)).map(async name => [name, await readFile(`${samples}/${name}`, 'utf8')]),
)
const [largest, text] = texts.toSorted((a, b) => b[1].length - a[1].length)[0]

/** From the beginning of the navigation to the frame in which something can be begun or worked on. */
const firstPaint = async (browser, address, what) => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 720 } })
  const page = await context.newPage()
  const cdp = await context.newCDPSession(page)
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' })
  await page.addInitScript(`
    const look = () => {
      if (!document.querySelector('${what}')) return requestAnimationFrame(look)
      requestAnimationFrame(() => setTimeout(() => (window.paintedAt_ms = performance.now())))
    }
    requestAnimationFrame(look)
  `)
  await page.goto(address)
  await page.waitForFunction('window.paintedAt_ms !== undefined')
  const clock = await page.evaluate('window.paintedAt_ms')
  const cpu = (await cpuOf(cdp)).TaskDuration
  return { page, context, cdp, clock, cpu }
}

/** Drops the file on the window as a user would, until its joint is painted. */
const opened = async ({ page, cdp }) => {
  const before = (await cpuOf(cdp)).TaskDuration
  const clock = await page.evaluate(`(async () => {
    const what = new DataTransfer()
    what.items.add(new File([${JSON.stringify(text)}], 'largest.jamb'))
    const from = performance.now()
    document.querySelector('main').dispatchEvent(new DragEvent('drop', { dataTransfer: what, bubbles: true, cancelable: true }))
    await new Promise(done => {
      const look = () => (document.querySelector('[data-grip]') ? requestAnimationFrame(() => setTimeout(done)) : requestAnimationFrame(look))
      look()
    })
    return performance.now() - from
  })()`)
  return { clock, cpu: (await cpuOf(cdp)).TaskDuration - before }
}

const said = (name, times, wanted, loop) => {
  const [clock, cpu] = [median(times.map(it => it.clock)), median(times.map(it => it.cpu))]
  console.log(
    `${name}: ${clock.toFixed(0)} ms by the clock (${(clock / loop).toFixed(0)} loops), ${cpu.toFixed(0)} ms of the main thread (${(cpu / loop).toFixed(0)} loops); wanted ${wanted} ms`,
  )
}

await ensureBuilt()
const { server, address } = await serve({ folder: windowFolder, port: 0 })
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: flags })
const starts = []
const joints = []
const openings = []
let loop = 0
for (let at = 0; at < runs; at++) {
  const start = await firstPaint(browser, address, '.walls button svg')
  starts.push(start)
  openings.push(await opened(start))
  if (at === 0) loop = await calibration(start.page)
  await start.context.close()
  const joint = await firstPaint(browser, `${address}#right-jamb`, '[data-grip]')
  joints.push(joint)
  await joint.context.close()
}
console.log(`calibration loop: ${loop.toFixed(2)} ms`)
said('first useful paint, the start', starts, 800, loop)
said('first useful paint, a joint', joints, 800, loop)
said(`opening ${largest}, ${(text.length / 1024).toFixed(0)} kB`, openings, 300, loop)
await browser.close()
server.close()
