import type { FieldAt, Opening, Project, Zone } from '../detail'
import type { Basis, Stated } from '../units'
import type { Some } from '../words'

/** A size that follows from others, and the assumed values among them. */
export type DerivedSize = {
  readonly value_mm: number
  readonly basis: Basis
  readonly restsOn: readonly FieldAt[]
}

export type FrameSize = { readonly width: DerivedSize; readonly height: DerivedSize }

/**
 * Outer size of a frame: the opening less the planned joints on both sides. A side with several zones counts with its
 * narrowest joint, where the opening is smallest.
 */
export const frameSize = (project: Project, opening: Opening): FrameSize => ({
  width: between(project, opening, {
    of: opening.width_mm,
    field: 'opening.width',
    sides: [opening.sides.left, opening.sides.right],
  }),
  height: between(project, opening, {
    of: opening.height_mm,
    field: 'opening.height',
    sides: [opening.sides.head, opening.sides.sill],
  }),
})

type Measure = {
  readonly of: Stated<number>
  readonly field: string
  readonly sides: readonly [Some<Zone>, Some<Zone>]
}

const between = (project: Project, opening: Opening, it: Measure): DerivedSize => {
  const joints = it.sides.map(zones => narrowestJoint(project, zones))
  const inputs = [{ field: it.field, part: opening.id, stated: it.of }, ...joints]
  const restsOn = inputs.filter(({ stated }) => stated.basis === 'assumed')
  return {
    value_mm: joints.reduce((left, { stated }) => left - stated.value, it.of.value),
    basis: restsOn.length > 0 ? 'assumed' : it.of.basis,
    restsOn: restsOn.map(({ field, part }) => ({ field, part })),
  }
}

const narrowestJoint = (project: Project, zones: Some<Zone>) => {
  const joints = zones.flatMap(zone => project.joints[zone.joint] ?? [])
  const [first, ...rest] = joints
  if (!first) throw new Error(`No joint for ${zones.map(it => it.joint).join(', ')}`)
  const { id, planned_mm } = rest.reduce((a, b) => (b.planned_mm.value < a.planned_mm.value ? b : a), first)
  return { field: 'joint.planned', part: id, stated: planned_mm }
}
