import { type BrowserWindow, type IpcMainEvent, type IpcMainInvokeEvent, dialog, ipcMain } from 'electron'
import { basename } from 'node:path'
import type { z } from 'zod'
import { extension } from '../../core/detail'
import { type HostFile, type Written, channels } from '../bridge'
import { asked } from './asked'
import { type Places } from './places'
import { readProject } from './read-project'
import { isOurPage } from './scheme'
import { writeFile } from './write-file'

/** What the handlers need to know of the program. `window` is the one window, while there is one. */
export type Desk = {
  readonly places: Places
  readonly window: () => BrowserWindow | undefined
  readonly setUnsaved: (unsaved: boolean) => void
  readonly closeAnswered: (mayClose: boolean) => void
  readonly ready: () => void
}

/** Answers the messages of the bridge. Each checks who asks and what is asked before it does anything. */
export const handleMessages = (desk: Desk): void => {
  ipcMain.handle(channels.open, (event, ...args) => {
    checked(event, asked.open, args)
    return open(desk)
  })
  ipcMain.handle(channels.save, (event, ...args) => {
    const [token, name, bytes] = checked(event, asked.save, args)
    const path = desk.places.of(token)
    return path === undefined ? saveAs(desk, name, extensionOf(name), bytes) : writeTo(path, token, bytes)
  })
  ipcMain.handle(channels.saveAs, (event, ...args) => {
    const [name, kind, bytes] = checked(event, asked.saveAs, args)
    return saveAs(desk, name, kind, bytes)
  })
  ipcMain.on(channels.unsaved, (event, ...args) => desk.setUnsaved(checked(event, asked.unsaved, args)[0]))
  ipcMain.on(channels.closeAnswered, (event, ...args) =>
    desk.closeAnswered(checked(event, asked.closeAnswered, args)[0]),
  )
  ipcMain.on(channels.ready, (event, ...args) => {
    checked(event, asked.ready, args)
    desk.ready()
  })
}

/** The arguments, once it is sure that our own page sent them and that they have the right form. Throws otherwise. */
const checked = <T>(event: IpcMainEvent | IpcMainInvokeEvent, schema: z.ZodType<T>, args: unknown): T => {
  const frame = event.senderFrame
  if (frame === null || frame.parent !== null || !isOurPage(frame.url))
    throw new Error(`message from ${frame?.url ?? 'nowhere'} refused`)
  const answer = schema.safeParse(args)
  if (!answer.success) throw new Error(`message refused: ${answer.error.issues[0]?.message ?? 'wrong form'}`)
  return answer.data
}

const open = async (desk: Desk): Promise<HostFile | undefined> => {
  const options = {
    properties: ['openFile' as const],
    filters: [{ name: 'Jambwright', extensions: [extension] }],
  }
  const window = desk.window()
  const chosen =
    window === undefined ? await dialog.showOpenDialog(options) : await dialog.showOpenDialog(window, options)
  const path = chosen.canceled ? undefined : chosen.filePaths[0]
  return path === undefined ? undefined : readProject(path, desk.places)
}

const saveAs = async (desk: Desk, name: string, kind: string, bytes: Uint8Array): Promise<Written> => {
  const options = { defaultPath: name, filters: [{ name: kind.toUpperCase(), extensions: [kind] }] }
  const window = desk.window()
  const chosen =
    window === undefined ? await dialog.showSaveDialog(options) : await dialog.showSaveDialog(window, options)
  if (chosen.canceled || chosen.filePath === '') return { kind: 'cancelled' }
  return writeTo(chosen.filePath, desk.places.keep(chosen.filePath), bytes)
}

const writeTo = async (path: string, token: string, bytes: Uint8Array): Promise<Written> => {
  const done = await writeFile(path, bytes)
  return done.ok
    ? { kind: 'written', name: basename(path), token }
    : { kind: 'failed', why: done.problems[0].say }
}

const extensionOf = (name: string): string => /\.([a-z0-9]{1,8})$/.exec(name)?.[1] ?? extension
