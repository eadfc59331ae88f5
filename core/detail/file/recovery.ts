import { utf8ToBytes } from '@noble/hashes/utils.js'
import { z } from 'zod'
import type { Result } from '../../units'
import { contentDigest } from './elsewhere'
import { openProject } from './open'
import { digestOfRead } from './save'
import { type Disk, saveSafely } from './save-safely'
import { textOf } from './utf-8'

/**
 * A copy of open work that no file holds yet. It lies apart from the user's files and is offered after a crash.
 * `document` names the work as long as it is open, whatever file it goes to; `stamp` is the digest of the project that
 * its file held when the copy was made, empty where there is no file.
 */
export type Copy = {
  readonly document: string
  readonly stamp: string
  readonly name: string
  /** ISO 8601, when the copy was made */
  readonly at: string
  /** where its file lies, as the host knows it */
  readonly place?: string
  /** the project as a file would hold it */
  readonly text: string
}

/** A disk that can also list what is in a folder: names without their path; an absent folder is empty. */
export type Shelf = Disk & { readonly list: (folder: string) => Promise<readonly string[]> }

/** A copy is due after so many edits or so long after the first one. *Ours*: half a minute's work can be done again. */
export const copyAfter = { edits: 20, ms: 30_000 } as const

/** So many copies of one document are kept, so that a bad one leaves older ones. *Ours.* */
export const generations = 5

/** Copies are offered so long. *Ours*: a fortnight's leave. */
export const daysKept = 14

const documentName = /^[a-z0-9-]{1,64}$/
const fileName = /^([a-z0-9-]{1,64})\.(\d{17})\.copy$/

const schema = z.strictObject({
  format: z.literal('jambwright-copy'),
  document: z.string().regex(documentName),
  stamp: z.string().max(200),
  name: z.string().min(1).max(300),
  at: z.iso.datetime({ precision: 3 }),
  place: z.string().max(5000).exactOptional(),
  text: z.string(),
  digest: z.string(),
})

/** Writes a copy, proves it by reading it back, and lets the oldest beyond the kept ones go. Nothing is thrown. */
export const keepCopy = async (
  shelf: Shelf,
  folder: string,
  copy: Copy,
): Promise<Result<{ readonly path: string }>> => {
  if (!documentName.test(copy.document)) throw new Error(`"${copy.document}" does not name a document`)
  const path = `${folder}/${copy.document}.${copy.at.replace(/\D/g, '')}.copy`
  const done = await saveSafely(
    shelf,
    path,
    utf8ToBytes(written(copy)),
    bytes => readCopy(bytes) !== undefined,
  )
  if (done.ok) {
    const old = (await namesOf(shelf, folder)).filter(it => it.document === copy.document).slice(generations)
    await removeAll(shelf, folder, old)
  }
  return done
}

/**
 * What can be offered: of each document the newest copy that is whole and says something its file did not, newest first.
 * Copies that are too old are removed on the way; a damaged one gives way to the one before it.
 */
export const copiesIn = async (shelf: Shelf, folder: string, now: Date): Promise<readonly Copy[]> => {
  const names = await namesOf(shelf, folder)
  const isOld = (it: Named): boolean => timeIn(it.at) < now.getTime() - daysKept * 24 * 3600 * 1000
  await removeAll(shelf, folder, names.filter(isOld))
  const found = new Map<string, Copy>()
  for (const it of names) {
    if (isOld(it) || found.has(it.document)) continue
    const copy = await shelf.read(`${folder}/${it.name}`).then(readCopy, () => undefined)
    if (copy !== undefined) found.set(it.document, copy)
  }
  return [...found.values()].filter(saysMore)
}

/** Lets go of every copy of a document: its work is in a file, or nobody wants it. */
export const letGoOf = async (shelf: Shelf, folder: string, document: string): Promise<void> =>
  removeAll(
    shelf,
    folder,
    (await namesOf(shelf, folder)).filter(it => it.document === document),
  )

type Named = { readonly name: string; readonly document: string; readonly at: string }

/** The copies in a folder by their names, newest first. Anything else in it is left alone. */
const namesOf = async (shelf: Shelf, folder: string): Promise<readonly Named[]> =>
  (await shelf.list(folder))
    .flatMap((name): readonly Named[] => {
      const [, document, at] = fileName.exec(name) ?? []
      return document === undefined || at === undefined ? [] : [{ name, document, at }]
    })
    .toSorted((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0))

/** A copy that cannot be removed does no harm: it ages out, or goes the next time. */
const removeAll = async (shelf: Shelf, folder: string, names: readonly Named[]): Promise<void> => {
  for (const { name } of names) await shelf.remove(`${folder}/${name}`).catch(() => undefined)
}

/** Seventeen digits of a time, year first, as milliseconds. */
const timeIn = (digits: string): number => {
  const [, y, mo, d, h, mi, s, ms] = /^(\d{4})(\d\d)(\d\d)(\d\d)(\d\d)(\d\d)(\d{3})$/.exec(digits) ?? []
  return Date.parse(`${y}-${mo}-${d}T${h}:${mi}:${s}.${ms}Z`)
}

const written = (copy: Copy): string =>
  JSON.stringify({ format: 'jambwright-copy', ...copy, digest: contentDigest(utf8ToBytes(copy.text)) })

const readCopy = (bytes: Uint8Array): Copy | undefined => {
  try {
    const found = schema.safeParse(JSON.parse(textOf(bytes) ?? ''))
    if (!found.success || found.data.digest !== contentDigest(utf8ToBytes(found.data.text))) return undefined
    const { document, stamp, name, at, place, text: project } = found.data
    return { document, stamp, name, at, ...(place === undefined ? {} : { place }), text: project }
  } catch {
    return undefined
  }
}

/** Whether a copy opens and holds something else than its file did. */
const saysMore = ({ text, stamp }: Copy): boolean => {
  const read = openProject(text)
  return read.ok && digestOfRead(read.value.project) !== stamp
}
