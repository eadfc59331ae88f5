import type { Place } from './place'
import { isOwn, type Look, type Looks, type Part, type PlaceKey } from './sights'

/** A place that notes what of it is looked at while something is worked out. */
export type Watched = { readonly noting: <T>(work: (place: Place) => T) => Noted<T> }

/** What came of some work, and what it looked at, each once, in that order. */
export type Noted<T> = { readonly came: T; readonly looks: ReadonlySet<Look> }

export const watched = (at: Place, looks: Looks): Watched => {
  let noted: Notes | undefined
  const proxies: { [K in Part]?: object } = {}
  const part = <P extends Part>(name: P): Place[P] => {
    const of = at[name]
    // every place has the other parts
    if (name === 'seal' || name === 'fixing') noted?.looks.add(looks.place(name))
    if (of === undefined) return of
    // A proxy of a part answers as that part does.
    return (proxies[name] ??= watching(of, name, looks, () => noted)) as Place[P]
  }
  const note = <T>(key: PlaceKey, value: T): T => {
    noted?.looks.add(looks.place(key))
    return value
  }
  const place = {
    practice: at.practice,
    uses: at.uses,
    get opening() { return part('opening') },
    get band() { return part('band') },
    get fixing() { return part('fixing') },
    get wall() { return part('wall') },
    get frame() { return part('frame') },
    get joint() { return part('joint') },
    get seal() { return part('seal') },
    get side() { return note('side', at.side) },
    get zone() { return note('zone', at.zone) },
    get round() { return note('round', at.round) },
    get project() { return note('project', at.project) },
    get tables() { return note('materials', at.project) },
    get physics() { return note('physics', at.physics) },
  }
  return {
    noting: work => {
      const own: Notes = { looks: new Set(), whole: new Set() }
      noted = own
      try {
        // It has every member of a place; those that may be missing are there without a value.
        return { came: work(place as Place), looks: own.looks }
      } finally {
        noted = undefined
      }
    },
  }
} // prettier-ignore

/** What was looked at so far, and the parts of which every member was: their members say nothing more. */
type Notes = { readonly looks: Set<Look>; readonly whole: Set<Part> }

const watching = (it: object, part: Part, looks: Looks, notes: () => Notes | undefined): object => {
  const whole = () => {
    const noted = notes()
    if (!noted || noted.whole.has(part)) return
    noted.whole.add(part)
    noted.looks.add(looks.part(part, '*'))
  }
  return new Proxy(it, {
    get: (of, key) => {
      const noted = notes()
      const isSeen = noted && typeof key === 'string' && !(key === 'id' && isOwn.has(part))
      if (isSeen && !noted.whole.has(part)) noted.looks.add(looks.part(part, key))
      return Reflect.get(of, key)
    },
    has: (of, key) => {
      whole()
      return Reflect.has(of, key)
    },
    ownKeys: of => {
      whole()
      return Reflect.ownKeys(of)
    },
  })
}
