// npm test: everything that must hold before a change is good. Checks run two at a time, the tests come last.
// `npm test -- NAME` runs only the tests whose path has NAME in it, without the checks.
import { spawn } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { performance } from 'node:perf_hooks'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))
const bin = name => `${root}node_modules/.bin/${name}`

/** Rooms whose types are checked by the compiler alone; the window's checker knows components, and takes the host along. */
const rooms = readdirSync(`${root}app`)
  .filter(it => !['window', 'host'].includes(it) && existsSync(`${root}app/${it}/tsconfig.json`))
  .map(it => `app/${it}`)

const checks = [
  [
    'format',
    'prettier',
    '--check',
    '--log-level',
    'warn',
    '--cache',
    '--cache-location',
    'out/prettier',
    '.',
  ],
  ['lint', 'oxlint', '--quiet', '--format', 'unix'],
  ['room order', 'depcruise', '--config', '.dependency-cruiser.cjs', 'core', 'app', 'tests'],
  ['types of window', 'svelte-check', '--tsconfig', 'app/window/tsconfig.json', '--threshold', 'error'],
  ...programs(['tests', 'core', ...rooms]).map(({ of, at }) => [
    `types of ${of.join(', ')}`,
    'tsc',
    '-p',
    at,
  ]),
].filter(([name]) => name !== 'types of window' || existsSync(`${root}app/window/tsconfig.json`))

const asked = process.argv.slice(2)
const broken = asked.length === 0 ? await runAll(checks) : []
const tests = await run('vitest', ['run', '--config', 'tests/vitest.config.ts', ...asked], 'inherit')
if (broken.length !== 0) console.log(`\nNot sound: ${broken.join(', ')}`)
process.exitCode = broken.length === 0 && tests.code === 0 ? 0 : 1

/**
 * Rooms that may use the same of their surroundings, put together as one program: what they share, which is most, is then
 * checked once. Each keeps its own `tsconfig.json` for who works in it.
 */
function programs(all) {
  const readOf = room => JSON.parse(readFileSync(`${root}${room}/tsconfig.json`, 'utf8'))
  const surroundings = room => {
    const { lib, types } = readOf(room).compilerOptions
    return JSON.stringify({ lib, types })
  }
  mkdirSync(`${root}out/types`, { recursive: true })
  return [...new Set(all.map(surroundings))].map((same, number) => {
    const of = all.filter(room => surroundings(room) === same)
    const at = `out/types/program-${number}.json`
    const include = of.flatMap(room => (readOf(room).include ?? []).map(it => `../../${room}/${it}`))
    const options = {
      ...JSON.parse(same),
      incremental: true,
      tsBuildInfoFile: `program-${number}.tsbuildinfo`,
    }
    const program = { extends: '../../tsconfig.json', compilerOptions: options, include }
    writeFileSync(`${root}${at}`, JSON.stringify(program))
    return { of, at }
  })
}

/** Runs checks on two cores and gives the names of those that failed. */
async function runAll(all) {
  const waiting = [...all]
  const failed = []
  const work = async () => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const [name, command, ...args] = next
      const { code, output, seconds } = await run(command, args, 'pipe')
      console.log(`${code === 0 ? 'sound' : 'BROKEN'}  ${name}  ${seconds.toFixed(1)} s`)
      if (code === 0) continue
      failed.push(name)
      console.log(output.trimEnd())
    }
  }
  await Promise.all([work(), work()])
  return failed
}

function run(command, args, stdio) {
  const from = performance.now()
  return new Promise(done => {
    const child = spawn(bin(command), args, { cwd: root, stdio: ['ignore', stdio, stdio] })
    let output = ''
    child.stdout?.on('data', it => (output += it))
    child.stderr?.on('data', it => (output += it))
    child.on('error', fault => done({ code: 1, output: String(fault), seconds: 0 }))
    child.on('close', code => done({ code, output, seconds: (performance.now() - from) / 1000 }))
  })
}
