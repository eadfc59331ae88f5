import { copiesIn, extension, keepCopy, letGoOf } from '../../core/detail'
import type { Read, Written } from '../bridge'
import { droppedOne } from './dropped'
import { chosenByInput, chosenPhotos } from './file-input'
import {
  bytesOf,
  calledOff,
  type FileHandle,
  isReadable,
  mediaTypeOf,
  opening,
  type Pickers,
  readHandle,
  whyFailed,
  writeHandle,
  writing,
} from './handles'
import type { Host } from './host'
import { newPlaces } from './places'
import { shelfIn } from './shelf'
import { storeOf } from './store'

/** Where copies lie in the browser's store. */
const copyFolder = 'copies'

/** The host of a plain browser: file pickers where there are any, else a file input and a download. */
export const browserHost = (page: Window): Host => {
  // The browser's own object, seen as the calls that may be missing.
  const pickers = page as unknown as Pickers
  const store = storeOf(page)
  const shelf = shelfIn(store)
  const places = newPlaces(store, () => crypto.randomUUID())

  const saveAs = async (name: string, kind: string, bytes: Uint8Array): Promise<Written> => {
    if (pickers.showSaveFilePicker === undefined) return download(page, name, bytes)
    const pick = pickers.showSaveFilePicker
    return trying(async () => {
      const handle = await pick({ suggestedName: name, types: [writing(kind)] })
      return writeHandle(handle, await places.keep(handle), bytes)
    })
  }

  return {
    kind: 'browser',
    open: () =>
      trying(async () => {
        if (pickers.showOpenFilePicker === undefined) return chosenFile(page)
        const [handle] = await pickers.showOpenFilePicker({ types: [opening] })
        return handle === undefined ? { kind: 'cancelled' } : readHandle(handle, await places.keep(handle))
      }),
    openRecent: token =>
      trying(async () => {
        const handle = await places.of(token)
        if (handle === undefined) throw new DOMException('', 'NotFoundError')
        return readHandle(handle, token)
      }),
    dropped: what =>
      trying(async () => {
        const one = droppedOne(what)
        if (one.kind !== 'file') return one
        const handle = await handleOf(one.item)
        return handle === undefined
          ? { kind: 'read', file: { name: one.file.name, bytes: await bytesOf(one.file), token: '' } }
          : readHandle(handle, await places.keep(handle))
      }),
    photos: () => chosenPhotos(page),
    save: (token, name, bytes) =>
      trying(async () => {
        const handle = await places.of(token)
        return handle === undefined
          ? saveAs(name, extensionOf(name), bytes)
          : writeHandle(handle, token, bytes)
      }),
    saveAs,
    peek: async token => {
      const handle = await places.of(token)
      return handle !== undefined && (await isReadable(handle))
        ? handle.getFile().then(bytesOf, () => undefined)
        : undefined
    },
    recents: places.recents,
    remember: places.remember,
    forget: places.forget,
    forgetAll: places.forgetAll,
    keepCopy: async ({ token, ...copy }) => {
      const done = await keepCopy(shelf, copyFolder, { ...copy, ...(token === '' ? {} : { place: token }) })
      return done.ok ? { kind: 'kept' } : { kind: 'failed', why: done.problems[0].say }
    },
    copies: async () => {
      const held = await heldIn(page)
      // A browser without a store has kept nothing.
      const found = await copiesIn(shelf, copyFolder, new Date()).catch(() => [])
      return found
        .filter(it => !held.has(lockOf(it.document)))
        .map(({ place = '', ...copy }) => ({ ...copy, token: place }))
    },
    letGo: document => letGoOf(shelf, copyFolder, document).catch(() => undefined),
    hold: document => {
      let end: () => void = () => undefined
      const over = new Promise<void>(ended => (end = ended))
      void locksOf(page)?.request(lockOf(document), () => over)
      return end
    },
    print: () => {
      page.print()
      return Promise.resolve()
    },
    about: () => Promise.resolve(undefined),
    restart: () => undefined,
    setLanguage: () => undefined,
    setUnsaved: unsaved => {
      page.onbeforeunload = unsaved
        ? event => {
            event.preventDefault()
          }
        : null
    },
    // A browser puts its own question; a page cannot put another.
    beforeClose: () => undefined,
    listen: () => undefined,
  }
}

/** What the user calls off is no failure; every other fault is said. */
const trying = <T extends Read | Written>(
  what: () => Promise<T>,
): Promise<
  T | { readonly kind: 'cancelled' } | { readonly kind: 'failed'; readonly why: ReturnType<typeof whyFailed> }
> =>
  what().catch((error: unknown) =>
    calledOff(error) ? { kind: 'cancelled' } : { kind: 'failed', why: whyFailed(error) },
  )

/** The name of the lock by which a window says that it works on a document: another offers no copies of it. */
const lockOf = (document: string): string => `jambwright-${document}`

/** Not every browser has locks, and none has them where a page does not come from this machine or by a secure way. */
const locksOf = (page: Window): LockManager | undefined => page.navigator.locks as LockManager | undefined

const heldIn = async (page: Window): Promise<ReadonlySet<string>> =>
  new Set((await locksOf(page)?.query())?.held?.flatMap(it => it.name ?? []))

/** A dropped file as one that can be written again, where the browser gives it. Must be asked while the event is handled. */
const handleOf = async (item: DataTransferItem): Promise<FileHandle | undefined> => {
  // Not every browser has this call.
  const { getAsFileSystemHandle } = item as { getAsFileSystemHandle?: () => Promise<FileSystemHandle | null> }
  const handle = await getAsFileSystemHandle?.call(item).catch(() => null)
  return handle instanceof FileSystemFileHandle ? handle : undefined
}

const extensionOf = (name: string): string => name.slice(name.lastIndexOf('.') + 1)

const download = (page: Window, name: string, bytes: Uint8Array): Written => {
  const link = page.document.createElement('a')
  link.href = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: mediaTypeOf(extensionOf(name)) }))
  link.download = name
  link.click()
  URL.revokeObjectURL(link.href)
  return { kind: 'written', name, token: '' }
}

/** The file that is chosen where the browser has no picker of its own. */
const chosenFile = async (page: Window): Promise<Read> => {
  const [file] = await chosenByInput(page, { accept: `.${extension},.pdf,.svg` })
  return file === undefined
    ? { kind: 'cancelled' }
    : { kind: 'read', file: { name: file.name, bytes: await bytesOf(file), token: '' } }
}
