import { access, mkdir, open, readdir, readFile, rename, rm } from 'node:fs/promises'
import { dirname } from 'node:path'
import type { Shelf } from '../../core/detail'

/** The disk of this machine, each step flushed before it counts as done. */
export const disk: Shelf = {
  write: async (path, bytes) => {
    const file = await open(path, 'w')
    try {
      await file.writeFile(bytes)
      await file.sync()
    } finally {
      await file.close()
    }
  },
  read: async path => new Uint8Array(await readFile(path)),
  exists: path =>
    access(path).then(
      () => true,
      () => false,
    ),
  rename: async (from, to) => {
    await rename(from, to)
    await flushFolder(dirname(to))
  },
  remove: path => rm(path, { force: true }),
  list: async folder => readdir(folder).catch(() => []),
}

/** The same disk, for a place of our own whose folder may not be there yet. */
export const ownDisk: Shelf = {
  ...disk,
  write: async (path, bytes) => {
    await mkdir(dirname(path), { recursive: true })
    await disk.write(path, bytes)
  },
}

/** Makes a new name last through a power cut. Some systems cannot flush a folder; the file itself is safe there too. */
const flushFolder = async (path: string): Promise<void> => {
  const folder = await open(path, 'r').catch(() => undefined)
  await folder?.sync().catch(() => undefined)
  await folder?.close()
}
