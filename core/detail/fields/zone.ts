import { z } from 'zod'
import type { Id } from '../../geometry'
import { measured, specified } from '../../units'
import { isSome, same, words } from '../../words'
import type { ChoiceField } from '../choice-field'
import { entryAt, zoneOf, type ZonePlace } from '../find'
import type { Project, Zone } from '../model'
import { type OffsetPlace, offsetPlace } from '../opening-parts'
import type { Side } from '../../kinds'
import { choiceField } from './choice-field'
import { numberField } from './number-field'
import { withOpening } from './tables'

/** No zone is shorter than this: ours, what can be sealed by hand as a piece of its own. */
export const shortestZone_mm = 50

/** The zones of the side that a zone lies on, from its left or lower end. */
export const zonesBeside = (project: Project, place: ZonePlace): readonly Zone[] =>
  entryAt(project.openings, place.opening)?.sides[place.side] ?? []

/** The project with other zones along a side; the same where there are none. */
export const withZones = (project: Project, place: ZonePlace, zones: readonly Zone[]): Project =>
  isSome(zones)
    ? withOpening(project, place.opening, it => ({ ...it, sides: { ...it.sides, [place.side]: zones } }))
    : project

const withZone = (project: Project, id: Id, change: (it: Zone) => Zone): Project => {
  const place = zoneOf(project, id)
  if (place === undefined) return project
  const zones = zonesBeside(project, place).map(it => (it.id === id ? change(it) : it))
  return withZones(project, place, zones)
}

/** Where a zone ends: the last one of a side ends with the side. */
export const zoneEnd = numberField({
  id: 'zone.end',
  name: words('End of the zone', 'Ende des Abschnitts'),
  of: 'zone',
  unit: 'mm',
  has: (project, zone) => {
    const place = zoneOf(project, zone)
    return place !== undefined && zonesBeside(project, place).at(-1)?.id !== zone
  },
  read: (project, zone) => {
    const place = zoneOf(project, zone)
    return place && specified(place.zone.to_mm)
  },
  allowed: (project, zone) => {
    const place = zoneOf(project, zone)
    const zones = place ? zonesBeside(project, place) : []
    const at = zones.findIndex(it => it.id === zone)
    const min = (zones[at - 1]?.to_mm ?? 0) + shortestZone_mm
    return {
      bounds: { unit: 'mm', min, max: Math.max(min, (zones[at + 1]?.to_mm ?? Infinity) - shortestZone_mm) },
      because: words('every zone is at least 50 mm long', 'jeder Abschnitt ist mindestens 50 mm lang'),
    }
  },
  write: (project, zone, to) => (to ? withZone(project, zone, it => ({ ...it, to_mm: to.value })) : project),
})

/** Which joint type a zone has: any of the project. */
export const zoneJoint: ChoiceField = {
  ...choiceField({
    id: 'zone.joint',
    name: words('Joint of the zone', 'Fuge des Abschnitts'),
    of: 'zone',
    choices: [{ value: '', name: words('none', 'keine') }],
    because: words('joint types of the project', 'Fugentypen des Projekts'),
    isPlain: true,
    read: (project, zone) => {
      const place = zoneOf(project, zone)
      return place && specified(place.zone.joint)
    },
    write: project => project,
  }),
  schema: z.string(),
  allowed: project => {
    const joints = Object.values(project.joints).map(it => ({ value: it.id, name: same(it.name || it.id) }))
    return {
      choices: isSome(joints) ? joints : [{ value: '', name: words('none', 'keine') }],
      because: words('joint types of the project', 'Fugentypen des Projekts'),
    }
  },
  write: (project, zone, to) =>
    to && entryAt(project.joints, to.value)
      ? withZone(project, zone, it => ({ ...it, joint: to.value }))
      : project,
}

/** No flank is out of its line by more: ours. */
export const mostOffset_mm = 200

/** A survey with the offset of a flank at a place stated, or taken back. */
export const withOffset = (
  project: Project,
  opening: Id,
  at: { readonly side: Side; readonly at_mm: number; readonly offset_mm: number | undefined },
): Project =>
  withOpening(project, opening, it => {
    const { side, at_mm, offset_mm } = at
    const others = (it.survey?.offsets ?? []).filter(one => one.side !== side || one.at_mm !== at_mm)
    const offsets = offset_mm === undefined ? others : [...others, { side, at_mm, offset_mm }]
    return { ...it, survey: { ...it.survey, offsets } }
  })

const offsetAt = ({ opening, side, at_mm }: OffsetPlace): number | undefined =>
  (opening.survey?.offsets ?? []).find(it => it.side === side && it.at_mm === at_mm)?.offset_mm

/** How far a flank stands off its plumb line or level at a place along its side. */
export const surveyOffset = numberField({
  id: 'survey.offset',
  name: words('Flank off its line', 'Leibung aus der Flucht'),
  of: 'offset',
  unit: 'mm',
  surveyed: true,
  read: (project, id) => {
    const place = offsetPlace(project, id)
    const offset_mm = place && offsetAt(place)
    return offset_mm === undefined ? undefined : measured(offset_mm)
  },
  allowed: () => ({
    bounds: { unit: 'mm', min: -mostOffset_mm, max: mostOffset_mm },
    because: words('into the opening positive', 'in die Öffnung positiv'),
  }),
  write: (project, id, to) => {
    const place = offsetPlace(project, id)
    if (place === undefined) return project
    return withOffset(project, place.opening.id, {
      side: place.side,
      at_mm: place.at_mm,
      offset_mm: to?.value,
    })
  },
})
