import type { Id } from '../../geometry'
import { type Material, material } from '../../materials'
import { entryAt, layerOf } from '../find'
import type { Layer, Project } from '../model'

/** The project with a copy of every material that its walls use: a later library changes no issued detail. */
export const withMaterials = (project: Project): Project => {
  const used = Object.values(project.walls).flatMap(wall => [
    ...wall.layers.flatMap(it => [it.material, ...(it.edge ? [it.edge.material] : [])]),
    ...(wall.reveal.board ? [wall.reveal.board.material] : []),
  ])
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
