import { join } from 'node:path'
import { textOf } from '../../core/detail'
import { ownDisk } from '../disk'

/** Small texts that the program remembers from one start to the next, in the folder of the user's data. */
export type Keep = {
  /** empty where nothing can be read */
  readonly read: (name: string) => Promise<string>
  /** written beside and renamed, so that a power cut leaves the old or the new; a failure is no user's loss */
  readonly write: (name: string, text: string) => Promise<void>
}

export const keepIn = (folder: string): Keep => {
  let last: Promise<void> = Promise.resolve()
  return {
    read: name =>
      ownDisk.read(join(folder, name)).then(
        bytes => textOf(bytes) ?? '',
        () => '',
      ),
    write: (name, text) => {
      const path = join(folder, name)
      // One after the other: two writes at once would share the file beside.
      last = last
        .then(() => ownDisk.write(`${path}.part`, new TextEncoder().encode(text)))
        .then(() => ownDisk.rename(`${path}.part`, path))
        .catch(() => undefined)
      return last
    },
  }
}
