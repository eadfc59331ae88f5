import { ok, refused, type Result } from '../../units'
import { isSome } from '../../words'
import { standingProblems } from '../allowed/stands'
import type { Project } from '../model'

/** A changed project, unless a frame would no longer stand in its wall. */
export const standing = (project: Project): Result<Project> => {
  const problems = standingProblems(project)
  return isSome(problems) ? refused(...problems) : ok(project)
}
