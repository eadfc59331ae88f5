import type { Id } from '../geometry'
import { type Side, sides } from '../kinds'
import type { AnySeal } from '../seals'
import { profiles } from './profiles/all'
import type { Profile } from './profiles/profile'
import type { Fixing } from './fixing'
import type { Frame, Joint, Layer, Opening, Project, Wall, Zone } from './model'

/** What is in a table under an id, if anything. A name that every object inherits is not in the table. */
export const entryAt = <T>(table: Readonly<Record<Id, T>>, id: Id): T | undefined =>
  Object.hasOwn(table, id) ? table[id] : undefined

/** What is in a table under an id. A file whose references dangle is refused, so a gap here is our own fault. */
const entry = <T>(table: Readonly<Record<Id, T>>, id: Id): T => {
  const found = entryAt(table, id)
  if (found === undefined) throw new Error(`nothing has the id ${id}`)
  return found
}

export const openingOf = (project: Project, id: Id): Opening => entry(project.openings, id)
export const wallOf = (project: Project, opening: Id): Wall =>
  entry(project.walls, openingOf(project, opening).wall)
export const frameOf = (project: Project, opening: Id): Frame =>
  entry(project.frames, openingOf(project, opening).frame)
export const jointOf = (project: Project, zone: Zone): Joint => entry(project.joints, zone.joint)

export const profileOf = (frame: Frame): Profile => {
  const found = profiles.find(it => it.id === frame.profile)
  if (found === undefined) throw new Error(`no such profile: ${frame.profile}`)
  return found
}

/** A zone and where it lies. */
export type ZonePlace = { readonly opening: Id; readonly side: Side; readonly zone: Zone }

/** Every zone of every opening, sides in the order head, left, right, sill. */
export const zonesOf = (project: Project): readonly ZonePlace[] =>
  Object.values(project.openings).flatMap(opening =>
    sides.flatMap(side => opening.sides[side].map(zone => ({ opening: opening.id, side, zone }))),
  )

export const zoneOf = (project: Project, id: Id): ZonePlace | undefined =>
  zonesOf(project).find(it => it.zone.id === id)

/** The wall that a layer belongs to. */
export const layerOf = (
  project: Project,
  id: Id,
): { readonly wall: Wall; readonly layer: Layer } | undefined => {
  for (const wall of Object.values(project.walls)) {
    const layer = wall.layers.find(it => it.id === id)
    if (layer) return { wall, layer }
  }
  return undefined
}

/** The joint that a seal belongs to. */
export const sealOf = (
  project: Project,
  id: Id,
): { readonly joint: Joint; readonly seal: AnySeal } | undefined => {
  for (const joint of Object.values(project.joints)) {
    const seal = joint.seals.find(it => it.id === id)
    if (seal) return { joint, seal }
  }
  return undefined
}

/** The joint that a seal was taken out of. */
export const takenOutOf = (
  project: Project,
  id: Id,
): { readonly joint: Joint; readonly seal: AnySeal } | undefined => {
  for (const joint of Object.values(project.joints)) {
    const seal = joint.out?.find(it => it.id === id)
    if (seal) return { joint, seal }
  }
  return undefined
}

/** The opening that a fixing belongs to. */
export const fixingOf = (
  project: Project,
  id: Id,
): { readonly opening: Opening; readonly fixing: Fixing } | undefined => {
  for (const opening of Object.values(project.openings)) {
    const fixing = opening.fixings.find(it => it.id === id)
    if (fixing) return { opening, fixing }
  }
  return undefined
}

/** Openings whose wall, frame or joint a part is, or the opening itself: all that a change of the part touches. */
export const openingsWith = (project: Project, part: Id): readonly Opening[] =>
  Object.values(project.openings).filter(
    it =>
      it.id === part ||
      it.wall === part ||
      it.frame === part ||
      sides.some(side => it.sides[side].some(zone => zone.joint === part)),
  )
