import { type Project, partsOf, zonesOf } from '../../core/detail'
import type { Id } from '../../core/geometry'

/** The ids of all that can be selected in a project: the parts that lists and sections show, and what they belong to. */
export const selectableIn = (project: Project): ReadonlySet<Id> =>
  new Set([
    ...zonesOf(project).flatMap(place => partsOf(project, place).map(it => it.id)),
    ...[project.walls, project.frames, project.joints, project.openings].flatMap(it => Object.keys(it)),
    ...Object.values(project.walls).flatMap(wall => wall.layers.map(it => it.id)),
    ...Object.values(project.openings).flatMap(it =>
      [...it.blocks, ...it.mullions, ...(it.transoms ?? [])].map(part => part.id),
    ),
    ...Object.values(project.joints).flatMap(joint => (joint.out ?? []).map(it => it.id)),
  ])

/** What of a selection a project still has, in its order. */
export const stillThere = (selection: readonly Id[], project: Project): readonly Id[] => {
  if (selection.length === 0) return selection
  const parts = selectableIn(project)
  return selection.every(it => parts.has(it)) ? selection : selection.filter(it => parts.has(it))
}
