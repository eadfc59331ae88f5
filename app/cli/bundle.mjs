// Bundles the command line, so that it runs after an install alone. `npm run prepare` does it.
import { mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('../../', import.meta.url))

/**
 * Writes out/cli/jambwright.mjs, the pieces that only some commands load, and which files they were made of.
 */
export const bundle = async () => {
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    entryPoints: { jambwright: 'app/cli/main.ts' },
    outdir: 'out/cli',
    outExtension: { '.js': '.mjs' },
    splitting: true,
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
  // The entry comes last: it is never there without the pieces that it loads.
  for (const { path, contents } of outputFiles.toSorted(entryLast)) await writeWhole(path, contents)
  const inputs = Object.keys(metafile.inputs).filter(it => !it.startsWith('node_modules/'))
  await writeWhole(`${root}out/cli/inputs.json`, JSON.stringify(inputs))
  await removeOthers(outputFiles.map(it => basename(it.path)))
}

const entryLast = (a, b) =>
  Number(a.path.endsWith('jambwright.mjs')) - Number(b.path.endsWith('jambwright.mjs'))

/** Pieces of an older bundle. */
const removeOthers = async kept => {
  const old = (await readdir(`${root}out/cli`)).filter(
    it => /-[A-Z0-9]{8}\.mjs$/.test(it) && !kept.includes(it),
  )
  await Promise.all(old.map(it => rm(`${root}out/cli/${it}`, { force: true })))
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
