import type { Id } from '../geometry'
import type { Material } from '../materials'
import type { AnySeal } from '../seals'
import type { Fixing } from './fixing'
import { fixingOf, layerOf, sealOf, takenOutOf, wallOf, frameOf, jointOf, type ZonePlace } from './find'
import { materialOf } from './edits/materials'
import type { Frame, Joint, Layer, Project, Wall } from './model'
import type { Sill } from './sill'
import type { Threshold } from './threshold'

type Materials = Readonly<Record<Id, Material>>

/** A part of a project with all that it needs elsewhere: what is copied, and what is pasted. */
export type Piece =
  | { readonly kind: 'layer'; readonly layer: Layer; readonly materials: Materials }
  | { readonly kind: 'seal'; readonly seal: AnySeal }
  | { readonly kind: 'joint'; readonly joint: Joint }
  | { readonly kind: 'fixing'; readonly fixing: Fixing }
  | { readonly kind: 'sill'; readonly sill: Sill }
  | { readonly kind: 'threshold'; readonly threshold: Threshold; readonly materials: Materials }
  | { readonly kind: 'frame'; readonly frame: Frame }
  | { readonly kind: 'wall'; readonly wall: Wall; readonly materials: Materials }

/** The piece that a part is, if it can be copied. A member of a frame is copied with its frame. */
export const pieceOf = (project: Project, place: ZonePlace, part: Id): Piece | undefined => {
  const layer = layerOf(project, part)?.layer
  if (layer) return { kind: 'layer', layer, materials: materialsOf(project, [layer]) }
  const seal = (sealOf(project, part) ?? takenOutOf(project, part))?.seal
  if (seal) return { kind: 'seal', seal }
  const fixing = fixingOf(project, part)?.fixing
  if (fixing) return { kind: 'fixing', fixing }
  const { sill, threshold } = project.openings[place.opening] ?? {}
  if (sill?.id === part) return { kind: 'sill', sill }
  if (threshold && part.split('/')[0] === threshold.id) {
    const { base, finish, insulation, paving } = threshold
    const materials = materialsOf(project, [], threshold, base, finish, insulation, paving)
    return { kind: 'threshold', threshold, materials }
  }
  const joint = jointOf(project, place.zone)
  if (joint.id === part) return { kind: 'joint', joint }
  const wall = wallOf(project, place.opening)
  if (wall.id === part)
    return { kind: 'wall', wall, materials: materialsOf(project, wall.layers, wall.reveal.board) }
  const frame = frameOf(project, place.opening)
  return part.split('/')[0] === frame.id ? { kind: 'frame', frame } : undefined
}

/** The materials that layers are made of, with what closes them. */
const materialsOf = (
  project: Project,
  layers: readonly Layer[],
  ...more: readonly ({ readonly material: Id } | undefined)[]
): Materials => {
  const used = [...layers, ...layers.map(it => it.edge), ...more].flatMap(it => (it ? [it.material] : []))
  return Object.fromEntries(
    used.flatMap(id => {
      const found = materialOf(project, id)
      return found ? [[id, found] as const] : []
    }),
  )
}
