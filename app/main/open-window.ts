import { BrowserWindow } from 'electron'
import { join } from 'node:path'
import { channels } from '../bridge'
import { pageAddress } from './scheme'

/** The window with everything closed that a page does not need. */
export const windowOptions = (preload: string) =>
  ({
    width: 1440,
    height: 900,
    minWidth: 1024,
    minHeight: 640,
    show: false,
    title: 'Jambwright',
    autoHideMenuBar: true,
    webPreferences: {
      preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webviewTag: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    },
  }) as const

/** What a window knows about closing: whether to ask, and that it was answered. */
export type Closing = {
  readonly setUnsaved: (unsaved: boolean) => void
  readonly answered: (may: boolean) => void
}

/**
 * Opens the window. With unsaved work it does not close before the page, which can save, has answered;
 * a page that died cannot hold its window open.
 */
export const openWindow = (
  outFolder: string,
): { readonly window: BrowserWindow; readonly closing: Closing } => {
  const window = new BrowserWindow(windowOptions(join(outFolder, 'preload', 'index.cjs')))
  let unsaved = false
  let mayClose = false
  window.once('ready-to-show', () => window.show())
  window.on('close', event => {
    if (!unsaved || mayClose || window.webContents.isCrashed()) return
    event.preventDefault()
    window.webContents.send(channels.closeAsked)
  })
  void window.loadURL(pageAddress)
  return {
    window,
    closing: {
      setUnsaved: now => {
        unsaved = now
        window.setDocumentEdited(now)
      },
      answered: may => {
        mayClose = may
        if (may) window.close()
      },
    },
  }
}
