// node tests/bench/heat-table.mjs: errors, tails, memory and a general-purpose package beside the heat solver.
import { mkdir } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('../../', import.meta.url))
process.chdir(root)
setFlagsFromString('--expose-gc')
globalThis.gc = runInNewContext('gc')
await mkdir(`${root}out/bench`, { recursive: true })
await build({
  absWorkingDir: root,
  entryPoints: ['tests/bench/heat-table.ts'],
  outfile: 'out/bench/heat-table.mjs',
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  logLevel: 'warning',
})
const { printHeatTable } = await import(`${root}out/bench/heat-table.mjs`)
await printHeatTable()
