// node tests/bench/window-drag.mjs: main-thread work of a frame in which something is dragged or panned, measured in the
// browser, in the window as it is and with three thousand marks on the board. The hand moves once in every frame, inside
// the page, and a frame is counted from its move to the next one: what the browser itself does to hear of a real pointer,
// about a quarter of a loop, is not in it. CPU time of the page's main thread is counted, not the clock, so that a busy
// machine does not count as slow code; but where frames take longer, the panels follow in more of them. Nothing here
// passes or fails.
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'
import { svelte } from '@sveltejs/vite-plugin-svelte'
import { build } from 'vite'
import { ensureBuilt, windowFolder } from '../../app/start/build.mjs'
import { serve } from '../../app/start/serve.mjs'

const root = fileURLToPath(new URL('../../', import.meta.url))
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
]
const [warmUp, runs] = [20, 240]

const at = (times, share) =>
  times.toSorted((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * share))]

/** The window with a board of three thousand marks. */
const buildTiled = async () => {
  const outDir = `${root}out/bench/tiled-window`
  process.env.NODE_ENV = 'production'
  await build({
    configFile: false,
    root: `${root}app/window`,
    base: './',
    logLevel: 'error',
    plugins: [
      {
        name: 'three thousand marks',
        enforce: 'pre',
        transform: (code, id) =>
          id.endsWith('board/draw-board.ts')
            ? `import { tiledSection } from '${root}tests/bench/tiled-section'\n${code.replace('= drawSection(', '= tiledSection(')}`
            : undefined,
      },
      svelte({ configFile: false }),
    ],
    build: { outDir, emptyOutDir: true, assetsInlineLimit: 0 },
  })
  return outDir
}

const cpuOf = async cdp =>
  Object.fromEntries((await cdp.send('Performance.getMetrics')).metrics.map(it => [it.name, it.value * 1000]))

const frame = 'new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))'

/** Work of one step each, of which the first ones do not count. */
const measured = async (cdp, count, step) => {
  const [all, script] = [[], []]
  for (let turn = 0; turn < warmUp + count; turn++) {
    const before = await cpuOf(cdp)
    await step(turn)
    const after = await cpuOf(cdp)
    if (turn < warmUp) continue
    all.push(after.TaskDuration - before.TaskDuration)
    script.push(after.ScriptDuration - before.ScriptDuration)
  }
  return { all, script }
}

/** A million square roots in the page itself: what times are compared with, in CPU time as they are. */
const calibration = async (page, cdp) => {
  const loop = `(() => {
    let sum = 0
    for (let n = 1; n <= 1_000_000; n++) sum += Math.sqrt(n) / (1 + (n % 7))
    return sum
  })()`
  const { all } = await measured(cdp, 40, () => page.evaluate(loop))
  return at(all, 0.5)
}

/** The hand moves once a frame through places of the page, and marks the moves in the trace. */
const movesOf = places => `new Promise(done => {
  const places = ${JSON.stringify(places)}
  const board = document.querySelector('.cv')
  const next = () => {
    const place = places.shift()
    if (place === undefined) return done()
    performance.mark('hand')
    const [clientX, clientY] = place
    board.dispatchEvent(new PointerEvent('pointermove', { clientX, clientY, pointerId: 1, bubbles: true }))
    requestAnimationFrame(next)
  }
  requestAnimationFrame(next)
})`

/** CPU time of the main thread for each frame of a hand that moves through some places, in ms; the first ones do not count. */
const perFrame = async (page, cdp, places) => {
  const events = []
  const collect = it => events.push(...it.value)
  cdp.on('Tracing.dataCollected', collect)
  await cdp.send('Tracing.start', { categories: 'toplevel,blink.user_timing', transferMode: 'ReportEvents' })
  await page.evaluate(movesOf(places))
  const ended = new Promise(done => cdp.once('Tracing.tracingComplete', done))
  await cdp.send('Tracing.end')
  await ended
  cdp.off('Tracing.dataCollected', collect)
  const hands = events.filter(it => it.name === 'hand').sort((a, b) => a.ts - b.ts)
  const [{ pid, tid }] = hands
  const tasks = events.filter(
    it => it.pid === pid && it.tid === tid && /RunTask/.test(it.name) && it.ph === 'X',
  )
  // a frame begins with the task in which the hand moves
  const begins = hands.map(({ ts }) => tasks.find(it => it.ts <= ts && ts <= it.ts + it.dur)?.ts ?? ts)
  const frames = begins.slice(warmUp, -1).map((from, at) => [from, begins[warmUp + at + 1]])
  return frames.map(([from, to]) =>
    tasks.filter(it => from <= it.ts && it.ts < to).reduce((sum, it) => sum + (it.tdur ?? 0) / 1000, 0),
  )
}

const placesFor = to => Array.from({ length: warmUp + runs + 1 }, (_, turn) => to(Math.abs((turn % 80) - 40)))

const dragged = async (page, cdp, grip) => {
  const box = await page.locator(`[data-grip="${grip}"] .pill`).first().boundingBox()
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  const all = await perFrame(
    page,
    cdp,
    placesFor(way => [x - 26 + way * 1.3, y - 26 + way * 1.3]),
  )
  await page.keyboard.press('Escape')
  await page.mouse.up()
  return { all }
}

const panned = async (page, cdp) => {
  const box = await page.locator('.cv').boundingBox()
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down({ button: 'middle' })
  const all = await perFrame(
    page,
    cdp,
    placesFor(way => [x - 75 + way * 4, y - 30 + way * 1.5]),
  )
  await page.mouse.up({ button: 'middle' })
  return { all }
}

/** All of the board painted again, as after a lost canvas. */
const repainted = (page, cdp) =>
  measured(cdp, 30, () =>
    page.evaluate(
      `document.querySelector('.cv .stage canvas').dispatchEvent(new Event('contextrestored')), ${frame}`,
    ),
  )

/** From a move of the pointer to the end of the frame that shows it, by the clock. */
const answered = async page => {
  const box = await page.locator('[data-grip="opening.position"] .pill').first().boundingBox()
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  const times = []
  for (let turn = 0; turn < 60; turn++)
    times.push(
      await page.evaluate(`new Promise(done => {
        const from = performance.now()
        document.querySelector('.cv').dispatchEvent(new PointerEvent('pointermove', { clientX: ${x - 20 + (turn % 30)}, clientY: ${y}, pointerId: 1, bubbles: true }))
        requestAnimationFrame(() => { const channel = new MessageChannel(); channel.port1.onmessage = () => done(performance.now() - from); channel.port2.postMessage(0) })
      })`),
    )
  await page.keyboard.press('Escape')
  await page.mouse.up()
  return times
}

const told = (name, { all, script }, { loop, wanted }) =>
  console.log(
    `${name}: ${at(all, 0.5).toFixed(1)} ms, slowest 5 % ${at(all, 0.95).toFixed(1)} ms (${(at(all, 0.5) / loop).toFixed(2)} and ${(at(all, 0.95) / loop).toFixed(2)} loops)${script ? `, of it ${at(script, 0.5).toFixed(1)} ms script` : ''}; wanted ${wanted}`,
  )

await ensureBuilt()
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: flags })
for (const [name, folder] of [
  ['the window as it is', windowFolder],
  ['3,000 marks', await buildTiled()],
]) {
  const { server, address } = await serve({ folder, port: 0 })
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 } })
  page.on('pageerror', error => console.error(error.message))
  await page.goto(`${address}#right-jamb`)
  await page.locator('[data-grip]').first().waitFor()
  const cdp = await page.context().newCDPSession(page)
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' })
  const loop = await calibration(page, cdp)
  console.log(`\n${name}; calibration loop ${loop.toFixed(2)} ms`)
  const wanted = '8 ms, slowest 5 % 16 ms'
  for (const grip of ['opening.position', 'joint.planned'])
    told(`drag of ${grip}`, await dragged(page, cdp, grip), { loop, wanted })
  told('pan', await panned(page, cdp), { loop, wanted })
  told('the whole painted again', await repainted(page, cdp), { loop, wanted: '50 ms' })
  told(
    'from the pointer to the picture, by the clock',
    { all: await answered(page) },
    { loop, wanted: '50 ms' },
  )
  await page.close()
  server.close()
}
await browser.close()
