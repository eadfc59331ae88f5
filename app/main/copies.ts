import { join } from 'node:path'
import { copiesIn, keepCopy, letGoOf } from '../../core/detail'
import type { Kept, KeptCopy } from '../bridge'
import { ownDisk } from '../disk'
import type { Places } from './places'

/** Copies of unsaved work in a folder of the user's data. The window never sees where a file lies, only its token. */
export type Copies = {
  readonly keep: (copy: KeptCopy) => Promise<Kept>
  readonly list: () => Promise<readonly KeptCopy[]>
  readonly letGo: (document: string) => Promise<void>
}

export const copiesUnder = (userData: string, places: Places): Copies => {
  const folder = join(userData, 'copies')
  return {
    keep: async ({ token, ...copy }) => {
      const place = places.of(token)
      const done = await keepCopy(ownDisk, folder, { ...copy, ...(place === undefined ? {} : { place }) })
      return done.ok ? { kind: 'kept' } : { kind: 'failed', why: done.problems[0].say }
    },
    list: async () =>
      (await copiesIn(ownDisk, folder, new Date())).map(({ place, ...copy }) => ({
        ...copy,
        token: place === undefined ? '' : places.keep(place),
      })),
    letGo: document => letGoOf(ownDisk, folder, document),
  }
}
