import { type BrowserWindow, Menu, app, screen, session } from 'electron'
import { extension } from '../../core/detail'
import type { Language } from '../../core/words'
import { type HostNews, type MenuCommand, channels } from '../bridge'
import { openingBounds } from './bounds'
import { copiesUnder } from './copies'
import { denyPermissions, guardPages } from './guard'
import { handleMessages } from './handlers'
import { keepIn } from './keep'
import { menuTemplate } from './menu'
import { type Closing, openWindow } from './open-window'
import { newPlaces } from './places'
import { readProject } from './read-project'
import { newRecents } from './recents'
import { isSafeStart, rememberSafeStart, safeSwitch } from './safe-start'
import { announceScheme, serveScheme } from './scheme'

/** How the program is started: where the built files lie, on which system, and with which arguments. */
export type Start = {
  readonly outFolder: string
  readonly platform: string
  readonly args: readonly string[]
}

/** The desktop program: one program, one window. A second start hands its file to the first and ends. */
export const startProgram = ({ outFolder, platform, args }: Start): void => {
  const userData = app.getPath('userData')
  // Before the lock: a second start would hand this switch to a program that has its graphics already.
  const isSafe = isSafeStart(userData, args)
  if (isSafe) app.disableHardwareAcceleration()
  app.enableSandbox()
  announceScheme()
  guardPages(app)

  let toOpen = projectAmong(args)
  let open: { readonly window: BrowserWindow; readonly closing: Closing } | undefined
  let isReady = false
  let isQuitting = false
  let isRestarting = false
  let language: Language = app.getLocale().startsWith('de') ? 'de' : 'en'

  const places = newPlaces()
  const keep = keepIn(userData)
  const copies = copiesUnder(userData, places)
  const recents = newRecents(keep, places, () => void showMenu())
  const tell = (news: HostNews): void => open?.window.webContents.send(channels.news, news)

  /** Hands a file from outside to the page, once the page listens. */
  const handOver = async (path: string): Promise<void> => {
    if (isReady) tell({ kind: 'file', read: await readProject(path, places) })
    else toOpen = path
  }
  const openRecent = (token: string): void => {
    const path = places.of(token)
    if (path !== undefined) void handOver(path)
  }
  const forget = (token: string): void => {
    const path = places.of(token)
    if (path !== undefined) void recents.forget(path)
  }
  const restart = (how: 'usual' | 'safe'): void => {
    rememberSafeStart(userData, how === 'safe')
    isRestarting = true
    // Not exit: unsaved work still asks, and who cancels does not restart after all.
    app.quit()
  }
  const showMenu = async (): Promise<void> => {
    const template = menuTemplate({
      platform,
      language,
      isSafe,
      recents: await recents.list(),
      give: (command: MenuCommand) => tell({ kind: 'command', command }),
      openRecent,
      forget,
      forgetAll: () => void recents.forgetAll(),
      restart,
    })
    Menu.setApplicationMenu(Menu.buildFromTemplate([...template]))
  }
  const openOne = async (): Promise<void> => {
    isReady = false
    const screens = screen.getAllDisplays().map(it => it.workArea)
    const opening = openingBounds(await keep.read('window.json'), screens)
    open = openWindow(outFolder, {
      opening,
      remember: bounds => void keep.write('window.json', bounds),
      sample: sampleAmong(args),
    })
    open.window.on('closed', () => (open = undefined))
  }

  if (!app.requestSingleInstanceLock({ file: toOpen })) {
    app.quit()
    return
  }
  app.on('second-instance', (_event, _args, _folder, data) => {
    if (open?.window.isMinimized() === true) open.window.restore()
    open?.window.focus()
    const file = fileIn(data)
    if (file !== undefined) void handOver(file)
  })
  // macOS may ask before the program is ready.
  app.on('open-file', (event, path) => {
    event.preventDefault()
    void handOver(path)
  })
  // Who cancels the question about unsaved work does not quit after all.
  app.on('before-quit', () => (isQuitting = true))
  app.on('will-quit', () => {
    if (isRestarting) app.relaunch({ args: args.filter(it => it !== safeSwitch) })
  })
  app.on('window-all-closed', () => {
    if (platform !== 'darwin') app.quit()
  })
  app.on('activate', () => {
    if (open === undefined) void openOne()
  })
  void app.whenReady().then(async () => {
    serveScheme(`${outFolder}/window`)
    denyPermissions(session.defaultSession)
    const kept = await keep.read('language')
    if (kept === 'de' || kept === 'en') language = kept
    handleMessages({
      places,
      recents,
      copies,
      window: () => open?.window,
      language: () => language,
      about: () => ({ version: app.getVersion(), isSafe }),
      restart,
      setLanguage: to => {
        language = to
        void keep.write('language', to)
        void showMenu()
      },
      setUnsaved: unsaved => open?.closing.setUnsaved(unsaved),
      closeAnswered: may => {
        open?.closing.answered(may)
        if (may && isQuitting) app.quit()
        isQuitting &&= may
        isRestarting &&= may
      },
      ready: () => {
        isReady = true
        if (toOpen !== undefined) void handOver(toOpen)
        toOpen = undefined
      },
    })
    await showMenu()
    await openOne()
  })
}

/** The project among the arguments of a start. */
const projectAmong = (args: readonly string[]): string | undefined =>
  args.find(it => it.toLowerCase().endsWith(`.${extension}`))

/** The sample that a start asks for, by the name of its file. */
const sampleAmong = (args: readonly string[]): string | undefined =>
  args.flatMap(it => /^--sample=([a-z0-9-]{1,60})$/.exec(it)?.[1] ?? [])[0]

/** The file that a second start hands over. Its arguments are not looked at: the system may have reordered them. */
const fileIn = (data: unknown): string | undefined =>
  typeof data === 'object' && data !== null && 'file' in data && typeof data.file === 'string'
    ? data.file
    : undefined
