import type { Id } from '../../geometry'
import { type Side, sides } from '../../kinds'
import { isSome } from '../../words'
import { entryAt } from '../find'
import type { Opening, Project, Zone } from '../model'
import { withCopiedJoint } from './copied-joint'
import { numbered } from './numbered'
import { withoutLoose } from './photos'

/**
 * The project with an opening beside one that is made alike: its parts under new ids, with joints of its own, so that
 * what is changed in one stays in the other as it was. Wall and frame are shared: they are the same wall and frame.
 */
export const withDuplicatedOpening = (project: Project, opening: Opening): Project => {
  let next = project
  const fresh = (kind: string): Id => {
    const counted = numbered(next, kind)
    next = counted.project
    return counted.id
  }
  const joints = new Map<Id, Id>()
  const jointFor = (id: Id): Id => {
    const known = joints.get(id)
    const joint = entryAt(next.joints, id)
    if (known !== undefined || joint === undefined) return known ?? id
    const copied = withCopiedJoint(next, joint)
    next = copied.project
    joints.set(id, copied.joint)
    return copied.joint
  }
  const names = new Map<Id, Id>()
  const named = <T extends { readonly id: Id }>(part: T, kind: string): T => {
    const id = fresh(kind)
    names.set(part.id, id)
    return { ...part, id }
  }
  const id = fresh('opening')
  // Nobody has measured or photographed the new one.
  const { survey: _survey, photos: _photos, ...made } = opening
  const copy: Opening = {
    ...made,
    id,
    name: `${opening.name} 2`.trim(),
    fixings: opening.fixings.map(it => named(it, 'fixing')),
    blocks: opening.blocks.map(it => named(it, 'block')),
    mullions: opening.mullions.map(it => named(it, 'mullion')),
    ...(opening.transoms ? { transoms: opening.transoms.map(it => named(it, 'mullion')) } : {}),
    ...(opening.sill ? { sill: named(opening.sill, 'sill') } : {}),
    ...(opening.threshold ? { threshold: named(opening.threshold, 'threshold') } : {}),
    ...(opening.box ? { box: named(opening.box, 'box') } : {}),
    sides: zonesFor(opening, side =>
      opening.sides[side].map(it => ({ ...it, id: fresh('zone'), joint: jointFor(it.joint) })),
    ),
  }
  const stays = opening.stays.map(it => names.get(it) ?? it)
  return { ...next, openings: { ...next.openings, [id]: { ...copy, stays } } }
}

const zonesFor = (opening: Opening, zonesOf: (side: Side) => readonly Zone[]): Opening['sides'] =>
  sides.reduce((so, side) => {
    const zones = zonesOf(side)
    return isSome(zones) ? { ...so, [side]: zones } : so
  }, opening.sides)

/** The project without an opening, and without the joints that only it had. */
export const withoutOpening = (project: Project, id: Id): Project => {
  const { [id]: _, ...openings } = project.openings
  const used = new Set(
    Object.values(openings).flatMap(it => sides.flatMap(side => it.sides[side].map(zone => zone.joint))),
  )
  const joints = Object.fromEntries(Object.entries(project.joints).filter(([joint]) => used.has(joint)))
  return withoutLoose({ ...project, openings, joints }, project.openings[id]?.photos ?? [])
}
