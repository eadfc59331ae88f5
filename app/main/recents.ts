import { app } from 'electron'
import { basename } from 'node:path'
import { readRecents, type RecentAbout, withoutRecent, withRecent } from '../../core/detail'
import type { RecentFile } from '../bridge'
import { disk } from '../disk'
import type { Keep } from './keep'
import type { Places } from './places'

const fileName = 'recent.json'

/** The files that were opened or saved last, kept from one start to the next, and in the system's own list as well. */
export type Recents = {
  readonly list: () => Promise<readonly RecentFile[]>
  readonly remember: (path: string, about: RecentAbout) => Promise<void>
  readonly forget: (path: string) => Promise<void>
  readonly forgetAll: () => Promise<void>
}

export const newRecents = (keep: Keep, places: Places, changed: () => void): Recents => {
  const read = async () => readRecents(await keep.read(fileName))
  const write = async (list: ReturnType<typeof readRecents>): Promise<void> => {
    await keep.write(fileName, JSON.stringify(list))
    changed()
  }
  return {
    list: async () =>
      Promise.all(
        (await read()).map(async ({ place, ...it }) => ({
          ...it,
          token: places.keep(place),
          isThere: await disk.exists(place),
        })),
      ),
    remember: async (path, about) => {
      app.addRecentDocument(path)
      await write(
        withRecent(await read(), { place: path, name: basename(path), at: new Date().toISOString(), about }),
      )
    },
    forget: async path => write(withoutRecent(await read(), path)),
    forgetAll: async () => {
      app.clearRecentDocuments()
      await write([])
    },
  }
}
