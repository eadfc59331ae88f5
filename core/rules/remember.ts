import type { Practice } from '../practice'
import type { Place } from './place'
import type { AnyRule } from './rule'
import { type Look, looks, type Sight, sights } from './sights'
import { type Watched, watched } from './watched'

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
  const all = looks()
  const sightsAt = sights()
  return at => {
    const byRule = byPractice.get(at.practice) ?? new Map<AnyRule, Step<T>>()
    byPractice.set(at.practice, byRule)
    const sight = sightsAt(at)
    let watch: Watched | undefined
    return rule => {
      let step = byRule.get(rule)
      while (step?.look !== undefined) step = step.next.get(sight(step.look))
      if (step?.known) return step.known
      watch ??= watched(at, all)
      const noted = watch.noting(place => of(rule, place))
      const known = { answer: noted.came, at }
      const root = byRule.get(rule) ?? { next: new Map<number, Step<T>>() }
      byRule.set(rule, root)
      steps += keep(root, noted.looks, sight, known)
      // What is remembered holds old projects; after a long day of dragging all of it is forgotten at once.
      if (steps > mostSteps) [byPractice, steps] = [new WeakMap(), 0]
      return known
    }
  }
}

/** As many as a project of a thousand different openings takes, a few times over: ours. */
const mostSteps = 400_000

/** One thing that is looked at on the way to an answer, and where each sight of it leads; at the end the answer. */
type Step<T> = { look?: Look; readonly next: Map<number, Step<T>>; known?: Remembered<T> }

/** The way to an answer is the same as long as all sights on it are: what is looked at first never differs. Gives its new steps. */
const keep = <T>(root: Step<T>, all: Iterable<Look>, sight: Sight, known: Remembered<T>): number => {
  let step = root
  let added = 0
  for (const look of all) {
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
