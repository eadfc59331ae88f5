type Listener = (...args: unknown[]) => unknown

/** A small double of the desktop runtime: it records what is registered and lets a test play the other side. */
export const newDouble = () => {
  const handlers = new Map<string, Listener>()
  const listeners = new Map<string, Listener>()
  return {
    handlers,
    listeners,
    answers: { open: { canceled: true, filePaths: [] as string[] }, save: { canceled: true, filePath: '' } },
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
  }
}

const frameOf = (url: string) => ({
  senderFrame: { url: url.replace('#inner', ''), parent: url.includes('#inner') ? {} : null },
})

export const double = newDouble()

export const ipcMain = {
  handle: (channel: string, handler: Listener) => double.handlers.set(channel, handler),
  on: (channel: string, listener: Listener) => double.listeners.set(channel, listener),
}

export const dialog = {
  showOpenDialog: () => Promise.resolve(double.answers.open),
  showSaveDialog: () => Promise.resolve(double.answers.save),
  showErrorBox: () => undefined,
}

export const protocol = {
  handle: (scheme: string, serve: Listener) => double.handlers.set(`scheme:${scheme}`, serve),
  registerSchemesAsPrivileged: () => undefined,
}

/** A window that records what its program asks of it. */
export class BrowserWindow {
  static made: BrowserWindow[] = []
  readonly heard = new Map<string, Listener>()
  readonly sent: unknown[] = []
  isOpen = true
  readonly webContents = {
    send: (channel: string) => this.sent.push(channel),
    isCrashed: () => this.hasCrashed,
  }
  hasCrashed = false
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
