import type { Id } from '../../geometry'
import type { Project } from '../model'

/** The next free id of a kind, and the project that has counted on. Core throws no dice: ids come from the project. */
export const numbered = (project: Project, kind: string): { readonly id: Id; readonly project: Project } => ({
  id: `${kind}-${project.next}`,
  project: { ...project, next: project.next + 1 },
})
