import { type BrowserWindow, Menu, app, dialog, session } from 'electron'
import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import { extension } from '../../core/detail'
import { type HostNews, channels } from '../bridge'
import { denyPermissions, guardPages } from './guard'
import { handleMessages } from './handlers'
import { menuTemplate } from './menu'
import { type Closing, openWindow } from './open-window'
import { newPlaces } from './places'
import { readProject } from './read-project'
import { announceScheme, serveScheme } from './scheme'

/** The built program: this file lies in `out/main`. */
const outFolder = dirname(dirname(fileURLToPath(import.meta.url)))

const places = newPlaces()
let open: { readonly window: BrowserWindow; readonly closing: Closing } | undefined
let isReady = false
let toOpen: string | undefined = projectAmong(process.argv.slice(1))

const tell = (news: HostNews): void => open?.window.webContents.send(channels.news, news)

/** Hands a file from outside to the page, once the page listens. */
const handOver = async (path: string): Promise<void> => {
  if (!isReady) {
    toOpen = path
    return
  }
  try {
    tell({ kind: 'file', file: await readProject(path, places) })
  } catch (error) {
    dialog.showErrorBox('Jambwright', error instanceof Error ? error.message : String(error))
  }
}

const openOne = (): void => {
  isReady = false
  open = openWindow(outFolder)
  open.window.on('closed', () => (open = undefined))
}

function projectAmong(args: readonly string[]): string | undefined {
  return args.find(arg => arg.toLowerCase().endsWith(`.${extension}`))
}

app.enableSandbox()
announceScheme()
guardPages(app)

// One program, one window: a second start hands its file to the first and ends.
if (!app.requestSingleInstanceLock({ file: toOpen })) app.quit()
else {
  app.on('second-instance', (_event, _args, _folder, data) => {
    // The second start of this same program sends nothing else.
    const { file } = data as { readonly file?: string }
    if (open?.window.isMinimized() === true) open.window.restore()
    open?.window.focus()
    if (file !== undefined) void handOver(file)
  })
  // macOS may ask before the program is ready.
  app.on('open-file', (event, path) => {
    event.preventDefault()
    void handOver(path)
  })
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit()
  })
  app.on('activate', () => {
    if (open === undefined) openOne()
  })
  void app.whenReady().then(() => {
    serveScheme(`${outFolder}/window`)
    denyPermissions(session.defaultSession)
    handleMessages({
      places,
      window: () => open?.window,
      setUnsaved: unsaved => open?.closing.setUnsaved(unsaved),
      closeAnswered: may => open?.closing.answered(may),
      ready: () => {
        isReady = true
        if (toOpen !== undefined) void handOver(toOpen)
        toOpen = undefined
      },
    })
    const template = menuTemplate(process.platform, tell)
    Menu.setApplicationMenu(template === undefined ? null : Menu.buildFromTemplate([...template]))
    openOne()
  })
}
