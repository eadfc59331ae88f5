import type { Id } from '../../geometry'
import type { AnySeal } from '../../seals'
import type { Joint, Project } from '../model'
import { numbered } from './numbered'

/** The project with a joint type of its own beside it: the same values and seals under new ids. What was taken out of the first stays there. */
export const withCopiedJoint = (
  project: Project,
  { out: _, ...joint }: Joint,
): { readonly project: Project; readonly joint: Id } => {
  const named = numbered(project, 'joint')
  let next = named.project
  const seals = joint.seals.map((seal): AnySeal => {
    const counted = numbered(next, 'seal')
    next = counted.project
    return { ...seal, id: counted.id }
  })
  const copy: Joint = { ...joint, id: named.id, seals }
  return { project: { ...next, joints: { ...next.joints, [copy.id]: copy } }, joint: copy.id }
}
