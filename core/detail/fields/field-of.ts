import type { Id } from '../../geometry'
import { kindOf } from '../../seals'
import type { Field, FieldAt, Known, PartKind } from '../field'
import { entryAt, fixingOf, layerOf, sealOf, zoneOf } from '../find'
import type { Project } from '../model'
import { listedPart, memberOf, offsetPlace, singlePart } from '../opening-parts'
import { fields } from './all'
import { site } from './site'

const byId: ReadonlyMap<string, Field<number>> = new Map(fields.map(it => [it.id, it]))

/** The field of that name, if there is one. */
export const fieldOf = (id: string): Field<number> | undefined => byId.get(id)

/** The value in use: what is stated, else what is fallen back on; nothing where it is missing. */
export const known = (project: Project, at: FieldAt): Known<number> | undefined => {
  const field = fieldOf(at.field)
  const stated = field?.read(project, at.part)
  return stated ? { ...stated, origin: 'file' } : field?.fallback(project, at.part)
}

/** What kind of part an id names. */
export const partKindOf = (project: Project, part: Id): PartKind | undefined => {
  if (part === site) return 'site'
  if (entryAt(project.walls, part)) return 'wall'
  if (entryAt(project.frames, part)) return 'frame'
  if (entryAt(project.joints, part)) return 'joint'
  if (entryAt(project.openings, part)) return 'opening'
  if (layerOf(project, part)) return 'layer'
  if (sealOf(project, part)) return 'seal'
  if (singlePart(project, 'sill', part)) return 'sill'
  if (singlePart(project, 'threshold', part)) return 'threshold'
  if (singlePart(project, 'box', part)) return 'box'
  if (fixingOf(project, part)) return 'fixing'
  if (listedPart(project, 'blocks', part)) return 'block'
  if (memberOf(project, part)) return 'mullion'
  if (zoneOf(project, part)) return 'zone'
  return offsetPlace(project, part) ? 'offset' : undefined
}

/** The fields that a part has, stated or not. */
export const fieldsOf = (project: Project, part: Id): readonly Field<number>[] => {
  const kind = partKindOf(project, part)
  const seal = sealOf(project, part)?.seal
  const own = seal && new Set(kindOf(seal).values.map(it => it.id))
  return fields.filter(
    it => it.of === kind && (it.has?.(project, part) ?? (own === undefined || own.has(it.id))),
  )
}
