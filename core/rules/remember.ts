import type { Id } from '../geometry'
import type { Place } from './place'
import type { AnyRule } from './rule'

/** An answer, and the place that it was first given for: another than asked where both are alike in all it looked at. */
export type Remembered<T> = { readonly answer: T; readonly at: Place }

/** What rules are asked about a place. */
export type Asking<T> = (at: Place) => (rule: AnyRule) => Remembered<T>

/**
 * Asks, and remembers the answer by what was looked at on the way: of the opening, of the joint as a range, which side.
 * A place that does not differ in any of that has the same answer and is not asked again: a thousand openings of a few
 * types cost little more than the types. For one project and one practice: make it anew for another.
 * Ids are not looked at, so an answer may name parts of the place that it was first given for: see `ownId`.
 */
export const remembering = <T>(of: (rule: AnyRule, at: Place) => T): Asking<T> => {
  const byKin = new Map<string, Map<AnyRule, Step<T>>>()
  const seen: Seen = new WeakMap()
  return at => {
    const kin = kinOf(at, seen)
    const byRule = byKin.get(kin) ?? new Map<AnyRule, Step<T>>()
    byKin.set(kin, byRule)
    const sight = sightsOf(at, seen)
    return rule => {
      let step = byRule.get(rule)
      while (step?.look !== undefined) step = step.next.get(sight(step.look))
      if (step?.known) return step.known
      const looks = new Set<Look>()
      const known = { answer: of(rule, watched(at, looks)), at }
      const root = byRule.get(rule) ?? { next: new Map<string, Step<T>>() }
      byRule.set(rule, root)
      keep(root, looks, sight, known)
      return known
    }
  }
}

/** One thing that is looked at on the way to an answer, and where each sight of it leads; at the end the answer. */
type Step<T> = { look?: Look; readonly next: Map<string, Step<T>>; known?: Remembered<T> }

/** The way to an answer is the same as long as all sights on it are: what is looked at first never differs. */
const keep = <T>(
  root: Step<T>,
  looks: Iterable<Look>,
  sight: (look: Look) => string,
  known: Remembered<T>,
): void => {
  let step = root
  for (const look of looks) {
    step.look ??= look
    if (step.look !== look) return
    const at = sight(look)
    const next: Step<T> = step.next.get(at) ?? { next: new Map() }
    step.next.set(at, next)
    step = next
  }
  step.known = known
}

/** What of a place can be looked at: its side, a member of its opening, a member of its band. */
type Look = 'side' | 'zone' | `opening.${string}` | `band.${string}`

/** A place that notes what of it is looked at. What it shares with its kin is not noted. */
const watched = (at: Place, looks: Set<Look>): Place => ({
  project: at.project,
  practice: at.practice,
  uses: at.uses,
  wall: at.wall,
  frame: at.frame,
  joint: at.joint,
  ...(at.physics ? { physics: at.physics } : {}),
  ...(at.seal ? { seal: at.seal } : {}),
  ...(at.fixing ? { fixing: at.fixing } : {}),
  opening: watching(at.opening, look => looks.add(`opening.${look}`)),
  band: watching(at.band, look => looks.add(`band.${look}`)),
  get side() {
    looks.add('side')
    return at.side
  },
  get zone() {
    looks.add('zone')
    return at.zone
  },
})

const watching = <T extends object>(it: T, note: (look: string) => void): T =>
  new Proxy(it, {
    get: (of, key) => {
      if (typeof key === 'string' && key !== 'id') note(key)
      return Reflect.get(of, key)
    },
    has: (of, key) => {
      note('*')
      return Reflect.has(of, key)
    },
    ownKeys: of => {
      note('*')
      return Reflect.ownKeys(of)
    },
  })

/** What was seen of openings, bands and fixings, as text without ids: equal texts are equal values. */
type Seen = WeakMap<object, Map<string, string>>

const seenOf = (of: object, seen: Seen): Map<string, string> => {
  const known = seen.get(of) ?? new Map<string, string>()
  seen.set(of, known)
  return known
}

const sightsOf = (at: Place, seen: Seen): ((look: Look) => string) => {
  const ofOpening = seenOf(at.opening, seen)
  const ofBand = seenOf(at.band, seen)
  return look => {
    const known = ofOpening.get(look) ?? ofBand.get(look)
    if (known !== undefined) return known
    if (look === 'side') return at.side
    if (look === 'zone') return `${at.zone.to_mm}`
    const isBand = look.startsWith('band.')
    const sight = written(isBand ? at.band : at.opening, look.slice(look.indexOf('.') + 1))
    ;(isBand ? ofBand : ofOpening).set(look, sight)
    return sight
  }
}

const written = (of: object, key: string): string => {
  const text: string | undefined = JSON.stringify(key === '*' ? of : Reflect.get(of, key))
  return text === undefined ? '' : text.replaceAll(ids, '')
}

/** Ids and the parts that fields belong to, as JSON writes them: no text within a value looks so, its quotes are escaped. */
const ids = /"(?:id|part|zone)":"(?:[^"\\]|\\.)*",?/g

/** What places share that are asked together: everything but the opening, the side and the band. */
const kinOf = ({ wall, frame, joint, seal, fixing }: Place, seen: Seen): string => {
  const kin = `${wall.id} ${frame.id} ${joint.id} ${seal?.id ?? ''} `
  if (!fixing) return kin
  const known = seenOf(fixing, seen)
  const sight = known.get('*') ?? written(fixing, '*')
  known.set('*', sight)
  return kin + sight
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
