import { z } from 'zod'

/** What a list of recent files shows of a project without opening it. */
export type RecentAbout = {
  /** name and number of the project, as its title block has them */
  readonly title: string
  /** the wall and the size of the first opening, in words of the list's time */
  readonly of: string
  /** the worst verdict and how many findings have it; absent: never judged */
  readonly worst?: { readonly verdict: string; readonly count: number }
}

/** A file that was opened or saved: where it lies (a path, or a key of the host's own), and when that was. */
export type Recent = {
  readonly place: string
  readonly name: string
  /** ISO 8601 */
  readonly at: string
  readonly about: RecentAbout
}

/** So many files are remembered. *Ours*: they fit on the start view without scrolling. */
export const recentLength = 10

/** The list with a file at its top, named once, and no longer than it may be. */
export const withRecent = (list: readonly Recent[], file: Recent): readonly Recent[] =>
  [file, ...withoutRecent(list, file.place)].slice(0, recentLength)

/** The list without a file. */
export const withoutRecent = (list: readonly Recent[], place: string): readonly Recent[] =>
  list.filter(it => it.place !== place)

const text = z.string().max(2000)

export const recentAbout: z.ZodType<RecentAbout> = z.strictObject({
  title: text,
  of: text,
  worst: z.strictObject({ verdict: z.string().max(40), count: z.int().min(0).max(100_000) }).exactOptional(),
})

const recents = z
  .array(z.strictObject({ place: text.min(1), name: text.min(1), at: z.iso.datetime(), about: recentAbout }))
  .max(100)

/** Reads a remembered list. What cannot be read counts as no list: it is a convenience, not somebody's work. */
export const readRecents = (stored: string): readonly Recent[] => {
  try {
    const found = recents.safeParse(JSON.parse(stored))
    return found.success ? found.data.slice(0, recentLength) : []
  } catch {
    return []
  }
}
