import type { HostFile, Written } from '../bridge'
import { extension } from '../../core/detail'
import { filled, same, words } from '../../core/words'
import type { Host } from './host'

/** The parts of a browser's file access that are used. Not every browser has them, and the DOM library does not know them all. */
type Pickers = {
  readonly showOpenFilePicker?: (options: object) => Promise<readonly FileSystemFileHandle[]>
  readonly showSaveFilePicker?: (options: object) => Promise<FileSystemFileHandle>
}

/** The host of a plain browser: file pickers where there are any, else a file input and a download. */
export const browserHost = (page: Window): Host => {
  // The browser's own object, seen as the calls that may be missing.
  const pickers = page as unknown as Pickers
  const places = new Map<string, FileSystemFileHandle>()

  const keep = (handle: FileSystemFileHandle): string => {
    const token = `place-${places.size + 1}`
    places.set(token, handle)
    return token
  }

  const saveAs = async (name: string, kind: string, bytes: Uint8Array): Promise<Written> => {
    if (pickers.showSaveFilePicker === undefined) return download(page, name, bytes)
    try {
      const handle = await pickers.showSaveFilePicker({ suggestedName: name, types: [acceptOf(kind)] })
      return await write(handle, keep(handle), bytes)
    } catch (error) {
      return calledOff(error) ? { kind: 'cancelled' } : { kind: 'failed', why: same(String(error)) }
    }
  }

  return {
    kind: 'browser',
    open: async () => {
      if (pickers.showOpenFilePicker === undefined) return chosenByInput(page)
      try {
        const [handle] = await pickers.showOpenFilePicker({ types: [acceptOf(extension)] })
        if (handle === undefined) return undefined
        const file = await handle.getFile()
        return { name: file.name, bytes: await bytesOf(file), token: keep(handle) }
      } catch (error) {
        if (calledOff(error)) return undefined
        throw error
      }
    },
    save: async (token, name, bytes) => {
      const handle = places.get(token)
      if (handle === undefined) return saveAs(name, extensionOf(name), bytes)
      try {
        return await write(handle, token, bytes)
      } catch (error) {
        return { kind: 'failed', why: same(String(error)) }
      }
    },
    saveAs,
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

const extensionOf = (name: string): string => name.slice(name.lastIndexOf('.') + 1)

const mediaTypes: Readonly<Record<string, string>> = {
  svg: 'image/svg+xml',
  pdf: 'application/pdf',
  dxf: 'image/vnd.dxf',
}

const acceptOf = (kind: string) => ({
  accept: { [mediaTypes[kind] ?? 'application/octet-stream']: [`.${kind}`] },
})

const calledOff = (error: unknown): boolean => error instanceof DOMException && error.name === 'AbortError'

const bytesOf = async (file: Blob): Promise<Uint8Array> => new Uint8Array(await file.arrayBuffer())

/** Writes and reads back: what is called written was seen on the disk. */
const write = async (handle: FileSystemFileHandle, token: string, bytes: Uint8Array): Promise<Written> => {
  const stream = await handle.createWritable()
  await stream.write(new Uint8Array(bytes))
  await stream.close()
  const back = await bytesOf(await handle.getFile())
  if (back.length !== bytes.length || back.some((byte, i) => byte !== bytes[i]))
    return {
      kind: 'failed',
      why: filled(
        words('{0}: read back {1} of {2} bytes', '{0}: {1} von {2} Byte zurückgelesen'),
        handle.name,
        `${back.length}`,
        `${bytes.length}`,
      ),
    }
  return { kind: 'written', name: handle.name, token }
}

const download = (page: Window, name: string, bytes: Uint8Array): Written => {
  const link = page.document.createElement('a')
  const type = mediaTypes[extensionOf(name)] ?? 'application/octet-stream'
  link.href = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type }))
  link.download = name
  link.click()
  URL.revokeObjectURL(link.href)
  return { kind: 'written', name, token: '' }
}

const chosenByInput = (page: Window): Promise<HostFile | undefined> =>
  new Promise(answer => {
    const input = page.document.createElement('input')
    input.type = 'file'
    input.accept = `.${extension}`
    input.addEventListener('cancel', () => answer(undefined))
    input.addEventListener('change', () => {
      const file = input.files?.[0]
      if (file === undefined) answer(undefined)
      else void bytesOf(file).then(bytes => answer({ name: file.name, bytes, token: '' }))
    })
    input.click()
  })
