import type { Id } from '../geometry'
import type { Practice } from '../practice'
import type { Place } from './place'
import type { AnyRule } from './rule'

/** An answer, and the place that it was first given for: another than asked where both are alike in all it looked at. */
export type Remembered<T> = { readonly answer: T; readonly at: Place }

/** What rules are asked about a place. */
export type Asking<T> = (at: Place) => (rule: AnyRule) => Remembered<T>

/**
 * Asks, and remembers the answer by what was looked at on the way: which members of the opening, the wall, the frame,
 * the joint, the seal, of the joint as a range, which side. Where none of that differs the answer is the same and is not
 * worked out again: a thousand openings of a few types cost little more than the types, and a change of the project
 * asks those rules anew that look at what was changed. Ids of openings are not looked at, so an answer may name parts of
 * the place that it was first given for: see `ownId`.
 */
export const remembering = <T>(of: (rule: AnyRule, at: Place) => T): Asking<T> => {
  let byPractice = new WeakMap<Practice, Map<AnyRule, Step<T>>>()
  let steps = 0
  const seen: Seen = new WeakMap()
  const nameOf = numbering()
  return at => {
    const byRule = byPractice.get(at.practice) ?? new Map<AnyRule, Step<T>>()
    byPractice.set(at.practice, byRule)
    const sight = sightsOf(at, seen, nameOf)
    let watching: Watching | undefined
    return rule => {
      let step = byRule.get(rule)
      while (step?.look !== undefined) step = step.next.get(sight(step.look))
      if (step?.known) return step.known
      watching ??= watched(at)
      const looks = new Set<Look>()
      const answer = watching.noting(looks, place => of(rule, place))
      const known = { answer, at }
      const root = byRule.get(rule) ?? { next: new Map<string, Step<T>>() }
      byRule.set(rule, root)
      steps += keep(root, looks, sight, known)
      // What is remembered holds old projects; after a long day of dragging all of it is forgotten at once.
      if (steps > mostSteps) [byPractice, steps] = [new WeakMap(), 0]
      return known
    }
  }
}

/** As many as a project of a thousand different openings takes, a few times over: ours. */
const mostSteps = 400_000

/** One thing that is looked at on the way to an answer, and where each sight of it leads; at the end the answer. */
type Step<T> = { look?: Look; readonly next: Map<string, Step<T>>; known?: Remembered<T> }

/** The way to an answer is the same as long as all sights on it are: what is looked at first never differs. Gives its new steps. */
const keep = <T>(
  root: Step<T>,
  looks: Iterable<Look>,
  sight: (look: Look) => string,
  known: Remembered<T>,
): number => {
  let step = root
  let added = 0
  for (const look of looks) {
    step.look ??= look
    if (step.look !== look) return added
    const at = sight(look)
    let next: Step<T> | undefined = step.next.get(at)
    if (!next) {
      next = { next: new Map() }
      step.next.set(at, next)
      added += 1
    }
    step = next
  }
  step.known = known
  return added
}

/** Parts of a place whose members are looked at one by one. */
const parts = ['opening', 'band', 'fixing', 'wall', 'frame', 'joint', 'seal'] as const
type Part = (typeof parts)[number]

/** What of a place can be looked at. */
type Look = 'side' | 'zone' | 'project' | 'materials' | 'physics' | `has ${Part}` | `${Part}.${string}`

/** A place that notes what of it is looked at while something is worked out. */
type Watching = { readonly noting: <T>(looks: Set<Look>, work: (place: Place) => T) => T }

const watched = (at: Place): Watching => {
  let now: Set<Look> | undefined
  const note = (look: Look) => now?.add(look)
  const proxies = new Map<Part, object>()
  const part = <P extends Part>(name: P): Place[P] => {
    const of = at[name]
    if (of === undefined || !isAlways.has(name)) note(`has ${name}`)
    if (of === undefined) return of
    const known = proxies.get(name) ?? watching(of, name, note)
    proxies.set(name, known)
    // A proxy of a part answers as that part does.
    return known as Place[P]
  }
  const place = { practice: at.practice, uses: at.uses }
  const getters: { readonly [K in keyof Place]?: () => Place[K] } = {
    ...Object.fromEntries(parts.map(name => [name, () => part(name)])),
    side: () => (note('side'), at.side),
    zone: () => (note('zone'), at.zone),
    project: () => (note('project'), at.project),
    tables: () => (note('materials'), at.project),
    physics: () => (note('physics'), at.physics),
  }
  for (const [key, get] of Object.entries(getters)) Object.defineProperty(place, key, { get, enumerable: true })
  return {
    noting: (looks, work) => {
      now = looks
      try {
        // With the getters defined it has every member of a place.
        return work(place as Place)
      } finally {
        now = undefined
      }
    },
  }
} // prettier-ignore

/** Every place has these; a seal or a fixing only where one is asked about. */
const isAlways: ReadonlySet<Part> = new Set<Part>(['opening', 'band', 'wall', 'frame', 'joint'])

/** Parts whose ids are not looked at: what belongs to one opening alone is alike wherever its members are. */
const isOwn: ReadonlySet<Part> = new Set<Part>(['opening', 'band', 'fixing'])

const watching = (it: object, part: Part, note: (look: Look) => void): object =>
  new Proxy(it, {
    get: (of, key) => {
      if (typeof key === 'string' && !(key === 'id' && isOwn.has(part))) note(`${part}.${key}`)
      return Reflect.get(of, key)
    },
    has: (of, key) => {
      note(`${part}.*`)
      return Reflect.has(of, key)
    },
    ownKeys: of => {
      note(`${part}.*`)
      return Reflect.ownKeys(of)
    },
  })

/** What was seen of openings, bands and fixings, as text without ids: equal texts are equal values. */
type Seen = WeakMap<object, Map<string, string>>

const sightsOf = (at: Place, seen: Seen, nameOf: (it: unknown) => string): ((look: Look) => string) => {
  const texts: Partial<Record<Part, Map<string, string>>> = {}
  return look => {
    if (look === 'side') return at.side
    if (look === 'zone') return `${at.zone.to_mm}`
    // What heat and vapour say may come later: it is asked anew in each check, which has its own index of uses.
    if (look === 'physics') return nameOf(at.uses)
    if (look === 'materials') return nameOf(at.project.materials)
    if (look === 'project') {
      const { materials, walls, frames, joints } = at.project
      return `${nameOf(materials)} ${nameOf(walls)} ${nameOf(frames)} ${nameOf(joints)} ${nameOf(at.project.site)}`
    }
    const dot = look.indexOf('.')
    if (dot < 0)
      return at.seal && look === 'has seal' ? 'yes' : at.fixing && look === 'has fixing' ? 'yes' : 'no'
    // What stands before the dot of a look is a part.
    const part = look.slice(0, dot) as Part
    const key = look.slice(dot + 1)
    const of = at[part]
    if (of === undefined) return 'none'
    // Walls, frames, joints and seals share their members from one project to the next: the same member is the same value.
    if (!isOwn.has(part)) return nameOf(key === '*' ? of : Reflect.get(of, key))
    const known = (texts[part] ??= textsOf(of, seen))
    const text = known.get(key) ?? written(of, key)
    known.set(key, text)
    return text
  }
}

const textsOf = (of: object, seen: Seen): Map<string, string> => {
  const known = seen.get(of) ?? new Map<string, string>()
  seen.set(of, known)
  return known
}

const written = (of: object, key: string): string => {
  const text: string | undefined = JSON.stringify(key === '*' ? of : Reflect.get(of, key))
  return text === undefined ? '' : text.replaceAll(ids, '')
}

/** Ids and the parts that fields belong to, as JSON writes them: no text within a value looks so, its quotes are escaped. */
const ids = /"(?:id|part|zone)":"(?:[^"\\]|\\.)*",?/g

/** Gives each object a name that no other has, and each plain value its own. */
const numbering = (): ((it: unknown) => string) => {
  const names = new WeakMap<object, string>()
  let next = 0
  return it => {
    if ((typeof it !== 'object' && typeof it !== 'function') || it === null) return String(it)
    const known = names.get(it) ?? `#${next++}`
    names.set(it, known)
    return known
  }
}

/** The part of one place that stands where a part of another one does, which it is alike to. */
export const ownId = (part: Id, from: Place, to: Place): Id => {
  if (from.opening === to.opening && from.fixing === to.fixing) return part
  const [standing] = partsOf(from).find(([, id]) => id === part) ?? []
  return partsOf(to).find(([there]) => there === standing)?.[1] ?? part
}

/** Parts that belong to one opening alone, by where they stand in it. */
const partsOf = ({ opening, zone, fixing }: Place): readonly (readonly [standing: string, id: Id])[] => {
  const each = (name: string, of: readonly { readonly id: Id }[] | undefined) =>
    (of ?? []).map((it, at) => [`${name} ${at}`, it.id] as const)
  return [
    ['opening', opening.id],
    ['zone', zone.id],
    ...each('fixing asked about', fixing ? [fixing] : []),
    ...each('sill', opening.sill ? [opening.sill] : []),
    ...each('box', opening.box ? [opening.box] : []),
    ...each('fixing', opening.fixings),
    ...each('block', opening.blocks),
    ...each('mullion', opening.mullions),
    ...each('transom', opening.transoms),
  ]
}
