import { open, readFile, rename, unlink } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'

/**
 * Writes a file so that at every moment either the old or the new one is whole: beside it, flushed to the disk,
 * read back and compared, then put in its place. Fails with the system's error; the old file is then untouched.
 */
export const writeSafely = async (path: string, bytes: Uint8Array): Promise<void> => {
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`)
  try {
    await writeFlushed(beside, bytes)
    const back = await readFile(beside)
    if (!back.equals(bytes))
      throw new Error(`read back ${back.length} of ${bytes.length} bytes, not the same`)
    await rename(beside, path)
    await flushFolder(dirname(path))
  } catch (error) {
    await unlink(beside).catch(() => undefined)
    throw error
  }
}

const writeFlushed = async (path: string, bytes: Uint8Array): Promise<void> => {
  const file = await open(path, 'w')
  try {
    await file.writeFile(bytes)
    await file.sync()
  } finally {
    await file.close()
  }
}

/** Makes the new name last through a power cut. Some systems cannot flush a folder; the file itself is safe there too. */
const flushFolder = async (path: string): Promise<void> => {
  const folder = await open(path, 'r').catch(() => undefined)
  await folder?.sync().catch(() => undefined)
  await folder?.close()
}
