import type { Shelf } from '../../core/detail'

/** A shelf in memory. While `isFull` says so, nothing more can be written. */
export const aShelf = ({ isFull = () => false }: { readonly isFull?: () => boolean } = {}) => {
  const files = new Map<string, Uint8Array>()
  const shelf: Shelf = {
    write: async (path, bytes) => {
      if (isFull()) throw new Error('no space left')
      files.set(path, bytes)
    },
    read: async path => {
      const found = files.get(path)
      if (found === undefined) throw new Error(`no file ${path}`)
      return found
    },
    exists: async path => files.has(path),
    rename: async (from, to) => {
      files.set(to, files.get(from) ?? new Uint8Array())
      files.delete(from)
    },
    remove: async path => void files.delete(path),
    list: async folder =>
      [...files.keys()].filter(it => it.startsWith(`${folder}/`)).map(it => it.slice(folder.length + 1)),
  }
  return { shelf, files }
}
