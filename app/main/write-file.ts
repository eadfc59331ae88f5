import { extension, openProject, saveSafely } from '../../core/detail'
import type { Result } from '../../core/units'
import { disk } from '../disk'

/**
 * Writes a file so that at every moment a whole one has its name. A project is proved by opening what was written,
 * and the one before is kept beside it; of a drawing, which can be made again, none is kept.
 */
export const writeFile = async (
  path: string,
  bytes: Uint8Array,
): Promise<Result<{ readonly path: string }>> =>
  path.endsWith(`.${extension}`)
    ? saveSafely(disk, path, bytes, opens)
    : saveSafely({ ...disk, exists: () => Promise.resolve(false) }, path, bytes, () => true)

const opens = (bytes: Uint8Array): boolean => openProject(new TextDecoder().decode(bytes)).ok
