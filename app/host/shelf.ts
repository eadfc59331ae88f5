import type { Shelf } from '../../core/detail'
import type { Store } from './store'

/** The store of a browser as a shelf of files, so that copies are kept there by the same steps as on a disk. */
export const shelfIn = (store: Store): Shelf => {
  const read = async (path: string): Promise<Uint8Array> => {
    const found = await store.get(path)
    if (!(found instanceof Uint8Array)) throw new Error(`${path} is not there`)
    return found
  }
  return {
    read,
    write: (path, bytes) => store.put(path, bytes),
    exists: async path => (await store.get(path)) !== undefined,
    rename: async (from, to) => {
      await store.put(to, await read(from))
      await store.remove(from)
    },
    remove: store.remove,
    list: async folder => (await store.names(`${folder}/`)).map(it => it.slice(folder.length + 1)),
  }
}
