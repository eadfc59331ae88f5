// npm run bench [-- NAME]: prints times and their ratio to a calibration loop. Nothing here passes or fails.
import { mkdir, writeFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('../../', import.meta.url))
process.chdir(root)

const { outputFiles } = await build({
  absWorkingDir: root,
  entryPoints: ['tests/bench/print.ts'],
  outfile: 'out/bench/print.mjs',
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  write: false,
  logLevel: 'warning',
  banner: {
    js: "import{createRequire as requirer}from'node:module';const require=requirer(import.meta.url);",
  },
})
await mkdir(`${root}out/bench`, { recursive: true })
for (const { path, contents } of outputFiles) await writeFile(path, contents)
const { printBenches } = await import(`${root}out/bench/print.mjs`)
await printBenches(process.argv.slice(2).join(' '))
