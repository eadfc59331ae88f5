import { readRecents, type Recent, type RecentAbout, withoutRecent, withRecent } from '../../core/detail'
import type { RecentFile } from '../bridge'
import { type FileHandle, isReadable } from './handles'
import type { Store } from './store'

/** The files that the user has given to the page, by tokens that outlive it, and the list of the last ones. */
export type Places = {
  readonly keep: (handle: FileHandle) => Promise<string>
  readonly of: (token: string) => Promise<FileHandle | undefined>
  readonly recents: () => Promise<readonly RecentFile[]>
  readonly remember: (token: string, about: RecentAbout) => Promise<void>
  readonly forget: (token: string) => Promise<void>
  readonly forgetAll: () => Promise<void>
}

const [beginning, listName] = ['place/', 'recent'] as const

/** Places in the browser's store. Where it has none they last as long as the page. */
export const newPlaces = (store: Store, newName: () => string): Places => {
  const here = new Map<string, FileHandle>()

  const of = async (token: string): Promise<FileHandle | undefined> => {
    const known = here.get(token)
    if (known !== undefined || token === '') return known
    const found = await store.get(beginning + token).catch(() => undefined)
    if (!(found instanceof FileSystemFileHandle)) return undefined
    here.set(token, found)
    return found
  }
  const tokens = async (): Promise<readonly string[]> => [
    ...new Set([
      ...here.keys(),
      ...(await store.names(beginning).catch(() => [])).map(it => it.slice(beginning.length)),
    ]),
  ]
  const list = async (): Promise<readonly Recent[]> =>
    readRecents(String((await store.get(listName).catch(() => '')) ?? ''))
  const setList = (to: readonly Recent[]): Promise<void> =>
    // A list that cannot be kept is missed by nobody's work.
    store.put(listName, JSON.stringify(to)).catch(() => undefined)

  return {
    of,
    keep: async handle => {
      for (const token of await tokens()) if (await (await of(token))?.isSameEntry(handle)) return token
      const token = newName()
      here.set(token, handle)
      await store.put(beginning + token, handle).catch(() => undefined)
      return token
    },
    recents: async () =>
      Promise.all(
        (await list()).map(async ({ place, ...it }) => ({
          ...it,
          token: place,
          isThere: await isThere(await of(place)),
        })),
      ),
    remember: async (token, about) => {
      const handle = await of(token)
      if (handle === undefined) return
      const next = withRecent(await list(), {
        place: token,
        name: handle.name,
        at: new Date().toISOString(),
        about,
      })
      await setList(next)
      for (const old of await tokens())
        if (!here.has(old) && !next.some(it => it.place === old))
          await store.remove(beginning + old).catch(() => undefined)
    },
    forget: async token => setList(withoutRecent(await list(), token)),
    forgetAll: () => setList([]),
  }
}

/** Whether a file is still there. One that cannot be looked at without asking counts as there. */
const isThere = async (handle: FileHandle | undefined): Promise<boolean> => {
  if (handle === undefined) return false
  if (!(await isReadable(handle))) return true
  return handle.getFile().then(
    () => true,
    () => false,
  )
}
