import { mkdir, mkdtemp, symlink, writeFile } from 'node:fs/promises'
import { request } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { serve } from '../../app/start/serve.mjs'
import { contentPolicy, servedFile } from '../../app/start/served.mjs'

let folder = ''
let stop = () => {}
let port = 0

beforeAll(async () => {
  const outside = await mkdtemp(join(tmpdir(), 'jambwright-'))
  folder = join(outside, 'window')
  await mkdir(folder)
  await writeFile(join(folder, 'index.html'), 'the window')
  await writeFile(join(outside, 'secret.txt'), 'secret')
  await symlink(join(outside, 'secret.txt'), join(folder, 'link.txt'))
  const { server } = await serve({ folder, port: 0, token: 'the-key' })
  port = (server.address() as AddressInfo).port
  stop = () => server.close()
})
afterAll(() => stop())

const ask = (
  path: string,
  { host = `127.0.0.1:${port}`, cookie = '', method = 'GET' } = {},
): Promise<{ status: number; headers: Record<string, unknown>; body: string }> =>
  new Promise((done, failed) => {
    const asked = request({ port, host: '127.0.0.1', path, method, headers: { host, cookie } }, response => {
      let body = ''
      response.on('data', chunk => (body += chunk))
      response.on('end', () => done({ status: response.statusCode ?? 0, headers: response.headers, body }))
    })
    asked.on('error', failed)
    asked.end()
  })
const key = () => `jambwright-${port}=the-key`

describe('the files of the window', () => {
  it.each([
    '/../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/link.txt',
    '/..\\secret.txt',
    '/%00',
    '/%zz',
  ])('%s leads nowhere', async path => {
    expect(await servedFile(folder, path)).toBeUndefined()
  })
  it('the start page carries the strict policy', async () => {
    const file = await servedFile(folder, '/')
    expect(new TextDecoder().decode(file?.bytes)).toBe('the window')
    expect(file?.headers['content-security-policy']).toBe(contentPolicy)
    expect(contentPolicy).not.toContain('unsafe')
  })
})

describe('the loopback server', () => {
  it('the printed address gives the key once, then the window', async () => {
    const first = await ask('/?key=the-key')
    expect(first.status).toBe(303)
    expect(String(first.headers['set-cookie'])).toMatch(/HttpOnly; SameSite=Strict/)
    expect(await ask('/', { cookie: key() })).toMatchObject({ status: 200, body: 'the window' })
  })
  it('without the key nothing is served', async () => {
    expect((await ask('/')).status).toBe(403)
    expect((await ask('/?key=the-kez')).status).toBe(403)
  })
  it('another host name is refused, key or not', async () => {
    expect((await ask('/', { host: 'elsewhere.invalid', cookie: key() })).status).toBe(421)
  })
  it('nothing can be written', async () => {
    expect((await ask('/', { method: 'POST', cookie: key() })).status).toBe(405)
  })
  it('what lies outside is not served', async () => {
    expect((await ask('/..%2fsecret.txt', { cookie: key() })).status).toBe(404)
  })
})
