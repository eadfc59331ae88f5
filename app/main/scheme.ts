import { protocol } from 'electron'
import { headersFor, servedFile } from '../start/served.mjs'

/** The window's own scheme: the packaged files and nothing else, with the headers of the loopback server. */
const schemeName = 'jambwright'
const pageHost = 'window'
export const pageOrigin = `${schemeName}://${pageHost}`
export const pageAddress = `${pageOrigin}/index.html`

/** To be called before the program is ready: the scheme then counts as a secure, standard one. */
export const announceScheme = (): void => {
  protocol.registerSchemesAsPrivileged([
    { scheme: schemeName, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ])
}

/** Serves the built window from its folder under the own scheme. */
export const serveScheme = (folder: string): void => {
  protocol.handle(schemeName, async request => {
    const url = new URL(request.url)
    const file = url.host === pageHost ? await servedFile(folder, url.pathname) : undefined
    return file === undefined
      ? new Response('There is no such file.', { status: 404, headers: headersFor('words.txt') })
      : new Response(new Uint8Array(file.bytes), { headers: file.headers })
  })
}

/** Whether an address is a page of ours. */
export const isOurPage = (address: string): boolean =>
  address === pageOrigin || address.startsWith(`${pageOrigin}/`)
