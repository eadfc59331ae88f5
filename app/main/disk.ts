import { access, open, readFile, rename, rm } from 'node:fs/promises'
import { dirname } from 'node:path'
import type { Disk } from '../../core/detail'

/** The disk of this machine, each step flushed before it counts as done. */
export const disk: Disk = {
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
}

/** Makes a new name last through a power cut. Some systems cannot flush a folder; the file itself is safe there too. */
const flushFolder = async (path: string): Promise<void> => {
  const folder = await open(path, 'r').catch(() => undefined)
  await folder?.sync().catch(() => undefined)
  await folder?.close()
}
