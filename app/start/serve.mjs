import { createServer } from 'node:http'
import { randomBytes, timingSafeEqual } from 'node:crypto'
import { headersFor, servedFile } from './served.mjs'

/**
 * Serves the built window on loopback only. Requests under another host name are refused (a page elsewhere cannot
 * reach it by a name that points here), and so are those without the token that the printed address carries.
 * Fails with the system's error when the port is taken.
 */
export const serve = ({ folder, port, token = randomBytes(18).toString('base64url') }) =>
  new Promise((started, failed) => {
    const server = createServer((request, response) => {
      void answer(request, { folder, token, port: server.address().port }).then(
        ({ status, headers, bytes }) => {
          response.writeHead(status, headers)
          response.end(bytes)
        },
      )
    })
    server.once('error', failed)
    server.listen(port, '127.0.0.1', () => {
      const at = `http://127.0.0.1:${server.address().port}`
      started({ server, at, address: `${at}/?key=${token}` })
    })
  })

const answer = async (request, { folder, token, port }) => {
  if (![`127.0.0.1:${port}`, `localhost:${port}`].includes(request.headers.host ?? ''))
    return said(421, 'This address serves Jambwright on this computer only.')
  if (request.method !== 'GET' && request.method !== 'HEAD')
    return said(405, 'Only reading is possible here.')
  const url = new URL(request.url ?? '/', `http://127.0.0.1:${port}`)
  const cookieName = `jambwright-${port}`
  if (isToken(url.searchParams.get('key'), token))
    return {
      status: 303,
      headers: { location: '/', 'set-cookie': `${cookieName}=${token}; HttpOnly; SameSite=Strict; Path=/` },
    }
  if (!isToken(cookieOf(request, cookieName), token))
    return said(403, 'Open the address that was printed when Jambwright started: it carries a key.')
  const file = await servedFile(folder, url.pathname)
  return file === undefined
    ? said(404, 'There is no such file.')
    : { status: 200, headers: file.headers, bytes: request.method === 'HEAD' ? undefined : file.bytes }
}

const said = (status, words) => ({ status, headers: headersFor('words.txt'), bytes: `${words}\n` })

const cookieOf = (request, name) =>
  (request.headers.cookie ?? '')
    .split(';')
    .map(pair => pair.trim().split('='))
    .find(([key]) => key === name)?.[1]

const isToken = (given, token) => {
  const [a, b] = [Buffer.from(given ?? ''), Buffer.from(token)]
  return a.length === b.length && timingSafeEqual(a, b)
}
