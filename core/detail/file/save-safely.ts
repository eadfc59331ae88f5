import { ok, type Problem, refused, type Result } from '../../units'
import { filled, same, type Words, words } from '../../words'

/** What a disk does, one call a step. Each may fail, and the machine may stop at any of them. */
export type Disk = {
  /** writes all bytes under a name and flushes them to the disk */
  readonly write: (path: string, bytes: Uint8Array) => Promise<void>
  readonly read: (path: string) => Promise<Uint8Array>
  readonly exists: (path: string) => Promise<boolean>
  /** gives a file another name in one step, in place of what had that name */
  readonly rename: (from: string, to: string) => Promise<void>
  readonly remove: (path: string) => Promise<void>
}

/** Where a save puts things beside the file: the new one until it is proved, and the one before. */
export const besideOf = (path: string): string => `${path}.part`
export const previousOf = (path: string): string => `${path}.previous`

/**
 * Writes a file so that at every moment a whole one has its name: beside it, flushed, read back, compared and proved by
 * `opens`; then the present file is kept as the previous one; then the new one takes its name in one step.
 * Whatever fails, the old file is whole and the answer says at which step. Nothing is thrown.
 */
export const saveSafely = async (
  disk: Disk,
  path: string,
  bytes: Uint8Array,
  opens: (bytes: Uint8Array) => boolean,
): Promise<Result<{ readonly path: string }>> => {
  const beside = besideOf(path)
  const steps: readonly (readonly [Words, () => Promise<void>])[] = [
    [writing, () => disk.write(beside, bytes)],
    [verifying, () => proved(disk, beside, bytes, opens)],
    [keeping, () => keepPrevious(disk, path)],
    [naming, () => disk.rename(beside, path)],
  ]
  for (const [says, step] of steps) {
    const fault = await failing(step)
    if (fault === undefined) continue
    await failing(() => disk.remove(beside))
    return refused(problem(path, says, fault))
  }
  return ok({ path })
}

/** The present file, copied whole beside itself before it is replaced. */
const keepPrevious = async (disk: Disk, path: string): Promise<void> => {
  if (!(await disk.exists(path))) return
  const previous = previousOf(path)
  await disk.write(besideOf(previous), await disk.read(path))
  await disk.rename(besideOf(previous), previous)
}

const proved = async (
  disk: Disk,
  path: string,
  bytes: Uint8Array,
  opens: (bytes: Uint8Array) => boolean,
): Promise<void> => {
  const back = await disk.read(path)
  if (back.length !== bytes.length || back.some((byte, i) => byte !== bytes[i])) {
    throw new Error(`read back ${back.length} of ${bytes.length} bytes, not the same`)
  }
  if (!opens(back)) throw new Error('what was written does not open')
}

/** What a step failed with, or nothing. */
const failing = async (step: () => Promise<void>): Promise<string | undefined> => {
  try {
    await step()
    return undefined
  } catch (error) {
    return error instanceof Error ? error.message : String(error)
  }
}

const problem = (path: string, says: Words, fault: string): Problem => ({
  at: path,
  say: filled(
    words('{0} failed: {1}. The file is as it was.', '{0} gelang nicht: {1}. Die Datei ist, wie sie war.'),
    says,
    same(fault),
  ),
})

const writing = words('Writing', 'Schreiben')
const verifying = words('Reading back', 'Zurücklesen')
const keeping = words('Keeping the previous file', 'Aufheben der vorigen Datei')
const naming = words('Replacing the file', 'Ersetzen der Datei')
