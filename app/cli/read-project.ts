import { readFile, stat } from 'node:fs/promises'
import { type Opened, openProject } from '../../core/detail'
import { type Result, refused } from '../../core/units'
import { type Words, filled, words } from '../../core/words'

/** Larger files are not read at all: no project comes near. *Ours*: twice what a project may have. */
const mostBytes = 64 * 1024 * 1024

/**
 * Opens a project file, or a PDF or SVG sheet that carries its project. Whatever lies at the path, the answer is a
 * project or every problem, never a throw.
 */
export const readProject = async (path: string): Promise<Result<Opened>> => {
  const found = await stat(path).catch(faultOf)
  if ('code' in found) return wrong(reasons[found.code] ?? filled(unreadable, found.code))
  if (found.isDirectory())
    return wrong(words('this is a folder, not a file', 'das ist ein Ordner, keine Datei'))
  if (!found.isFile()) return wrong(words('this is no ordinary file', 'das ist keine gewöhnliche Datei'))
  if (mostBytes < found.size)
    return wrong(words('the file is longer than any project', 'die Datei ist länger als jedes Projekt'))
  const bytes = await readFile(path).catch(faultOf)
  if ('code' in bytes) return wrong(reasons[bytes.code] ?? filled(unreadable, bytes.code))
  const text = ownText(bytes)
  // Only a sheet needs what reads sheets, and that weighs more than all the rest.
  return text === undefined ? (await import('../../core/intake')).openFile(bytes) : openProject(text)
}

/** The text of a project's own file; nothing where the bytes are something else. */
const ownText = (bytes: Uint8Array): string | undefined => {
  if (!/^[\s\xEF\xBB\xBF]*\{/.test(String.fromCharCode(...bytes.subarray(0, 64)))) return undefined
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    // The decoder has no other way to say that bytes are no text.
    return undefined
  }
}

/** What the system says of a fault, by its short name. */
export const faultOf = (fault: unknown): { readonly code: string } => ({
  code: fault instanceof Error && 'code' in fault ? String(fault.code) : String(fault),
})

/** The faults of the system that have words of their own. */
export const reasons: Readonly<Record<string, Words>> = {
  ENOENT: words('there is no such file or folder', 'diese Datei oder dieser Ordner fehlt'),
  ENOTDIR: words('there is no such folder', 'dieser Ordner fehlt'),
  EACCES: words('access is not allowed', 'der Zugriff ist nicht erlaubt'),
  EPERM: words('access is not allowed', 'der Zugriff ist nicht erlaubt'),
  EISDIR: words('this is a folder, not a file', 'das ist ein Ordner, keine Datei'),
  ENOSPC: words('the disk is full', 'der Datenträger ist voll'),
  EROFS: words('the disk is read-only', 'der Datenträger ist schreibgeschützt'),
  ENAMETOOLONG: words('the name is too long', 'der Name ist zu lang'),
  EEXIST: words('there is something of that name already', 'es gibt schon etwas mit diesem Namen'),
}

const unreadable = words('it cannot be read ({0})', 'lässt sich nicht lesen ({0})')

const wrong = (say: Words): ReturnType<typeof refused> => refused({ at: 'file', say })
