import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import type { Project } from '../model'
import { projectSchema } from './schema'

/** The extension of a project file, without its dot. */
export const extension = 'jamb'

/**
 * A project as a text: UTF-8 JSON, keys in the order of the schema, two spaces of indent, and a digest of the rest as
 * its last member. The same project always gives the same text. A project that its own schema refuses throws.
 */
export const saveProject = (project: Project): string => {
  const plain = projectSchema.parse(project)
  return written({ ...plain, digest: digestOfRead(plain) })
}

/**
 * The digest of a project's values, whatever white space its file has and in whatever order its keys were set. Of a photo
 * its own digest counts, not its bytes again. A project that its own schema refuses throws.
 */
export const digestOf = (project: Project): string => digestOfRead(projectSchema.parse(project))

/** The same digest for a project that has just come out of the schema, and so has its keys in the schema's order. */
export const digestOfRead = (project: Project): string =>
  `sha256:${bytesToHex(sha256(utf8ToBytes(written(withoutBytes(project)))))}`

const withoutBytes = ({ photos, ...rest }: Project): object =>
  photos === undefined ? rest : { ...rest, photos: Object.keys(photos) }

const written = (it: object): string => `${JSON.stringify(it, undefined, 2)}\n`
