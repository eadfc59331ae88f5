// Bundles the command line into one file, so that it runs after an install alone. `npm run prepare` does it.
import { mkdir, rename, writeFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('../../', import.meta.url))

/** Writes out/cli/jambwright.mjs, and beside it which files it was made of. */
export const bundle = async () => {
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    entryPoints: ['app/cli/main.ts'],
    outfile: 'out/cli/jambwright.mjs',
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    minify: true,
    metafile: true,
    write: false,
    logLevel: 'warning',
    plugins: [oneLocale],
    // Libraries in the older module form ask for Node's own modules by `require`.
    banner: {
      js: "import{createRequire as requirer}from'node:module';const require=requirer(import.meta.url);",
    },
  })
  await mkdir(`${root}out/cli`, { recursive: true })
  for (const { path, contents } of outputFiles) await writeWhole(path, contents)
  const inputs = Object.keys(metafile.inputs).filter(it => !it.startsWith('node_modules/'))
  await writeWhole(`${root}out/cli/inputs.json`, JSON.stringify(inputs))
}

/** The schemas' own messages are only ever shown in English; the other forty languages would be read at each start. */
const oneLocale = {
  name: 'one-locale',
  setup: it =>
    it.onLoad({ filter: /zod[\\/]v4[\\/]locales[\\/]index\.js$/ }, () => ({
      contents: "export { default as en } from './en.js'",
    })),
}

/** Two command lines may bundle at once: each file is there whole or not at all. */
const writeWhole = async (path, content) => {
  await writeFile(`${path}.${process.pid}`, content)
  await rename(`${path}.${process.pid}`, path)
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundle()
