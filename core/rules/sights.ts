import { sides } from '../kinds'
import type { Place } from './place'

/** Parts of a place whose members are looked at one by one. */
export const parts = ['opening', 'band', 'fixing', 'wall', 'frame', 'joint', 'seal'] as const
export type Part = (typeof parts)[number]

/** Parts whose ids are not looked at: what belongs to one opening alone is alike wherever its members are. */
export const isOwn: ReadonlySet<Part> = new Set<Part>(['opening', 'band', 'fixing'])

/** What of a place itself can be looked at. */
export type PlaceKey = 'side' | 'zone' | 'round' | 'project' | 'materials' | 'physics' | 'seal' | 'fixing'

/** One thing that can be looked at: of the place, or a member of a part of it (`*`: all of them). */
export type Look =
  | { readonly of: 'place'; readonly key: PlaceKey }
  | { readonly of: Part; readonly key: string; readonly at: number }

/** Gives every thing that can be looked at once: looks that are the same are one. */
export type Looks = {
  readonly place: (key: PlaceKey) => Look
  readonly part: (of: Part, key: string) => Look
}

export const looks = (): Looks => {
  const ofPlace = new Map<PlaceKey, Look>()
  const ofParts = new Map<Part, Map<string, Look>>(parts.map(part => [part, new Map()]))
  return {
    place: key => kept(ofPlace, key, () => ({ of: 'place', key })),
    part: (of, key) => {
      const known = kept(ofParts, of, () => new Map<string, Look>())
      return kept(known, key, () => ({ of, key, at: known.size }))
    },
  }
}

/** What is seen by a look, as a number: equal numbers are equal values. */
export type Sight = (look: Look) => number

/** Gives the sights of a place. What is seen of a part is kept with the part: many places share it. */
export const sights = (): ((at: Place) => Sight) => {
  const number = numbering()
  const seen = new WeakMap<object, number[]>()
  return at => {
    const ofParts: { [K in Part]?: number[] } = {}
    return look => {
      if (look.of === 'place') return seenOfPlace(at, look.key, number)
      const part = at[look.of]
      if (part === undefined) return nothing
      const known = (ofParts[look.of] ??= kept(seen, part, () => []))
      return (known[look.at] ??= number(isOwn.has(look.of) ? written(part, look.key) : member(part, look.key)))
    }
  }
} // prettier-ignore

const nothing = -1

const seenOfPlace = (at: Place, key: PlaceKey, number: (it: unknown) => number): number => {
  const { materials, walls, frames, joints, site } = at.project
  if (key === 'side') return number(at.side)
  if (key === 'zone') return number(at.zone.to_mm)
  if (key === 'seal' || key === 'fixing') return at[key] ? 1 : 0
  if (key === 'round') return number(sides.map(side => at.round[side].map(number).join(' ')).join('|'))
  if (key === 'materials') return number(materials)
  // What heat and vapour say may come later: it is asked anew in each check, which has its own index of uses.
  if (key === 'physics') return at.physics ? number(at.uses) : nothing
  return number([materials, walls, frames, joints, site].map(number).join(' '))
}

/** Walls, frames, joints and seals share their members from one project to the next: the same member is the same value. */
const member = (of: object, key: string): unknown => (key === '*' ? of : Reflect.get(of, key))

/** A member of what belongs to one opening as text without ids: equal texts are equal values. */
const written = (of: object, key: string): string => {
  const text: string | undefined = JSON.stringify(member(of, key))
  return text === undefined ? '' : text.replaceAll(ids, '')
}

/** Ids and the parts that fields belong to, as JSON writes them: no text within a value looks so, its quotes are escaped. */
const ids = /"(?:id|part|zone)":"(?:[^"\\]|\\.)*",?/g

/** Gives each object and each plain value a number that no other has. */
const numbering = (): ((it: unknown) => number) => {
  const objects = new WeakMap<object, number>()
  const values = new Map<unknown, number>()
  let next = 0
  return it => {
    const isObject = (typeof it === 'object' && it !== null) || typeof it === 'function'
    return isObject ? kept(objects, it, () => next++) : kept(values, it, () => next++)
  }
}

type Table<K, V> = { readonly get: (key: K) => V | undefined; readonly set: (key: K, value: V) => unknown }

/** What a table holds under a key; where it holds nothing, a new value, which it keeps. */
const kept = <K, V>(table: Table<K, V>, key: K, make: () => V): V => {
  const found = table.get(key)
  if (found !== undefined) return found
  const made = make()
  table.set(key, made)
  return made
}
