import type { Id } from '../geometry'
import { sides } from '../kinds'
import { rebateBand } from '../movement'
import type { AnySeal } from '../seals'
import { isSome } from '../words'
import { rules } from './all'
import type { Judgement } from './judge'
import type { Job } from './job'
import { type Place, placesOf } from './place'
import type { Remembered } from './remember'
import type { AnyRule } from './rule'

/** A rule, asked at one place, with its answer, which may have been given first for a place that is alike. */
export type Judged = { readonly rule: AnyRule; readonly at: Place; readonly found: Remembered<Judgement> }

/** Asks rules in all openings of a project: all of them, or those that are named. Answers come as they are asked for. */
export type Judging = (opening: Id, asked?: readonly AnyRule[]) => Iterable<Judged>

/** Asks rules everywhere in an opening. Openings that are alike share their answers. */
export const judging = (job: Job): Judging => {
  const asker = (at: Place): Asked => {
    const answer = job.memory.judgements(at)
    return rule => ({ rule, at, found: answer(rule) })
  }
  return function* (opening, asked) {
    const { ofZones, ofWholes } = asked ? byAbout(asked) : everyRule
    const places = placesOf(job, opening)
    for (const at of places) yield* judgeZone(at, asker, ofZones)
    yield* judgeWhole(places, asker, ofWholes)
  }
}

type Asked = (rule: AnyRule) => Judged
type Asker = (at: Place) => Asked

const byAbout = (of: readonly AnyRule[]) => ({
  ofZones: of.filter(it => it.about === 'zone' || it.about === 'part'),
  ofWholes: of.filter(it => it.about !== 'zone' && it.about !== 'part'),
})
const everyRule = byAbout(rules)

/** A rule about a part is asked of every seal that it applies to; where there is none, once, of the zone. */
function* judgeZone(at: Place, asker: Asker, ofZones: readonly AnyRule[]): Iterable<Judged> {
  const ofZone = asker(at)
  const ofSeals = at.joint.seals.map(seal => asker(atSeal(at, seal)))
  for (const rule of ofZones) {
    const ofParts = rule.about === 'zone' ? [] : ofSeals.map(asked => asked(rule))
    const parts = ofParts.filter(it => it.found.answer.verdict !== 'not-applicable')
    if (isSome(parts)) yield* parts
    else yield ofZone(rule)
  }
}

/** A seal in the gap of a rebate is judged by that gap, not by the joint between flank and frame. */
const atSeal = (at: Place, seal: AnySeal): Place => {
  const band = seal.gap === 'rebate' ? rebateBand(at.project, at.opening.id, at.side, at.zone.id) : undefined
  return band ? { ...at, seal, band } : { ...at, seal }
}

/**
 * Rules about more than a zone: they are asked at the first zone of their side, of the sill, or of the opening, and a
 * rule about fixings once for each kind of them; where there is none, once.
 */
function* judgeWhole(places: readonly Place[], asker: Asker, ofWholes: readonly AnyRule[]): Iterable<Judged> {
  const [first] = places
  if (!first) return
  const ofSides = sides.flatMap(side => places.find(it => it.side === side) ?? []).map(asker)
  const ofSill = places.find(it => it.side === 'sill')
  const asSill = ofSill && asker(ofSill)
  const whole = asker(first)
  const { fixings } = first.opening
  const ofFixings = isSome(fixings) ? fixings.map(fixing => asker({ ...first, fixing })) : [whole]
  for (const rule of ofWholes) {
    if (rule.about === 'side') yield* ofSides.map(asked => asked(rule))
    else if (rule.about === 'fixing') yield* ofFixings.map(asked => asked(rule))
    else if (rule.about !== 'sill') yield whole(rule)
    else if (asSill) yield asSill(rule)
  }
}
