import type { Project } from '../detail'
import type { Id } from '../geometry'
import type { Practice } from '../practice'
import { isSome } from '../words'
import { rules } from './all'
import type { Judgement } from './judge'
import { type Place, placesOf } from './place'
import type { AnyRule } from './rule'

/** A rule, asked at one place, with its answer. */
export type Judged = { readonly rule: AnyRule; readonly at: Place; readonly found: Judgement }

/** Asks every rule everywhere in an opening. */
export const judgeOpening = (project: Project, practice: Practice, opening: Id): readonly Judged[] =>
  placesOf(project, practice, opening).flatMap(at => rules.flatMap(rule => judgeAt(rule, at)))

/** A rule about a part is asked of every seal that it applies to; where there is none, once, of the zone. */
const judgeAt = (rule: AnyRule, at: Place): readonly Judged[] => {
  const asked = (place: Place): Judged => ({ rule, at: place, found: rule.judge(place) })
  if (rule.about === 'zone') return [asked(at)]
  const parts = at.joint.seals
    .map(seal => asked({ ...at, seal }))
    .filter(it => it.found.verdict !== 'not-applicable')
  return isSome(parts) ? parts : [asked(at)]
}
