import type { Plane } from '../kinds'
import { sealKinds } from './all'
import type { AnySeal, SealKind } from './seal-kind'

/** The kind of a seal. A seal of a kind that is not listed never gets past the file's schema, so we are at fault. */
export const kindOf = (seal: Pick<AnySeal, 'kind'>): SealKind => {
  const found = sealKinds.find(it => it.kind === seal.kind)
  if (found === undefined) throw new Error(`no such kind of seal: ${seal.kind}`)
  return found
}

/** Whether a seal closes a plane of its joint. */
export const serves = (seal: AnySeal, plane: Plane): boolean => kindOf(seal).serves(seal).includes(plane)
