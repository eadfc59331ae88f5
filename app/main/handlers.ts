import { type BrowserWindow, type IpcMainEvent, type IpcMainInvokeEvent, dialog, ipcMain } from 'electron'
import { basename, extname } from 'node:path'
import type { z } from 'zod'
import { extension } from '../../core/detail'
import { filled, type Language, words } from '../../core/words'
import { type About, type Paper, type Read, type Written, channels } from '../bridge'
import { asked } from './asked'
import type { Copies } from './copies'
import { disk } from '../disk'
import { type Places } from './places'
import { largestFile_bytes, readProject } from './read-project'
import type { Recents } from './recents'
import { isOurPage } from './scheme'
import { writeFile } from './write-file'

/** What the handlers need to know of the program. `window` is the one window, while there is one. */
export type Desk = {
  readonly places: Places
  readonly recents: Recents
  readonly copies: Copies
  readonly window: () => BrowserWindow | undefined
  readonly language: () => Language
  readonly about: () => About
  readonly restart: (how: 'usual' | 'safe') => void
  readonly setLanguage: (language: Language) => void
  readonly setUnsaved: (unsaved: boolean) => void
  readonly closeAnswered: (mayClose: boolean) => void
  readonly ready: () => void
}

/** Answers the messages of the bridge. Each checks who asks and what is asked before it does anything. */
export const handleMessages = (desk: Desk): void => {
  const { places, recents, copies } = desk
  answer('open', () => open(desk))
  answer('openRecent', token => {
    const path = places.of(token)
    return path === undefined ? unknownPlace : readProject(path, places)
  })
  answer('dropped', path =>
    isOpenable(path) ? readProject(path, places) : { kind: 'failed', why: filled(otherKind, basename(path)) },
  )
  answer('save', (token, name, bytes) => {
    const path = places.of(token)
    return path === undefined ? saveAs(desk, name, extensionOf(name), bytes) : writeTo(path, token, bytes)
  })
  answer('saveAs', (name, kind, bytes) => saveAs(desk, name, kind, bytes))
  answer('peek', token => {
    const path = places.of(token)
    return path === undefined ? undefined : peek(path)
  })
  answer('recents', () => recents.list())
  answer('remember', (token, about) => {
    const path = places.of(token)
    return path === undefined ? undefined : recents.remember(path, about)
  })
  answer('forget', token => {
    const path = places.of(token)
    return path === undefined ? undefined : recents.forget(path)
  })
  answer('forgetAll', () => recents.forgetAll())
  answer('keepCopy', copy => copies.keep(copy))
  answer('copies', () => copies.list())
  answer('letGo', document => copies.letGo(document))
  answer('print', paper => print(desk.window(), paper))
  answer('about', () => desk.about())
  hear('restart', how => desk.restart(how))
  hear('language', language => desk.setLanguage(language))
  hear('unsaved', unsaved => desk.setUnsaved(unsaved))
  hear('closeAnswered', may => desk.closeAnswered(may))
  hear('ready', () => desk.ready())
}

type Asked = typeof asked
type Question = keyof Asked
type Arguments<Q extends Question> = z.infer<Asked[Q]>

/** Answers a question of our own page; what it is asked with has the right form by then. */
const answer = <Q extends Question>(question: Q, how: (...args: Arguments<Q>) => unknown): void =>
  ipcMain.handle(channels[question], (event, ...args) => how(...checked(event, question, args)))

/** Hears what our own page says, and answers nothing. */
const hear = <Q extends Question>(question: Q, how: (...args: Arguments<Q>) => void): void => {
  ipcMain.on(channels[question], (event, ...args) => how(...checked(event, question, args)))
}

/** The arguments, once it is sure that our own page sent them and that they have the right form. Throws otherwise. */
const checked = <Q extends Question>(
  event: IpcMainEvent | IpcMainInvokeEvent,
  question: Q,
  args: unknown,
): Arguments<Q> => {
  const frame = event.senderFrame
  if (frame === null || frame.parent !== null || !isOurPage(frame.url))
    throw new Error(`message from ${frame?.url ?? 'nowhere'} refused`)
  const found = asked[question].safeParse(args)
  if (!found.success) throw new Error(`message refused: ${found.error.issues[0]?.message ?? 'wrong form'}`)
  // The schema of this very question has read them.
  return found.data as Arguments<Q>
}

/** What can be opened: projects, and sheets that carry one. */
const openable = [extension, 'pdf', 'svg']
const isOpenable = (path: string): boolean => openable.includes(extname(path).slice(1).toLowerCase())

const otherKind = words(
  '{0} is no project file and no sheet that could carry one',
  '{0} ist keine Projektdatei und kein Blatt, das eine tragen könnte',
)
const unknownPlace: Read = {
  kind: 'failed',
  why: words('this file is not known any more', 'diese Datei ist nicht mehr bekannt'),
}

const open = async (desk: Desk): Promise<Read> => {
  const language = desk.language()
  const options = {
    properties: ['openFile' as const],
    filters: [
      { name: filterName[language], extensions: openable },
      { name: 'Jambwright', extensions: [extension] },
    ],
  }
  const window = desk.window()
  const chosen =
    window === undefined ? await dialog.showOpenDialog(options) : await dialog.showOpenDialog(window, options)
  const path = chosen.canceled ? undefined : chosen.filePaths[0]
  return path === undefined ? { kind: 'cancelled' } : readProject(path, desk.places)
}

const filterName = words('Projects and sheets with a project', 'Projekte und Blätter mit Projekt')

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

/** What a file holds now; nothing where it is gone or has become something huge. */
const peek = async (path: string): Promise<Uint8Array | undefined> =>
  disk.read(path).then(
    bytes => (bytes.byteLength <= largestFile_bytes ? bytes : undefined),
    () => undefined,
  )

/**
 * Prints the page at true size: the paper is the sheet, margins are none, nothing is fitted. Sizes go to the runtime in
 * micrometres. The user still chooses the printer in the system's own dialog.
 */
const print = (window: BrowserWindow | undefined, { width_mm, height_mm }: Paper): void =>
  window?.webContents.print({
    silent: false,
    printBackground: true,
    margins: { marginType: 'none' },
    scaleFactor: 100,
    pageSize: { width: Math.round(width_mm * 1000), height: Math.round(height_mm * 1000) },
  })

const extensionOf = (name: string): string => /\.([a-z0-9]{1,8})$/.exec(name)?.[1] ?? extension
