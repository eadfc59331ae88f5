import { z } from 'zod'
import { material } from '../../materials'
import { ok, refused, specified } from '../../units'
import { isSome, words } from '../../words'
import type { EditKind } from '../edit'
import { withJoint, withWall } from '../fields/tables'
import { entryAt, layerOf, sealOf } from '../find'
import type { Duty } from '../../kinds'
import type { Layer, Project, Wall } from '../model'
import { numbered } from './numbered'
import { materialOf, withMaterials } from './materials'
import { withoutPart } from './opening-parts'
import { withoutOpening } from './openings'
import { named } from './rename'
import { standing } from './standing'

const noPart = (at: string) =>
  refused({ at, say: words('there is no such part', 'dieses Teil gibt es nicht') })

/** Inserts a layer into a wall: before a layer, or at the inside. */
export const insert: EditKind<'insert'> = {
  kind: 'insert',
  schema: z.strictObject({
    kind: z.literal('insert'),
    into: z.string(),
    before: z.string().exactOptional(),
    material: z.string(),
    thickness_mm: z.number(),
  }),
  apply: (project, edit) => {
    const wall = entryAt(project.walls, edit.into)
    if (wall === undefined || !(entryAt(project.materials, edit.material) ?? material(edit.material)))
      return noPart(edit.into)
    const counted = numbered(project, 'layer')
    const layer: Layer = {
      id: counted.id,
      material: edit.material,
      thickness_mm: specified(edit.thickness_mm),
      duties: dutiesOf(project, wall, edit.material),
    }
    const layers = placed(wall.layers, layer, edit.before)
    const next = withMaterials(
      withWall(counted.project, wall.id, it => ({ ...it, layers: isSome(layers) ? layers : it.layers })),
    )
    return standing(next)
  },
}

/** Takes out a layer, a seal or a part of an opening. The bearing layer of a wall stays. */
export const remove: EditKind<'remove'> = {
  kind: 'remove',
  schema: z.strictObject({ kind: z.literal('remove'), part: z.string() }),
  apply: (project, { part }) => {
    const seal = sealOf(project, part)
    if (seal)
      return ok(
        withJoint(named(project, part, ''), seal.joint.id, it => ({
          ...it,
          seals: it.seals.filter(one => one.id !== part),
        })),
      )
    const without = withoutPart(project, part)
    if (without) return ok(named(without, part, ''))
    if (entryAt(project.openings, part)) {
      return Object.keys(project.openings).length > 1
        ? ok(withoutOpening(project, part))
        : refused({
            at: part,
            say: words('a project has at least one opening', 'ein Projekt hat mindestens eine Öffnung'),
          })
    }
    const found = layerOf(project, part)
    if (found === undefined) return noPart(part)
    const layers = found.wall.layers.filter(it => it.id !== part)
    if (!isSome(layers) || found.layer.duties.includes('bearing')) {
      return refused({ at: part, say: words('the bearing layer stays: all depths refer to it', 'die tragende Schicht bleibt: alle Tiefen beziehen sich auf sie') }) // prettier-ignore
    }
    const next = withWall(named(project, part, ''), found.wall.id, it => ({ ...it, layers }))
    return standing(next)
  },
}

/** Moves a layer before another of the same wall, or to the inside. */
export const move: EditKind<'move'> = {
  kind: 'move',
  schema: z.strictObject({ kind: z.literal('move'), part: z.string(), before: z.string().exactOptional() }),
  apply: (project, { part, before }) => {
    const found = layerOf(project, part)
    if (found === undefined) return noPart(part)
    const layers = placed(found.wall.layers.filter(it => it.id !== part), found.layer, before) // prettier-ignore
    const next = withWall(project, found.wall.id, it => ({
      ...it,
      layers: isSome(layers) ? layers : it.layers,
    }))
    return standing(next)
  },
}

/** Insulation leads heat no better than this: ours, between what is sold as insulation and light masonry. */
const insulation_W_mK = 0.1

/** A new layer is there for what its material is there for in this wall, but bearing; else insulation insulates. */
const dutiesOf = (project: Project, wall: Wall, id: string): readonly Duty[] => {
  const same = wall.layers.find(it => it.material === id)
  if (same) return same.duties.filter(it => it !== 'bearing')
  const lambda_W_mK = materialOf(project, id)?.lambda_W_mK ?? Infinity
  return lambda_W_mK <= insulation_W_mK ? ['insulating'] : []
}

export const placed = (
  layers: readonly Layer[],
  layer: Layer,
  before: string | undefined,
): readonly Layer[] => {
  const at = before === undefined ? -1 : layers.findIndex(it => it.id === before)
  return at < 0 ? [...layers, layer] : layers.toSpliced(at, 0, layer)
}
