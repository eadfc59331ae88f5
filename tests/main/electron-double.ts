type Listener = (...args: unknown[]) => unknown

/** A small double of the desktop runtime: it records what is registered and asked, and lets a test play the other side. */
export const newDouble = () => {
  const handlers = new Map<string, Listener>()
  const listeners = new Map<string, Listener>()
  return {
    handlers,
    listeners,
    /** what the program did to the runtime, in order */
    done: [] as (readonly [what: string, ...args: unknown[]])[],
    answers: {
      open: { canceled: true, filePaths: [] as string[] },
      save: { canceled: true, filePath: '' },
      userData: '',
      isFirst: true,
      locale: 'en-GB',
      screens: [{ workArea: { x: 0, y: 0, width: 1920, height: 1040 } }],
    },
    /** calls a handler as a frame with this address would */
    ask(channel: string, from: string, ...args: readonly unknown[]): Promise<unknown> {
      const handler = handlers.get(channel)
      if (handler === undefined) throw new Error(`nobody handles ${channel}`)
      return Promise.resolve().then(() => handler(frameOf(from), ...args))
    },
    /** sends a message as a frame with this address would */
    send(channel: string, from: string, ...args: readonly unknown[]): void {
      listeners.get(channel)?.(frameOf(from), ...args)
    },
    /** tells the program something as the system does */
    happen(event: string, ...args: readonly unknown[]): void {
      listeners.get(`app:${event}`)?.(...args)
    },
  }
}

const frameOf = (url: string) => ({
  senderFrame: { url: url.replace('#inner', ''), parent: url.includes('#inner') ? {} : null },
})

export const double = newDouble()
const did = (what: string, ...args: unknown[]): void => void double.done.push([what, ...args])

export const ipcMain = {
  handle: (channel: string, handler: Listener) => double.handlers.set(channel, handler),
  on: (channel: string, listener: Listener) => double.listeners.set(channel, listener),
}

export const dialog = {
  showOpenDialog: () => Promise.resolve(double.answers.open),
  showSaveDialog: () => Promise.resolve(double.answers.save),
}

export const protocol = {
  handle: (scheme: string, serve: Listener) => double.handlers.set(`scheme:${scheme}`, serve),
  registerSchemesAsPrivileged: (schemes: unknown) => did('registerSchemes', schemes),
}

export const app = {
  on: (event: string, listener: Listener) => double.listeners.set(`app:${event}`, listener),
  getPath: () => double.answers.userData,
  getLocale: () => double.answers.locale,
  getVersion: () => '1.2.3',
  whenReady: () => Promise.resolve(),
  requestSingleInstanceLock: (data: unknown) => {
    did('lock', data)
    return double.answers.isFirst
  },
  enableSandbox: () => did('enableSandbox'),
  disableHardwareAcceleration: () => did('disableHardwareAcceleration'),
  quit: () => did('quit'),
  relaunch: (how: unknown) => did('relaunch', how),
  addRecentDocument: (path: string) => did('addRecentDocument', path),
  clearRecentDocuments: () => did('clearRecentDocuments'),
}

export const Menu = {
  buildFromTemplate: (template: unknown) => template,
  setApplicationMenu: (menu: unknown) => did('menu', menu),
}

export const screen = { getAllDisplays: () => double.answers.screens }

export const session = {
  defaultSession: {
    setPermissionRequestHandler: (it: unknown) => did('permissionRequest', it),
    setPermissionCheckHandler: (it: unknown) => did('permissionCheck', it),
    setDevicePermissionHandler: (it: unknown) => did('devicePermission', it),
  },
}

/** A window that records what its program asks of it. */
export class BrowserWindow {
  static made: BrowserWindow[] = []
  readonly heard = new Map<string, Listener>()
  readonly sent: unknown[] = []
  readonly told: unknown[] = []
  readonly printed: unknown[] = []
  isOpen = true
  isMinimised = false
  isFocused = false
  isMaximised = false
  hasCrashed = false
  bounds = { x: 10, y: 20, width: 1300, height: 800 }
  readonly webContents = {
    send: (channel: string, message?: unknown) => {
      this.sent.push(channel)
      this.told.push(message)
    },
    isCrashed: () => this.hasCrashed,
    on: (name: string, listener: Listener) => this.heard.set(name, listener),
    print: (options: unknown) => this.printed.push(options),
  }
  constructor(readonly options: unknown) {
    BrowserWindow.made.push(this)
  }
  on(name: string, listener: Listener) {
    this.heard.set(name, listener)
  }
  once(name: string, listener: Listener) {
    this.heard.set(name, listener)
  }
  show() {}
  setDocumentEdited() {}
  maximize() {
    this.isMaximised = true
  }
  isMaximized() {
    return this.isMaximised
  }
  getNormalBounds() {
    return this.bounds
  }
  isMinimized() {
    return this.isMinimised
  }
  restore() {
    this.isMinimised = false
  }
  focus() {
    this.isFocused = true
  }
  loadURL(address: string) {
    this.sent.push(address)
    return Promise.resolve()
  }
  close() {
    let isHeld = false
    this.heard.get('close')?.({ preventDefault: () => (isHeld = true) })
    if (!isHeld) this.isOpen = false
  }
}
