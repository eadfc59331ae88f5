import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { double } from '../main/electron-double'

const pageAddress = 'jambwright://window/index.html'

/** Bytes go between page and test as lists of numbers, marked as such, wherever they stand in a message. */
function pack(it: unknown): unknown {
  if (it instanceof Uint8Array) return { $bytes: [...it] }
  if (Array.isArray(it)) return it.map(pack)
  return it !== null && typeof it === 'object'
    ? Object.fromEntries(Object.entries(it).map(([key, value]) => [key, pack(value)]))
    : it
}

function unpack(it: unknown): unknown {
  if (Array.isArray(it)) return it.map(unpack)
  if (it === null || typeof it !== 'object') return it
  if ('$bytes' in it && Array.isArray(it.$bytes)) return new Uint8Array(it.$bytes)
  return Object.fromEntries(Object.entries(it).map(([key, value]) => [key, unpack(value)]))
}

/** The same two for the page. */
const packed = [pack, unpack].map(String).join('\n')

/**
 * Puts the built bridge into a page, talking to the handlers behind the double. `window.paths` says, by name, where a
 * dropped file lies, which the runtime would know.
 */
export const withBridge = async (page: Page): Promise<void> => {
  await page.exposeBinding('askMain', async (_, channel: string, args: readonly unknown[]) =>
    pack(await double.ask(channel, pageAddress, ...args.map(unpack))),
  )
  await page.exposeBinding('tellMain', (_, channel: string, args: readonly unknown[]) =>
    double.send(channel, pageAddress, ...args.map(unpack)),
  )
  const preload = await readFile(
    fileURLToPath(new URL('../../out/preload/index.cjs', import.meta.url)),
    'utf8',
  )
  await page.addInitScript(`
    window.heardByPage = {}
    window.paths = {}
    ;(function (require, exports) { ${preload} })(() => {
      ${packed}
      return {
        contextBridge: { exposeInMainWorld: (name, bridge) => { window[name] = bridge } },
        webUtils: { getPathForFile: file => window.paths[file.name] ?? '' },
        ipcRenderer: {
          invoke: (channel, ...args) => window.askMain(channel, args.map(pack)).then(unpack),
          send: (channel, ...args) => { void window.tellMain(channel, args.map(pack)) },
          on: (channel, listener) => { window.heardByPage[channel] = listener },
        },
      }
    }, {})
  `)
}
