import { describe, expect, it, vi } from 'vitest'
import { denyPermissions, guardPages } from '../../app/main/guard'

vi.mock('electron', () => import('./electron-double'))

type Listener = (event: { url: string; preventDefault: () => void }) => void

/** The listeners that a fresh page gets. */
const guarded = () => {
  const heard = new Map<string, Listener>()
  let mayOpen: (() => unknown) | undefined
  const contents = {
    on: (name: string, listener: Listener) => heard.set(name, listener),
    setWindowOpenHandler: (answer: () => unknown) => (mayOpen = answer),
  }
  // Only the two calls that are used.
  guardPages({
    on: (_name: string, made: (event: unknown, it: unknown) => void) => made({}, contents),
  } as unknown as Parameters<typeof guardPages>[0])
  const isStopped = (name: string, url: string): boolean => {
    let stopped = false
    heard.get(name)?.({ url, preventDefault: () => (stopped = true) })
    return stopped
  }
  return { isStopped, mayOpen: () => mayOpen?.() }
}

describe('a page', () => {
  it.each(['https://example.invalid/', 'file:///etc/passwd', 'smb://host/share', 'jambwright://other/'])(
    'may not go to %s',
    url => {
      expect(guarded().isStopped('will-navigate', url)).toBe(true)
      expect(guarded().isStopped('will-frame-navigate', url)).toBe(true)
    },
  )
  it('may stay within the program', () => {
    expect(guarded().isStopped('will-navigate', 'jambwright://window/index.html')).toBe(false)
  })
  it('opens no window and embeds no page', () => {
    expect(guarded().mayOpen()).toEqual({ action: 'deny' })
    expect(guarded().isStopped('will-attach-webview', '')).toBe(true)
  })
  it('is granted nothing', () => {
    const answers: boolean[] = []
    // Only the three calls that are used.
    denyPermissions({
      setPermissionRequestHandler: (ask: (c: unknown, p: string, answer: (a: boolean) => void) => void) =>
        ask({}, 'media', may => answers.push(may)),
      setPermissionCheckHandler: (ask: () => boolean) => answers.push(ask()),
      setDevicePermissionHandler: (ask: () => boolean) => answers.push(ask()),
    } as unknown as Parameters<typeof denyPermissions>[0])
    expect(answers).toEqual([false, false, false])
  })
})
