import { spawn } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { ensureBuilt, isBuilt, windowFolder } from './build.mjs'
import { findRuntime } from './runtime.mjs'
import { serve } from './serve.mjs'

/** One fixed port, so that the browser finds its remembered settings again. */
const usualPort = 4710

const top = fileURLToPath(new URL('../..', import.meta.url))

const usage = `npm start                    opens Jambwright: the desktop window, or the same window in the browser
npm start -- --browser       in the browser, whatever there is
npm start -- --port 4711     on another port
`

const start = async () => {
  const args = process.argv.slice(2)
  if (args.includes('--help')) return void process.stdout.write(usage)
  if (args.includes('--browser')) process.env.JAMBWRIGHT_IN_BROWSER = '1'
  if (!(await isBuilt())) {
    console.log('Building, once …')
    await ensureBuilt()
  }
  const runtime = await findRuntime(top)
  if (runtime.program !== undefined) return openDesktop(runtime.program, args)
  console.log(`The desktop window is not used: ${runtime.why}.`)
  return openBrowser(portFrom(args))
}

const portFrom = args => {
  const at = args.indexOf('--port')
  const port = at < 0 ? usualPort : Number(args[at + 1])
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new Error(`--port takes a number up to 65535, not "${args[at + 1]}"`)
  return port
}

const openDesktop = (program, args) => {
  const child = spawn(program, [top, ...args], { stdio: 'inherit' })
  child.on('error', error => said(error))
  child.on('close', code => (process.exitCode = code ?? 0))
}

const openBrowser = async port => {
  const { address } = await serve({ folder: windowFolder, port })
  console.log(`Jambwright is at ${address}`)
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
