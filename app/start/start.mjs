import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { ensureBuilt, isBuilt, windowFolder } from './build.mjs'
import { register, unregister } from './file-type.mjs'
import { findRuntime } from './runtime.mjs'
import { serve } from './serve.mjs'

/** One fixed port, so that the browser finds its remembered settings again. */
const usualPort = 4710

const top = fileURLToPath(new URL('../..', import.meta.url))

const usage = `npm start                    opens Jambwright: the desktop window, or the same window in the browser
npm start -- right-jamb      with a sample, by the name of its file
npm start -- house.jamb      with a project (the desktop window; a browser asks for the file itself)
npm start -- --browser       in the browser, whatever there is
npm start -- --port 4711     on another port
npm start -- --safe-start    without the graphics card, where the desktop window stays blank
npm start -- --register      makes project files open with Jambwright, for this user; --unregister takes that back
`

const start = async () => {
  const args = process.argv.slice(2)
  if (args.includes('--help')) return void process.stdout.write(usage)
  if (args.includes('--register')) return console.log(await register(top))
  if (args.includes('--unregister')) return console.log(await unregister())
  if (args.includes('--browser')) process.env.JAMBWRIGHT_IN_BROWSER = '1'
  const asked = askedFor(args)
  if (!(await isBuilt())) {
    console.log('Building, once …')
    await ensureBuilt()
  }
  const runtime = await findRuntime(top)
  if (runtime.program !== undefined) return openDesktop(runtime.program, asked)
  console.log(`The desktop window is not used: ${runtime.why}.`)
  return openBrowser(portFrom(args), asked)
}

const portFrom = args => {
  const at = args.indexOf('--port')
  const port = at < 0 ? usualPort : Number(args[at + 1])
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new Error(`--port takes a number up to 65535, not "${args[at + 1]}"`)
  return port
}

/** What is to be opened: a sample by name, a file by its path, or nothing. Fails with words where there is neither. */
const askedFor = args => {
  const [name] = args.filter((it, at) => !it.startsWith('--') && args[at - 1] !== '--port')
  const switches = args.filter(it => it === '--safe-start')
  if (name === undefined) return { switches }
  if (/^[a-z0-9-]+$/.test(name) && existsSync(join(top, 'assets', 'samples', `${name}.jamb`)))
    return { switches, sample: name }
  if (existsSync(name)) return { switches, file: resolve(name) }
  throw new Error(`"${name}" is neither a sample nor a file`)
}

const openDesktop = (program, { switches, sample, file }) => {
  const named = sample !== undefined ? [`--sample=${sample}`] : file !== undefined ? [file] : []
  const child = spawn(program, [top, ...switches, ...named], { stdio: 'inherit' })
  child.on('error', error => said(error))
  child.on('close', code => (process.exitCode = code ?? 0))
}

const openBrowser = async (port, { sample, file }) => {
  const { address } = await serve({ folder: windowFolder, port })
  console.log(`Jambwright is at ${address}${sample === undefined ? '' : `#${sample}`}`)
  if (file !== undefined)
    console.log(`A browser reads no file unasked: open ${file} there, or drop it on the page.`)
  console.log('It is reached from this computer only. Stop it with Ctrl+C.')
}

const said = error => {
  const port = error?.code === 'EADDRINUSE' ? error.port : undefined
  console.error(
    port === undefined
      ? error instanceof Error
        ? error.message
        : String(error)
      : `Port ${port} is taken. Is Jambwright open already? Otherwise: npm start -- --port ${port + 1}`,
  )
  process.exitCode = 1
}

start().catch(said)
