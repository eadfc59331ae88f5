import type { Id } from '../../geometry'
import { type Material, material, materials } from '../../materials'
import type { Word } from '../choice-field'
import { entryAt, layerOf } from '../find'
import type { Layer, Project } from '../model'

/** The project with a copy of every material that its walls, sills, thresholds and boxes use: a later library changes no issued detail. */
export const withMaterials = (project: Project): Project => {
  const parts = [
    ...Object.values(project.walls).flatMap(({ layers, reveal }) => [
      ...layers.flatMap(it => [it, it.edge]),
      reveal.board,
    ]),
    ...Object.values(project.openings).flatMap(({ sill, threshold, box }) => [
      sill,
      sill?.board,
      threshold,
      threshold?.base,
      threshold?.finish,
      threshold?.insulation,
      threshold?.paving,
      box,
      box?.lining,
    ]),
  ]
  const used = parts.flatMap(it => (it ? [it.material] : []))
  const added = used.filter(id => entryAt(project.materials, id) === undefined)
  if (added.length === 0) return project
  const copies = added.flatMap((id): readonly (readonly [Id, Material])[] => {
    const found = material(id)
    return found ? [[id, found]] : []
  })
  return { ...project, materials: { ...project.materials, ...Object.fromEntries(copies) } }
}

/**
 * What a material is: the project's own copy, else the library's. With the part that is made of it, what is declared of
 * that very layer goes before what is usual of its material.
 */
export const materialOf = (project: Project, id: Id, part?: Id): Material | undefined => {
  const usual = entryAt(project.materials, id) ?? material(id)
  const layer = part === undefined ? undefined : layerOf(project, part)?.layer
  return usual && layer?.material === id ? asDeclared(usual, layer) : usual
}

const asDeclared = (usual: Material, { lambda_W_mK, muDry, muWet }: Layer): Material => {
  const dry = muDry?.value ?? usual.mu?.dry ?? muWet?.value
  const wet = muWet?.value ?? usual.mu?.wet ?? muDry?.value
  return {
    ...usual,
    ...(lambda_W_mK ? { lambda_W_mK: lambda_W_mK.value } : {}),
    ...(dry === undefined || wet === undefined ? {} : { mu: { dry, wet } }),
  }
}

/** Materials by name: those of the project first, since a design keeps to what it has, then the library. */
export const offeredMaterials = (project: Project): readonly Word[] => {
  const own = Object.values(project.materials)
  const others = materials.filter(it => !own.some(one => one.id === it.id))
  return [...own, ...others].map(it => ({ value: it.id, name: it.name }))
}
