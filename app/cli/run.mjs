// npm run cli: bundles again when a source is newer than the bundle, then runs it.
import { readFileSync, statSync } from 'node:fs'

const root = new URL('../../', import.meta.url)
const bundled = new URL('out/cli/jambwright.mjs', root)

if (!isFresh()) await (await import('./bundle.mjs')).bundle()
await import(bundled.href)

function isFresh() {
  try {
    const { mtimeMs } = statSync(bundled)
    const inputs = JSON.parse(readFileSync(new URL('out/cli/inputs.json', root), 'utf8'))
    return ['package-lock.json', ...inputs].every(it => statSync(new URL(it, root)).mtimeMs <= mtimeMs)
  } catch {
    // Nothing bundled yet, or a source is gone: both mean to bundle.
    return false
  }
}
