// node tests/bench/heat-browser.mjs: the heat solver in a worker of the browser (Debian's chromium).
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { chromium } from 'playwright-core'

const root = fileURLToPath(new URL('../../', import.meta.url))
process.chdir(root)
const { outputFiles } = await build({
  absWorkingDir: root,
  entryPoints: ['tests/bench/heat-worker.ts'],
  bundle: true,
  platform: 'browser',
  format: 'iife',
  target: 'es2023',
  write: false,
})
const { section } = JSON.parse(readFileSync('tests/reference/cases/heat/jamb.json', 'utf8'))
const jamb = {
  name: section.name,
  bodies: section.polygons.map(it => ({
    name: it.name,
    outline: it.outer,
    holes: it.holes ?? [],
    lambda_W_mK: it.lambda,
  })),
  surfaces: section.boundaries.map(it => ({
    name: it.name,
    h_W_m2K: it.h,
    air_C: it.T,
    edges: it.edges.map(([ax, ay, bx, by]) => [
      [ax, ay],
      [bx, by],
    ]),
  })),
  foils: [],
  probes: {},
}
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] })
try {
  const page = await browser.newPage()
  const told = await page.evaluate(
    ([text, asked]) =>
      new Promise((done, failed) => {
        const worker = new Worker(URL.createObjectURL(new Blob([text], { type: 'text/javascript' })))
        worker.onmessage = event => done(event.data)
        worker.onerror = event => failed(new Error(event.message))
        worker.postMessage(asked)
      }),
    [outputFiles[0].text, { jamb, runs: 400 }],
  )
  for (const [name, times] of Object.entries(told)) {
    const sorted = times.toSorted((a, b) => a - b)
    const at = share => sorted[Math.floor(share * sorted.length)].toFixed(2)
    console.log(
      `${name} in a worker of ${browser.version()}: median ${at(0.5)} ms, 95 % ${at(0.95)} ms, 99.5 % ${at(0.995)} ms`,
    )
  }
} finally {
  await browser.close()
}
