// What the benches of the window share.

/** How the browser is started: nothing of its own on the network, and the raster in software as on a plain machine. */
export const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
]

export const median = times => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)]

/** A million square roots in the page itself: what times are compared with. */
export const calibration = page =>
  page.evaluate(`(() => {
    const once = () => {
      const from = performance.now()
      let sum = 0
      for (let n = 1; n <= 1_000_000; n++) sum += Math.sqrt(n) / (1 + (n % 7))
      return [performance.now() - from, sum][0]
    }
    for (let at = 0; at < 20; at++) once()
    return Array.from({ length: 60 }, once).sort((a, b) => a - b)[30]
  })()`)

/** The page's counters of time in ms: CPU time of its main thread where the session was told so. */
export const cpuOf = async cdp =>
  Object.fromEntries((await cdp.send('Performance.getMetrics')).metrics.map(it => [it.name, it.value * 1000]))
