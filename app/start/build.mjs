import { mkdir, readdir, readFile, rmdir, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const top = fileURLToPath(new URL('../..', import.meta.url))

/** What the built program is made from. */
const sources = ['app', 'core', 'assets', 'electron.config.ts', 'package.json', 'package-lock.json']
const stamp = join(top, 'out', 'built.json')

/** The folder of the built window. */
export const windowFolder = join(top, 'out', 'window')

/** Builds window, desktop process and bridge into `out/`. Says nothing; fails with the builder's message. */
export const build = async () => {
  const { build: buildAll } = await import('electron-vite')
  process.env.NODE_ENV = 'production'
  await buildAll({ root: top, configFile: join(top, 'electron.config.ts'), logLevel: 'error' })
  await writeFile(stamp, JSON.stringify({ newest: await newestSource() }))
}

/** Whether `out/` is there and no source is newer than it. */
export const isBuilt = async () => {
  try {
    return JSON.parse(await readFile(stamp, 'utf8')).newest === (await newestSource())
  } catch {
    return false
  }
}

/** How long another build may take before it counts as dead: several times what the slowest machine needed. */
const patience_ms = 120_000

/** Builds unless that is done, or waits for the one who is building: several may start at once. */
export const ensureBuilt = async () => {
  const claim = join(top, 'out', '.building')
  await mkdir(join(top, 'out'), { recursive: true })
  for (const from = Date.now(); !(await isBuilt()); await new Promise(done => setTimeout(done, 100))) {
    const isMine = await mkdir(claim).then(
      () => true,
      () => false,
    )
    if (!isMine && Date.now() - from < patience_ms) continue
    try {
      await build()
    } finally {
      await rmdir(claim).catch(() => undefined)
    }
    return
  }
}

/** Names the state of the sources: how many there are, and when the last one changed. */
const newestSource = async () => {
  let count = 0
  let newest = 0
  const see = async path => {
    const about = await stat(path)
    if (about.isDirectory()) {
      for (const name of await readdir(path)) await see(join(path, name))
    } else {
      count++
      newest = Math.max(newest, about.mtimeMs)
    }
  }
  for (const source of sources) await see(join(top, source))
  return `${count} ${newest}`
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const from = Date.now()
  try {
    await build()
    console.log(`Built into out/ in ${((Date.now() - from) / 1000).toFixed(1)} s`)
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error))
    process.exitCode = 1
  }
}
