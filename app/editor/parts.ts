import type { Project } from '../../core/detail'
import type { Id } from '../../core/geometry'

/** The ids of all that can be selected in a project. */
export const partsOf = (project: Project): ReadonlySet<Id> => {
  const walls = Object.values(project.walls)
  const openings = Object.values(project.openings)
  const joints = Object.values(project.joints)
  return new Set([
    ...[...walls, ...openings, ...joints, ...Object.values(project.frames)].map(it => it.id),
    ...walls.flatMap(wall => wall.layers.map(it => it.id)),
    ...joints.flatMap(joint => joint.seals.map(it => it.id)),
    ...openings.flatMap(it => (it.fixing === undefined ? [] : [it.fixing.id])),
  ])
}

/** What of a selection a project still has, in its order. */
export const stillThere = (selection: readonly Id[], project: Project): readonly Id[] => {
  if (selection.length === 0) return selection
  const parts = partsOf(project)
  return selection.every(it => parts.has(it)) ? selection : selection.filter(it => parts.has(it))
}
