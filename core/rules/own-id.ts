import type { Id } from '../geometry'
import type { Place } from './place'

/** The part of one place that stands where a part of another one does, which it is alike to. */
export const ownId = (part: Id, from: Place, to: Place): Id => {
  if (from.opening === to.opening && from.fixing === to.fixing) return part
  const [there] = ways.flatMap(way => {
    const at = way(from).findIndex(it => it?.id === part)
    return at < 0 ? [] : [way(to)[at]?.id ?? part]
  })
  return there ?? part
}

type Named = { readonly id: Id } | undefined

/** How to come to the parts that belong to one opening alone. */
const ways: readonly ((at: Place) => readonly Named[])[] = [
  ({ opening, zone, fixing }) => [opening, zone, fixing, opening.sill, opening.threshold, opening.box],
  ({ opening }) => opening.fixings,
  ({ opening }) => opening.blocks,
  ({ opening }) => opening.mullions,
  ({ opening }) => opening.transoms ?? [],
]
