import { BrowserWindow } from 'electron'
import { join } from 'node:path'
import { channels } from '../bridge'
import { least, type Opening, writtenBounds } from './bounds'
import { pageAddress } from './scheme'

/** The window with everything closed that a page does not need. */
export const windowOptions = (preload: string, { maximised: _, ...bounds }: Opening) =>
  ({
    ...bounds,
    minWidth: least.width,
    minHeight: least.height,
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

/** What a window needs from the program: where it opens, and who remembers where it was. */
export type Housing = {
  readonly opening: Opening
  readonly remember: (bounds: string) => void
  /** the page opens this sample at first */
  readonly sample?: string | undefined
}

/** A page that dies more often than this is not loaded again by itself. *Ours.* */
const between_ms = 10_000

/**
 * Opens the window. With unsaved work it does not close before the page, which can save, has answered;
 * a page that died cannot hold its window open. It is loaded again, and offers what was kept of its work.
 */
export const openWindow = (
  outFolder: string,
  { opening, remember, sample }: Housing,
): { readonly window: BrowserWindow; readonly closing: Closing } => {
  const window = new BrowserWindow(windowOptions(join(outFolder, 'preload', 'index.cjs'), opening))
  let unsaved = false
  let mayClose = false
  let diedAt_ms = -Infinity
  window.once('ready-to-show', () => {
    if (opening.maximised) window.maximize()
    window.show()
  })
  window.on('close', event => {
    remember(writtenBounds(window.getNormalBounds(), window.isMaximized()))
    if (!unsaved || mayClose || window.webContents.isCrashed()) return
    event.preventDefault()
    window.webContents.send(channels.closeAsked)
  })
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    unsaved = false
    const now_ms = performance.now()
    if (reason !== 'clean-exit' && now_ms - diedAt_ms > between_ms) void window.loadURL(pageAddress)
    diedAt_ms = now_ms
  })
  void window.loadURL(sample === undefined ? pageAddress : `${pageAddress}#${sample}`)
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
