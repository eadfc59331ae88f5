import { filled, same, type Words, words } from '../../core/words'
import { extension } from '../../core/detail'
import type { Read, Written } from '../bridge'

/** The parts of a browser's file access that are used. Not every browser has them, and the DOM library does not know them all. */
export type Pickers = {
  readonly showOpenFilePicker?: (options: object) => Promise<readonly FileHandle[]>
  readonly showSaveFilePicker?: (options: object) => Promise<FileHandle>
}

/** A file that the user has given to the page, with the permissions that it may have to ask for again. */
export type FileHandle = FileSystemFileHandle & {
  readonly queryPermission?: (how: { readonly mode: Mode }) => Promise<PermissionState>
  readonly requestPermission?: (how: { readonly mode: Mode }) => Promise<PermissionState>
}
type Mode = 'read' | 'readwrite'

const mediaTypes: Readonly<Record<string, string>> = {
  svg: 'image/svg+xml',
  pdf: 'application/pdf',
  dxf: 'image/vnd.dxf',
  csv: 'text/csv',
}

export const mediaTypeOf = (kind: string): string => mediaTypes[kind] ?? 'application/octet-stream'

/** What a picker offers to write: files of one kind. */
export const writing = (kind: string) => ({ accept: { [mediaTypeOf(kind)]: [`.${kind}`] } })

/** What a picker offers to open: projects, and sheets that carry one. */
export const opening = {
  accept: {
    'application/octet-stream': [`.${extension}`],
    'application/pdf': ['.pdf'],
    'image/svg+xml': ['.svg'],
  },
}

export const bytesOf = async (file: Blob): Promise<Uint8Array> => new Uint8Array(await file.arrayBuffer())

/** Whether the user has called something off, which is no failure. */
export const calledOff = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'AbortError'

/** What went wrong with a file, in words. */
export const whyFailed = (error: unknown): Words =>
  error instanceof DOMException && error.name === 'NotFoundError'
    ? words('it is not there any more', 'sie ist nicht mehr da')
    : error instanceof DOMException && error.name === 'NotAllowedError'
      ? words('the browser was not allowed to', 'der Browser durfte nicht')
      : same(error instanceof Error ? error.message : String(error))

/** Whether a file may be read without asking anybody. */
export const isReadable = async (handle: FileHandle): Promise<boolean> =>
  handle.queryPermission === undefined || (await handle.queryPermission({ mode: 'read' })) === 'granted'

/** Reads a file, asking for it where the browser wants that. */
export const readHandle = async (handle: FileHandle, token: string): Promise<Read> => {
  if (!(await isReadable(handle)) && (await handle.requestPermission?.({ mode: 'read' })) !== 'granted')
    return { kind: 'cancelled' }
  const file = await handle.getFile()
  return { kind: 'read', file: { name: file.name, bytes: await bytesOf(file), token } }
}

/** Writes and reads back: what is called written was seen on the disk. */
export const writeHandle = async (handle: FileHandle, token: string, bytes: Uint8Array): Promise<Written> => {
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
