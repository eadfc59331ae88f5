import type { Id } from '../../../core/geometry'
import type { Where } from '../../../core/rules'

/** What is said of each opening, in its order. */
export const byOpening = <T extends { readonly where: Where }>(
  all: readonly T[],
): ReadonlyMap<Id, readonly T[]> => {
  const found = new Map<Id, T[]>()
  for (const it of all) {
    const here = found.get(it.where.opening) ?? []
    found.set(it.where.opening, here)
    here.push(it)
  }
  return found
}
