import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { contentPolicy } from '../../app/start/served.mjs'

const app = fileURLToPath(new URL('../../app', import.meta.url))
const sourcesIn = (folder: string): readonly (readonly [name: string, text: string])[] =>
  readdirSync(join(app, folder), { recursive: true, encoding: 'utf8' })
    .filter(it => /\.(ts|mjs|svelte|html)$/.test(it))
    .map(it => [`${folder}/${it}`, readFileSync(join(app, folder, it), 'utf8')] as const)

const all = ['main', 'preload', 'host', 'bridge', 'window', 'editor'].flatMap(sourcesIn)
const found = (pattern: RegExp): readonly string[] =>
  all.flatMap(([name, text]) => (pattern.test(text) ? [name] : []))

describe('what no source of the program may have', () => {
  it.each([
    ['a page that is opened outside the program', /openExternal/],
    ['a page within a page', /<webview|<iframe|BrowserView/],
    ['switches that open the runtime', /appendSwitch|enableBlinkFeatures|experimentalFeatures: true/],
    ['an update of itself', /autoUpdater|electron-updater/],
    ['markup made out of text', /\{@html|innerHTML\s*=|insertAdjacentHTML|document\.write/],
    ['code made out of text', /\beval\(|new Function\(/],
    ['a request of its own', /XMLHttpRequest|new WebSocket|EventSource|sendBeacon/],
    ['the old way to the path of a file', /\bfile\.path\b/],
  ])('%s', (_, pattern) => {
    expect(found(pattern)).toEqual([])
  })
  it('an address of another place, but in the names of formats', () => {
    const addresses = all.flatMap(([name, text]) =>
      [...text.matchAll(/https?:\/\/[^\s'"`)]+/g)].map(([it]) => `${name}: ${it}`),
    )
    expect(addresses.filter(it => !/www\.w3\.org/.test(it))).toEqual([])
  })
  it('the runtime in the page: only the preload speaks to it', () => {
    expect(found(/from 'electron'/).filter(it => !/^(main|preload)\//.test(it))).toEqual([])
  })
})

it('the policy of the page allows what is its own and nothing else', () => {
  const parts = new Map(contentPolicy.split('; ').map(it => [it.split(' ')[0] ?? '', it.split(' ').slice(1)]))
  expect(Object.fromEntries(parts)).toEqual({
    'default-src': ["'none'"],
    'script-src': ["'self'"],
    'style-src': ["'self'"],
    'img-src': ["'self'", 'data:', 'blob:'],
    'font-src': ["'self'"],
    'connect-src': ["'self'"],
    'worker-src': ["'self'"],
    'object-src': ["'none'"],
    'base-uri': ["'none'"],
    'form-action': ["'none'"],
    'frame-ancestors': ["'none'"],
  })
})
