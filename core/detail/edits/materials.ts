import type { Id } from '../../geometry'
import { type Material, material } from '../../materials'
import type { Project } from '../model'
import { entryAt } from '../find'

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

/** What a material is: the project's own copy, else the library's. */
export const materialOf = (project: Project, id: Id): Material | undefined =>
  entryAt(project.materials, id) ?? material(id)
