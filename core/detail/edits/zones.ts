import { z } from 'zod'
import { sides } from '../../kinds'
import { ok, type Problem, refused } from '../../units'
import { words } from '../../words'
import type { EditKind } from '../edit'
import { mostOffset_mm, shortestZone_mm, withOffset, withZones, zonesBeside } from '../fields/zone'
import { entryAt, zoneOf } from '../find'
import type { Zone } from '../model'
import { sideEnd_mm } from '../opening-parts'
import { withCopiedJoint } from './copied-joint'
import { numbered } from './numbered'

const noZone = (at: string): Problem => ({
  at,
  say: words('there is no such zone', 'diesen Abschnitt gibt es nicht'),
})

/** Splits a zone of a side at a place, measured from the side's left or lower end. */
export const splitZone: EditKind<'split-zone'> = {
  kind: 'split-zone',
  schema: z.strictObject({ kind: z.literal('split-zone'), zone: z.string(), at_mm: z.number() }),
  apply: (project, { zone, at_mm }) => {
    const place = zoneOf(project, zone)
    if (place === undefined) return refused(noZone(zone))
    const zones = zonesBeside(project, place)
    const at = zones.findIndex(it => it.id === zone)
    const min = (zones[at - 1]?.to_mm ?? 0) + shortestZone_mm
    const max = place.zone.to_mm - shortestZone_mm
    if (!(min <= at_mm && at_mm <= max)) {
      return refused({ at: zone, say: words('a zone is at least 50 mm long', 'ein Abschnitt ist mindestens 50 mm lang'), allowed: { unit: 'mm', min, max } }) // prettier-ignore
    }
    const counted = numbered(project, 'zone')
    const first: Zone = { ...place.zone, id: counted.id, to_mm: at_mm }
    return ok(withZones(counted.project, place, zones.toSpliced(at, 0, first)))
  },
}

/** Makes one zone of a zone and the next along its side. */
export const joinZones: EditKind<'join-zones'> = {
  kind: 'join-zones',
  schema: z.strictObject({ kind: z.literal('join-zones'), zone: z.string() }),
  apply: (project, { zone }) => {
    const place = zoneOf(project, zone)
    if (place === undefined) return refused(noZone(zone))
    const zones = zonesBeside(project, place)
    const at = zones.findIndex(it => it.id === zone)
    const next = zones[at + 1]
    if (next === undefined)
      return refused({
        at: zone,
        say: words('no zone follows this one', 'auf diesen Abschnitt folgt keiner'),
      })
    return ok(withZones(project, place, zones.toSpliced(at, 2, { ...place.zone, to_mm: next.to_mm })))
  },
}

/** Gives a zone another joint type; `copy` gives it one of its own, with the same seals under new names. */
export const chooseJoint: EditKind<'choose-joint'> = {
  kind: 'choose-joint',
  schema: z.strictObject({ kind: z.literal('choose-joint'), zone: z.string(), joint: z.string() }),
  apply: (project, { zone, joint }) => {
    const place = zoneOf(project, zone)
    if (place === undefined) return refused(noZone(zone))
    const own = entryAt(project.joints, place.zone.joint)
    const copied = joint === 'copy' && own ? withCopiedJoint(project, own) : { project, joint }
    if (entryAt(copied.project.joints, copied.joint) === undefined) {
      return refused({ at: joint, say: words('there is no such joint', 'diese Fuge gibt es nicht') })
    }
    const zones = zonesBeside(project, place).map(it =>
      it.id === zone ? { ...it, joint: copied.joint } : it,
    )
    return ok(withZones(copied.project, place, zones))
  },
}

/** States how far a flank lies off its line at a place, or takes the statement back. */
export const measureOffset: EditKind<'measure-offset'> = {
  kind: 'measure-offset',
  schema: z.strictObject({
    kind: z.literal('measure-offset'),
    opening: z.string(),
    side: z.enum(sides),
    at_mm: z.number(),
    offset_mm: z.number().exactOptional(),
  }),
  apply: (project, { opening, side, at_mm, offset_mm }) => {
    const found = entryAt(project.openings, opening)
    if (found === undefined)
      return refused({ at: opening, say: words('there is no such opening', 'diese Öffnung gibt es nicht') })
    const length_mm = sideEnd_mm(found, side)
    if (!(0 <= at_mm && at_mm <= length_mm)) {
      return refused({ at: `${opening} ${side}`, say: words('a place along the side', 'eine Stelle an der Seite'), allowed: { unit: 'mm', min: 0, max: length_mm } }) // prettier-ignore
    }
    if (offset_mm !== undefined && !(Math.abs(offset_mm) <= mostOffset_mm)) {
      return refused({ at: `${opening} ${side}`, say: words('how far a flank stands in', 'wie weit eine Leibung vorsteht'), allowed: { unit: 'mm', min: -mostOffset_mm, max: mostOffset_mm } }) // prettier-ignore
    }
    return ok(withOffset(project, opening, { side, at_mm, offset_mm }))
  },
}
