import { open } from 'node:fs/promises'
import { basename } from 'node:path'
import type { HostFile } from '../bridge'
import type { Places } from './places'

/** A project file is refused beyond this size before it is read: it holds at most 20 MB of photos, written in base 64. */
export const largestFile_bytes = 40 * 1024 * 1024

/** Reads a project file that the user chose. Fails with words where it is too large or no file. */
export const readProject = async (path: string, places: Places): Promise<HostFile> => {
  const file = await open(path, 'r')
  try {
    const about = await file.stat()
    if (!about.isFile()) throw new Error(`${basename(path)} is not a file`)
    if (about.size > largestFile_bytes) throw new Error(`${basename(path)} is larger than 40 MB`)
    return { name: basename(path), bytes: new Uint8Array(await file.readFile()), token: places.keep(path) }
  } finally {
    await file.close()
  }
}
