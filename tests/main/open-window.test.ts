import { beforeEach, expect, it, vi } from 'vitest'
import { channels } from '../../app/bridge'
import { openWindow, windowOptions } from '../../app/main/open-window'
import { BrowserWindow } from './electron-double'

vi.mock('electron', () => import('./electron-double'))

const opening = { width: 1440, height: 900, maximised: false }
let remembered: string[] = []

const opened = () => {
  const { closing } = openWindow('/out', { opening, remember: it => remembered.push(it) })
  const window = BrowserWindow.made.at(-1)
  if (window === undefined) throw new Error('no window was made')
  return { window, closing }
}

beforeEach(() => {
  BrowserWindow.made = []
  remembered = []
})

it('the window loads our own scheme, closed to everything a page does not need', () => {
  expect(opened().window.sent).toEqual(['jambwright://window/index.html'])
  expect(windowOptions('/out/preload/index.cjs', opening).webPreferences).toMatchObject({
    sandbox: true,
    contextIsolation: true,
    nodeIntegration: false,
    nodeIntegrationInWorker: false,
    webviewTag: false,
    webSecurity: true,
    navigateOnDragDrop: false,
  })
})

it('a window with nothing unsaved closes at once', () => {
  const { window } = opened()
  window.close()
  expect(window.isOpen).toBe(false)
})

it('unsaved work holds the window until the page has answered', () => {
  const { window, closing } = opened()
  closing.setUnsaved(true)
  window.close()
  expect(window.isOpen).toBe(true)
  expect(window.sent).toContain(channels.closeAsked)
  closing.answered(false)
  expect(window.isOpen).toBe(true)
  closing.answered(true)
  expect(window.isOpen).toBe(false)
})

it('a page that died cannot hold its window open', () => {
  const { window, closing } = opened()
  closing.setUnsaved(true)
  window.hasCrashed = true
  window.close()
  expect(window.isOpen).toBe(false)
})

it('a page that died is loaded again once, and asks nothing when its window is closed', () => {
  const { window, closing } = opened()
  closing.setUnsaved(true)
  window.heard.get('render-process-gone')?.({}, { reason: 'crashed' })
  window.heard.get('render-process-gone')?.({}, { reason: 'crashed' })
  expect(window.sent).toEqual(['jambwright://window/index.html', 'jambwright://window/index.html'])
  window.close()
  expect(window.isOpen).toBe(false)
})

it('where the window was is remembered when it closes', () => {
  opened().window.close()
  expect(remembered).toEqual([JSON.stringify({ x: 10, y: 20, width: 1300, height: 800, maximised: false })])
})

it('no window is smaller than the narrow arrangement', () => {
  expect(windowOptions('', opening)).toMatchObject({ minWidth: 1024, minHeight: 640 })
})
