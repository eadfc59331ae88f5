import type { Fixing, Frame, Joint, Opening, Project, Wall, Zone } from '../detail'
import type { Id } from '../geometry'
import { type Side, sides } from '../kinds'
import { type JointBand, jointBand } from '../movement'
import type { Practice } from '../practice'
import type { AnySeal } from '../seals'
import type { Where } from './finding'

/** One zone of a side of an opening, with all that meets there; `seal` where one part of it is meant. */
export type Place = {
  readonly project: Project
  readonly practice: Practice
  readonly opening: Opening
  readonly wall: Wall
  readonly frame: Frame
  readonly side: Side
  readonly zone: Zone
  readonly joint: Joint
  readonly band: JointBand
  readonly seal?: AnySeal
  readonly fixing?: Fixing
}

/** What a rule is asked about: each seal, each zone, each side, the opening as a whole, each kind of its fixings, its sill. */
export type About = 'part' | 'zone' | 'side' | 'opening' | 'fixing' | 'sill'

/** Where a place is, as narrow as what a rule is about. */
export const whereOf = (about: About, { opening, side, zone, seal, fixing }: Place): Where => {
  const part = (it: { readonly id: Id } | undefined) => (it ? { part: it.id } : {})
  if (about === 'opening') return { opening: opening.id }
  if (about === 'fixing') return { opening: opening.id, ...part(fixing) }
  if (about === 'side') return { opening: opening.id, side }
  if (about === 'sill') return { opening: opening.id, side, ...part(opening.sill) }
  return { opening: opening.id, side, zone: zone.id, ...part(seal) }
}

/** Every zone of an opening: head, left, right, sill. */
export const placesOf = (project: Project, practice: Practice, id: Id): readonly Place[] => {
  const opening = entry(project.openings, id)
  const wall = entry(project.walls, opening.wall)
  const frame = entry(project.frames, opening.frame)
  return sides.flatMap(side =>
    opening.sides[side].map(zone => ({
      project,
      practice,
      opening,
      wall,
      frame,
      side,
      zone,
      joint: entry(project.joints, zone.joint),
      band: jointBand(project, id, side, zone.id),
    })),
  )
}

/** What a table holds under an id. A project with a dangling reference is refused when it is opened. */
const entry = <T>(table: Readonly<Record<Id, T>>, id: Id): T => {
  const found = table[id]
  if (found === undefined) throw new Error(`Nothing has the id ${id}`)
  return found
}
