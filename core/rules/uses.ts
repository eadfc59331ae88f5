import { type Project, zonesOf } from '../detail'
import type { Id } from '../geometry'
import type { FrameMaterial, RevealForm, Side } from '../kinds'
import { jointBand, type JointBand } from '../movement'
import { formAtFrame } from './form-at-frame'

/** One zone that a joint type is used in: a change of the type has to suit all of them. */
export type Use = {
  readonly opening: Id
  readonly side: Side
  readonly band: JointBand
  /** whether the joint there is as wide as planned; not where the opening or the joint was measured */
  readonly isPlanned: boolean
  readonly frame: FrameMaterial
  readonly reveal: RevealForm
}

/** All zones of a project that a joint is used in. */
export type UsesOf = (joint: Id) => readonly Use[]

/** Where each joint of a project is used, found when it is first asked for. */
export const usesIn = (project: Project): UsesOf => {
  const found = new Map<Id, readonly Use[]>()
  return joint => {
    const uses = found.get(joint) ?? usesOf(project, joint)
    found.set(joint, uses)
    return uses
  }
}

const usesOf = (project: Project, id: Id): readonly Use[] => {
  const joint = project.joints[id]
  if (!joint) return []
  const wider = { ...joint, planned_mm: { ...joint.planned_mm, value: joint.planned_mm.value + 1 } }
  const planned = { ...project, joints: { ...project.joints, [id]: wider } }
  return zonesOf(project)
    .filter(it => it.zone.joint === id)
    .flatMap(({ opening: of, side, zone }) => {
      const opening = project.openings[of]
      const frame = opening && project.frames[opening.frame]
      const wall = opening && project.walls[opening.wall]
      if (!frame || !wall) return []
      const band = jointBand(project, of, side, zone.id)
      const isPlanned = jointBand(planned, of, side, zone.id).still_mm.min !== band.still_mm.min
      return [
        { opening: of, side, band, isPlanned, frame: frame.material, reveal: formAtFrame(wall.reveal.form) },
      ]
    })
}
