import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { _electron } from 'playwright-core'
import { expect, it } from 'vitest'
import { ensureBuilt } from '../../app/start/build.mjs'
import { installed, reasonAgainstDesktop } from '../../app/start/runtime.mjs'

const top = fileURLToPath(new URL('../..', import.meta.url))

/**
 * The built program in its real runtime: it opens its window, closed to everything a page does not need. Where the
 * runtime or a display is missing this says so and looks no further; the double then stands for it.
 */
it('the desktop program opens its window in its real runtime', async () => {
  const why = reasonAgainstDesktop() ?? (installed(top) === undefined ? 'its runtime is not installed' : '')
  if (why !== '') {
    process.stdout.write(`Not tried in the real runtime: ${why}.\n`)
    return
  }
  await ensureBuilt()
  const userData = await mkdtemp(join(tmpdir(), 'jambwright-'))
  const program = await _electron.launch({
    executablePath: installed(top) ?? '',
    args: [top, `--user-data-dir=${userData}`],
  })
  try {
    const page = await program.firstWindow()
    await page.locator('.walls button').first().waitFor()
    expect(page.url()).toBe('jambwright://window/index.html')
    expect(await page.evaluate('typeof require + typeof process')).toBe('undefinedundefined')
    expect(await page.evaluate('Object.keys(window.jambwrightBridge).length')).toBeGreaterThan(10)
    expect(await page.evaluate(`window.open('https://example.invalid/')`)).toBeNull()
  } finally {
    await program.close()
  }
})
