import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'

/** What names the content of a file, whenever and by whomever it was written. */
export const contentDigest = (bytes: Uint8Array): string => bytesToHex(sha256(bytes))

/**
 * What to do about a file that may have been changed by somebody else since it was last read or written here.
 * Only its content counts, never its time: `tell` that there is something newer where no work is at stake, `ask` where
 * both sides have changed. Nothing is to be done about an own write, or a file that was touched or taken away.
 */
export const afterOutsideChange = ({
  known,
  found,
  isUnsaved,
}: {
  /** digest of what was last read or written here; empty: nothing yet */
  readonly known: string
  /** digest of what the file holds now; absent: there is no file */
  readonly found: string | undefined
  readonly isUnsaved: boolean
}): 'nothing' | 'tell' | 'ask' =>
  known === '' || found === undefined || found === known ? 'nothing' : isUnsaved ? 'ask' : 'tell'
