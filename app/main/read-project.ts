import { open } from 'node:fs/promises'
import { basename } from 'node:path'
import { filled, same, type Words, words } from '../../core/words'
import type { Read } from '../bridge'
import type { Places } from './places'

/** A file is refused beyond this size before it is read: it holds at most 20 MB of photos, written in base 64. */
export const largestFile_bytes = 40 * 1024 * 1024

/** Reads a file that the user chose. Whatever is wrong with it is said in words. */
export const readProject = async (path: string, places: Places): Promise<Read> => {
  const name = basename(path)
  try {
    const file = await open(path, 'r')
    try {
      const about = await file.stat()
      if (!about.isFile()) return { kind: 'failed', why: filled(noFile, name) }
      if (about.size > largestFile_bytes) return { kind: 'failed', why: filled(tooLarge, name) }
      const bytes = new Uint8Array(await file.readFile())
      return { kind: 'read', file: { name, bytes, token: places.keep(path) } }
    } finally {
      await file.close()
    }
  } catch (error) {
    return { kind: 'failed', why: filled(notRead, name, whyNot(error)) }
  }
}

const whyNot = (error: unknown): Words => {
  const { code } = error as { readonly code?: string } // errors of the system carry one
  if (code === 'ENOENT') return words('it is not there any more', 'sie ist nicht mehr da')
  if (code === 'EACCES' || code === 'EPERM') return words('reading is not allowed', 'Lesen ist nicht erlaubt')
  return same(error instanceof Error ? error.message : String(error))
}

const noFile = words('{0} is not a file', '{0} ist keine Datei')
const tooLarge = words('{0} is larger than 40 MB', '{0} ist größer als 40 MB')
const notRead = words('{0} cannot be read: {1}', '{0} lässt sich nicht lesen: {1}')
