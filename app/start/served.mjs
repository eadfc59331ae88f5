import { readFile, realpath } from 'node:fs/promises'
import { extname, join, sep } from 'node:path'

/** What a page of ours may load: its own scripts, styles, fonts and pictures, and nothing from anywhere else. */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ')

const mediaTypes = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
}

/**
 * Headers of everything that is served, whether over the own scheme or over loopback. What the build has named by its
 * content may be kept, and with it what the browser made of it: a page that is loaded again starts in half the time.
 */
export const headersFor = file => ({
  'content-type': mediaTypes[extname(file)] ?? 'application/octet-stream',
  'content-security-policy': contentPolicy,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cache-control': /[\\/]assets[\\/][^\\/]+-[\w-]{8}\.\w+$/.test(file)
    ? 'private, max-age=31536000, immutable'
    : 'no-store',
})

/**
 * A file of the built window, by the path of its address. Nothing outside the folder is ever read:
 * neither by `..`, nor encoded, nor through a link. Absent: there is no such file.
 */
export const servedFile = async (folder, pathname) => {
  const asked = decoded(pathname)
  if (asked === undefined || asked.includes('\0') || asked.includes('\\')) return undefined
  const path = join(folder, asked === '/' || asked === '' ? 'index.html' : asked)
  try {
    const [root, real] = await Promise.all([realpath(folder), realpath(path)])
    if (!real.startsWith(root + sep)) return undefined
    return { bytes: await readFile(real), headers: headersFor(real) }
  } catch {
    return undefined
  }
}

const decoded = pathname => {
  try {
    return decodeURIComponent(pathname)
  } catch {
    return undefined
  }
}
