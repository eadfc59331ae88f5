import {
  choicesOf,
  type FieldAt,
  fieldsOf,
  openingOf,
  type Project,
  type ZonePlace,
  frameOf,
} from '../../../core/detail'
import type { Id } from '../../../core/geometry'
import type { Grip } from '../../editor'

/** What stands in the fields of a part: single values, and whether the joint belongs with them. */
export type PartFields = {
  readonly single: readonly FieldAt[]
  readonly choices: readonly FieldAt[]
  readonly hasJoint: boolean
}

/** Joint width and tolerance are typed as one range, so they are no single fields. */
const ofJoint = ['joint.planned', 'joint.tolerance']

/** The values of a part: those that its faces state when they are dragged first, then all others it has. */
export const fieldsOfPart = (
  project: Project,
  place: ZonePlace,
  grips: readonly Grip[],
  part: Id,
): PartFields => {
  const [owner = part] = part.split('/')
  const opening = openingOf(project, place.opening)
  const isFrame = owner === frameOf(project, place.opening).id
  const isJoint = project.joints[part] !== undefined
  const all: FieldAt[] = [
    ...grips.filter(it => it.part === owner).map(it => it.at),
    ...fieldsOf(project, owner).map(it => ({ field: it.id, part: owner })),
    ...(isFrame
      ? ['opening.position', 'opening.width', 'opening.height'].map(field => ({ field, part: opening.id }))
      : []),
  ]
  const single = all.filter(
    (it, at) =>
      !ofJoint.includes(it.field) &&
      at === all.findIndex(other => other.field === it.field && other.part === it.part),
  )
  const owners = [owner, ...(isFrame ? [opening.id, place.zone.joint] : [])]
  const choices = owners.flatMap(part => choicesOf(project, part).map(it => ({ field: it.id, part })))
  return {
    single,
    choices,
    hasJoint:
      isFrame || isJoint || project.joints[place.zone.joint]?.seals.some(it => it.id === part) === true,
  }
}
