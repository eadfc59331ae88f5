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

/** Asks rules in all openings of a project. */
export type Judging = (opening: Id) => readonly Judged[]

/** Asks every rule everywhere in an opening. Openings that are alike share their answers. */
export const judging = (job: Job): Judging => {
  const asker = (at: Place): Asked => {
    const answer = job.memory.judgements(at)
    return rule => ({ rule, at, found: answer(rule) })
  }
  return opening => {
    const places = placesOf(job, opening)
    const zones = places.flatMap(at => judgeZone(at, asker))
    return zones.concat(judgeWhole(places, asker))
  }
}

type Asked = (rule: AnyRule) => Judged

const ofZones = rules.filter(it => it.about === 'zone' || it.about === 'part')
const ofWholes = rules.filter(it => it.about !== 'zone' && it.about !== 'part')

/** A rule about a part is asked of every seal that it applies to; where there is none, once, of the zone. */
const judgeZone = (at: Place, asker: (at: Place) => Asked): readonly Judged[] => {
  const ofZone = asker(at)
  const ofSeals = at.joint.seals.map(seal => asker(atSeal(at, seal)))
  return ofZones.flatMap(rule => {
    if (rule.about === 'zone') return ofZone(rule)
    const parts = ofSeals.map(asked => asked(rule)).filter(it => it.found.answer.verdict !== 'not-applicable')
    return isSome(parts) ? parts : ofZone(rule)
  })
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
const judgeWhole = (places: readonly Place[], asker: (at: Place) => Asked): readonly Judged[] => {
  const [first] = places
  if (!first) return []
  const ofSides = sides.flatMap(side => places.find(it => it.side === side) ?? []).map(asker)
  const ofSill = places.find(it => it.side === 'sill')
  const asSill = ofSill && asker(ofSill)
  const whole = asker(first)
  const { fixings } = first.opening
  const ofFixings = isSome(fixings) ? fixings.map(fixing => asker({ ...first, fixing })) : [whole]
  return ofWholes.flatMap(rule => {
    if (rule.about === 'side') return ofSides.map(asked => asked(rule))
    if (rule.about === 'fixing') return ofFixings.map(asked => asked(rule))
    return (rule.about === 'sill' ? asSill?.(rule) : whole(rule)) ?? []
  })
}
