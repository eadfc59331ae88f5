import { readFile } from 'node:fs/promises'
import { type Result, ok, refused } from '../../core/units'
import { filled, words } from '../../core/words'
import { faultOf, reasons } from './read-project'

/** Longer texts are not taken for a section. *Ours*: a thousand times the longest that we have. */
const mostBytes = 32 * 1024 * 1024

/** Reads a text file. Whatever lies at the path, the answer is its text or a problem, never a throw. */
export const readText = async (path: string): Promise<Result<string>> => {
  const bytes = await readFile(path).catch(faultOf)
  if ('code' in bytes)
    return refused({ at: 'file', say: reasons[bytes.code] ?? filled(unreadable, bytes.code) })
  if (mostBytes < bytes.length) return refused({ at: 'file', say: tooLong })
  return ok(bytes.toString('utf8'))
}

const unreadable = words('it cannot be read ({0})', 'lässt sich nicht lesen ({0})')
const tooLong = words('the file is longer than any section', 'die Datei ist länger als jeder Schnitt')
