import type { Project } from '../detail'
import type { Id } from '../geometry'
import { sides } from '../kinds'
import type { Practice } from '../practice'
import { isSome } from '../words'
import { rules } from './all'
import type { Judgement } from './judge'
import { type Place, placesOf } from './place'
import type { AnyRule } from './rule'

/** A rule, asked at one place, with its answer. */
export type Judged = { readonly rule: AnyRule; readonly at: Place; readonly found: Judgement }

/** Asks every rule everywhere in an opening. */
export const judgeOpening = (project: Project, practice: Practice, opening: Id): readonly Judged[] => {
  const places = placesOf(project, practice, opening)
  return [
    ...places.flatMap(at => rules.flatMap(rule => judgeAt(rule, at))),
    ...rules.flatMap(rule => judgeWhole(rule, places)),
  ]
}

const asked = (rule: AnyRule, at: Place): Judged => ({ rule, at, found: rule.judge(at) })

/** A rule about a part is asked of every seal that it applies to; where there is none, once, of the zone. */
const judgeAt = (rule: AnyRule, at: Place): readonly Judged[] => {
  if (rule.about === 'zone') return [asked(rule, at)]
  if (rule.about !== 'part') return []
  const parts = at.joint.seals
    .map(seal => asked(rule, { ...at, seal }))
    .filter(it => it.found.verdict !== 'not-applicable')
  return isSome(parts) ? parts : [asked(rule, at)]
}

/**
 * Rules about more than a zone: they are asked at the first zone of their side, of the sill, or of the opening, and a
 * rule about fixings once for each kind of them; where there is none, once.
 */
const judgeWhole = (rule: AnyRule, places: readonly Place[]): readonly Judged[] => {
  if (rule.about === 'zone' || rule.about === 'part') return []
  const ofSides = sides.flatMap(side => places.find(it => it.side === side) ?? [])
  if (rule.about === 'side') return ofSides.map(at => asked(rule, at))
  const at = rule.about === 'sill' ? ofSides.find(it => it.side === 'sill') : ofSides[0]
  if (!at) return []
  const { fixings } = at.opening
  if (rule.about !== 'fixing' || !isSome(fixings)) return [asked(rule, at)]
  return fixings.map(fixing => asked(rule, { ...at, fixing }))
}
