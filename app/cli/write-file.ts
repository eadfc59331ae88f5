import { rename, rm, writeFile } from 'node:fs/promises'
import { type Result, ok, refused } from '../../core/units'
import { filled, words } from '../../core/words'
import { faultOf, reasons } from './read-project'

/** Writes a file whole or not at all: beside its place first, then into it. */
export const writeWhole = async (path: string, content: string | Uint8Array): Promise<Result<string>> => {
  const beside = `${path}.${process.pid}.part`
  const fault = await writeFile(beside, content)
    .then(() => rename(beside, path))
    .then(() => undefined, faultOf)
  if (fault === undefined) return ok(path)
  await rm(beside, { force: true })
  const say =
    reasons[fault.code] ??
    filled(words('it cannot be written ({0})', 'lässt sich nicht schreiben ({0})'), fault.code)
  return refused({ at: path, say })
}
