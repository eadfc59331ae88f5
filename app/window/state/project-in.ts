import { type Opened, openProject, textOf } from '../../../core/detail'
import type { Result } from '../../../core/units'

/** The project in the bytes of a file. What reads sheets is fetched when one is opened: most files are projects. */
export const projectIn = async (bytes: Uint8Array): Promise<Result<Opened>> => {
  const text = textOf(bytes)
  if (text !== undefined && /^\uFEFF?\s*\{/.test(text)) return openProject(text)
  const { openFile } = await import('../../../core/intake')
  return openFile(bytes)
}
