import { spawn } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { request } from 'node:https'
import { join } from 'node:path'

/** Where the runtime of the desktop window is downloaded from, and how long its place may take to answer. */
const downloadPlace = 'https://github.com'
const patience_ms = 4000

/**
 * Finds the desktop runtime: its program, or the reason in words why there is none.
 * It never loads the runtime's package, which would try to download at once and end in a stack trace.
 */
export const findRuntime = async top => {
  const why = reasonAgainstDesktop()
  if (why !== undefined) return { why }
  const here = installed(top)
  if (here !== undefined) return { program: here }
  if (!(await answers(downloadPlace)))
    return { why: 'its runtime is not installed and cannot be downloaded here' }
  console.log('Fetching the desktop runtime, once …')
  const failed = await installBy(top)
  const now = installed(top)
  return now !== undefined ? { program: now } : { why: `its runtime could not be installed (${failed})` }
}

/** Why no desktop window can be opened here, whatever is installed; nothing: it can. */
export const reasonAgainstDesktop = () => {
  if (process.env.JAMBWRIGHT_IN_BROWSER === '1') return 'JAMBWRIGHT_IN_BROWSER is set'
  if (process.platform !== 'linux') return undefined
  if (!process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) return 'there is no display'
  if (process.getuid?.() === 0) return 'it does not run as root'
  return undefined
}

/** The program of the desktop runtime, if it is installed. */
export const installed = top => {
  const folder = join(top, 'node_modules', 'electron')
  try {
    const program = join(folder, 'dist', readFileSync(join(folder, 'path.txt'), 'utf8').trim())
    return existsSync(program) ? program : undefined
  } catch {
    return undefined
  }
}

const installBy = top =>
  new Promise(done => {
    const child = spawn(process.execPath, [join(top, 'node_modules', 'electron', 'install.js')], {
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    let said = ''
    const hear = chunk => (said += chunk)
    child.stdout.on('data', hear)
    child.stderr.on('data', hear)
    child.on('error', error => done(error.message))
    child.on('close', () => done(said.trim().split('\n')[0] ?? ''))
  })

const answers = place =>
  new Promise(done => {
    const asked = request(place, { method: 'HEAD', timeout: patience_ms }, response => {
      response.resume()
      done(true)
    })
    const givenUp = setTimeout(() => asked.destroy(new Error('too slow')), patience_ms)
    asked.on('close', () => clearTimeout(givenUp))
    asked.on('error', () => done(false))
    asked.end()
  })
