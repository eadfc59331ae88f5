import type { FieldAt, Opening, Project, Zone } from '../detail'
import type { Side } from '../kinds'
import type { Stated } from '../units'
import type { Some } from '../words'

/** The sizes that a rule about one side asks for: its frame and its opening, across the joint. */
export type SideSizes = {
  /** width of the frame at a jamb, its height with the box on it at head and sill */
  readonly frame: Stated<number>
  readonly frameField: FieldAt
  /** the frame and the planned joints on both its sides, each where it is widest */
  readonly opening_mm: number
}

/** Sizes across the joint of a side. */
export const sideSizes = (project: Project, opening: Opening, side: Side): SideSizes => {
  const upright = side === 'head' || side === 'sill'
  const height_mm = opening.height_mm.value + (opening.box?.height_mm.value ?? 0)
  const frame = upright ? { ...opening.height_mm, value: height_mm } : opening.width_mm
  const { head, sill, left, right } = opening.sides
  const joints_mm = (upright ? [head, sill] : [left, right]).map(zones => widestJoint_mm(project, zones))
  return {
    frame,
    frameField: { field: upright ? 'opening.height' : 'opening.width', part: opening.id },
    opening_mm: joints_mm.reduce((sum, it) => sum + it, frame.value),
  }
}

const widestJoint_mm = (project: Project, zones: Some<Zone>): number =>
  Math.max(...zones.map(zone => project.joints[zone.joint]?.planned_mm.value ?? 0))
